import {
  type Check,
  createMessages,
  editRun,
  type FigureReading,
  type FigureRule,
  holdReading,
  type Measurement,
  type Message,
  type Name,
  nameRun,
  type Repair,
  readFigure,
  runPlace,
  TOLERANCE,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { MM_PER_INCH } from '../../../units';
import { rule as ductDewPointFigure } from '../figures/duct-dew-point';
import { rule as ductInsulationNeededFigure } from '../figures/duct-insulation-needed';
import { rule as ductWallTemperatureFigure } from '../figures/duct-wall-temperature';
import type { RunPart } from '../figures/support/ductWalls';

export const check: Check = {
  id: 'duct-wall-dry',
  order: 550,
  title: 'The wall of the run stays dry',
  group: 'air',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code 4-204.11, as Minnesota Rules 4626.0565 (2019)',
    section:
      'hoods, fans and ducts where ware is washed let no condensate drip on food, equipment and utensils; the wall by resistances in a row about a cylinder, with films of air that are usual values from memory',
    confidence: 'read',
  },
  why: 'Moist air in a cold duct turns to water on its wall, and drips. Insulation keeps the wall above the dew point; where none can, the duct needs its fall and its drain. Ducts through cold attics are to be insulated (BC Housing).',
  measure: (scene) => scene.runs.map((run) => measureRun(scene, run)),
};

/** Temperatures in °C, `above` and `below` the dew point in K, thickness of insulation in mm. */
export interface DuctWallDryMessages {
  'duct-wall-dry/what': Wall;
  'duct-wall-dry/dry': Wall & { temperature: number; above: number };
  'duct-wall-dry/wet': Wall & { temperature: number; below: number; insulation: number };
  'duct-wall-dry/wet-whatever': Wall & { temperature: number; below: number };
  'duct-wall-dry/repair-insulate-run': { insulation: number };
}

/** The wall of a run; `part` where it has several. */
interface Wall {
  run: Name;
  part: RunPart | null;
}

const say = createMessages<DuctWallDryMessages>();

function measureRun(scene: Scene, placed: PlacedRun): Measurement {
  const of = (figure: FigureRule) => readFigure(figure, scene).filter(({ subjects }) => subjects[0] === placed.run.id);
  const [dewPoint] = of(ductDewPointFigure);
  const walls = of(ductWallTemperatureFigure);
  const wall = findGoverning(walls);
  const needed = findGoverning(of(ductInsulationNeededFigure))?.value ?? null;
  const missing: FigureReading = { subjects: [placed.run.id, placed.run.machine], value: null, how: null };
  const called: Wall = { run: nameRun(scene, placed), part: walls.length > 1 ? partOf(wall) : null };
  const isWet = wall?.value != null && wall.value < (dewPoint?.value ?? 0);
  return holdReading(dewPoint?.value == null ? (dewPoint ?? missing) : (wall ?? missing), {
    place: runPlace(placed),
    what: say('duct-wall-dry/what', called),
    limit: dewPoint?.value ?? null,
    severity: 'watch',
    message: (value) => sayWall(called, value, dewPoint?.value ?? value, needed),
    ...(isWet && needed !== null ? { repairs: { ids: ['insulate-run'], find: () => [insulate(placed, needed)] } } : {}),
  });
}

const partOf = (wall: FigureReading | undefined): RunPart => (wall?.part === 'outdoors' ? 'outdoors' : 'indoors');

/** Of the parts of a run the one that is not known; else the one that governs, or the only one. */
const findGoverning = (parts: readonly FigureReading[]): FigureReading | undefined =>
  parts.find(({ value }) => value === null) ?? parts.find(({ governs }) => governs) ?? parts[0];

function sayWall(called: Wall, temperature: number, dewPoint: number, neededM: number | null): Message {
  if (temperature >= dewPoint - TOLERANCE) return say('duct-wall-dry/dry', { ...called, temperature, above: temperature - dewPoint });
  const wet = { ...called, temperature, below: dewPoint - temperature };
  if (neededM === null) return say('duct-wall-dry/wet-whatever', wet);
  return say('duct-wall-dry/wet', { ...wet, insulation: roundUp(neededM) });
}

/** Insulation is sold by the half inch. */
const STEP = MM_PER_INCH / 2;
const roundUp = (thicknessM: number) => Math.ceil((thicknessM * 1000) / STEP - TOLERANCE) * STEP;

const insulate = ({ run }: PlacedRun, neededM: number): Repair => ({
  id: 'insulate-run',
  label: say('duct-wall-dry/repair-insulate-run', { insulation: roundUp(neededM) }),
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.insulation = roundUp(neededM);
    }),
});
