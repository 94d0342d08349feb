import {
  type Check,
  editRun,
  type FigureReading,
  type FigureRule,
  holdReading,
  type Measurement,
  type Repair,
  readFigure,
  runName,
  runPlace,
  sentence,
  TOLERANCE,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { type Formatter, MM_PER_INCH } from '../../../units';
import { rule as ductDewPointFigure } from '../figures/duct-dew-point';
import { rule as ductInsulationNeededFigure } from '../figures/duct-insulation-needed';
import { rule as ductWallTemperatureFigure } from '../figures/duct-wall-temperature';

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

function measureRun(scene: Scene, placed: PlacedRun): Measurement {
  const of = (figure: FigureRule) => readFigure(figure, scene).filter(({ subjects }) => subjects[0] === placed.run.id);
  const [dewPoint] = of(ductDewPointFigure);
  const walls = of(ductWallTemperatureFigure);
  const wall = findGoverning(walls);
  const needed = findGoverning(of(ductInsulationNeededFigure))?.value ?? null;
  const missing: FigureReading = { subjects: [placed.run.id, placed.run.machine], value: null, how: null };
  const name = walls.length > 1 ? `${runName(scene, placed)} ${wall?.part ?? ''}` : runName(scene, placed);
  return holdReading(dewPoint?.value == null ? (dewPoint ?? missing) : (wall ?? missing), {
    place: runPlace(placed),
    name: `whether the wall of ${name} stays dry`,
    limit: dewPoint?.value ?? null,
    severity: 'watch',
    say: (value, f) => sentence(sayWall(name, value, dewPoint?.value ?? value, needed, f)),
    repairs: () => (wall?.value != null && wall.value < (dewPoint?.value ?? 0) && needed !== null ? [insulate(placed, needed)] : []),
  });
}

/** Of the parts of a run the one that is not known; else the one that governs, or the only one. */
const findGoverning = (parts: readonly FigureReading[]): FigureReading | undefined =>
  parts.find(({ value }) => value === null) ?? parts.find(({ governs }) => governs) ?? parts[0];

function sayWall(name: string, wall: number, dewPoint: number, neededM: number | null, f: Formatter): string {
  if (wall >= dewPoint - TOLERANCE)
    return `the wall of ${name} is at ${f.temperature(wall)}, ${f.temperatureDifference(wall - dewPoint)} above the dew point of its air.`;
  const wet = `the wall of ${name} is at ${f.temperature(wall)}, ${f.temperatureDifference(dewPoint - wall)} below the dew point of its air, and runs wet`;
  if (neededM === null) return `${wet}; no insulation that is built keeps it dry. Give it its fall, sealed joints and a drain.`;
  return `${wet}. Insulate it with ${f.length(roundUp(neededM))} or more, or give it its fall and a drain.`;
}

/** Insulation is sold by the half inch. */
const STEP = MM_PER_INCH / 2;
const roundUp = (thicknessM: number) => Math.ceil((thicknessM * 1000) / STEP - TOLERANCE) * STEP;

const insulate = ({ run }: PlacedRun, neededM: number): Repair => ({
  id: 'insulate-run',
  label: (f) => `Insulate the run with ${f.length(roundUp(neededM))}`,
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.insulation = roundUp(neededM);
    }),
});
