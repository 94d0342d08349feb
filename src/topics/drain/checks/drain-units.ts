import {
  type Check,
  connectionPlace,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  pointPlace,
  readFigure,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as branchFixtureUnitsFigure } from '../figures/branch-fixture-units';
import { rule as drainUnitsFigure, findGoverningUnits } from '../figures/drain-units';
import { type CarryingPipe, carryingPipe, isPipe } from '../figures/support/drains';
import { UNIT_CODES, type UnitCode } from '../figures/support/fixtureUnits';
import { listReceptors, type Receptor } from '../figures/support/receptors';
import { branchUnits } from '../formulas/branchUnits';
import { nominalSize } from '../formulas/nominalSize';

export const check: Check = {
  id: 'drain-units',
  order: 590,
  title: 'The branch may take the fixture units of what empties into it',
  group: 'drain',
  unit: 'count',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'International Plumbing Code',
    section: '710.1, horizontal branch, single values as quoted',
    confidence: 'secondary',
  },
  why: 'Codes size drains by fixture units, and count a steady flow of a machine differently. The inspector asks for them; local code and a plumber decide.',
  measure: (scene) => [
    ...scene.machines.flatMap((placed) => measureMachine(scene, placed)),
    ...listReceptors(scene).flatMap((receptor) => measureReceptor(scene, receptor)),
  ],
};

/** What is said of the units. */
export interface DrainUnitsCheckMessages {
  'drain-units/what': NoParams;
  'drain-units/within': Counted;
  'drain-units/exceeded': Counted;
  'drain-units/exceeded-by-flow': Counted;
}

/** What a code counts, for what, and what a branch of this bore in mm may take. */
interface Counted {
  code: UnitCode | null;
  units: number;
  /** None: sinks alone. */
  machines: Name[];
  hasSinks: boolean;
  bore: number;
  most: number;
}

const message = createMessages<DrainUnitsCheckMessages>();

/** What empties into one branch, and its place. */
interface Load extends Pick<Measurement, 'subjects' | 'place'>, Pick<Counted, 'machines' | 'hasSinks'> {}

/** On a pipe of its own; over an air gap it counts with all that empties into its floor drain. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const pipe = carryingPipe(scene, placed);
  if (isPipe(pipe) && pipe.drain !== null) return [];
  return holdUnits(scene, readingsFor(drainUnitsFigure, scene, placed), isPipe(pipe) ? branchOf(pipe.bore) : { ok: false, ask: pipe }, {
    subjects: [placed.machine.id],
    place: connectionPlace(placed, 'drain'),
    machines: [nameMachine(scene, placed)],
    hasSinks: false,
  });
}

/** All that empties into one floor drain. While it is not known of a machine whether it does, that machine’s own finding asks. */
function measureReceptor(scene: Scene, { placed: { drain, centre }, bore, machines, sinks, fitted }: Receptor): Measurement[] {
  if (machines.some(({ machine }) => machine.hookUp.waste === null)) return [];
  const readings = readFigure(branchFixtureUnitsFigure, scene).filter(({ subjects }) => subjects[0] === drain.id);
  const [first] = machines;
  return holdUnits(scene, readings, branchOf(bore), {
    subjects: [...machines.map(({ machine }) => machine.id), drain.id],
    place: first === undefined ? pointPlace(centre) : connectionPlace(first, 'drain'),
    machines: machines.map((placed) => nameMachine(scene, placed)),
    hasSinks: sinks.length + fitted.length > 0,
  });
}

/** By the code of the plan, else by the one that counts most. Whether a machine is a steady flow is open: a breach is a watch. */
function holdUnits(
  scene: Scene,
  readings: readonly FigureReading[],
  branch: Branch,
  { machines, hasSinks, subjects, place }: Load,
): Measurement[] {
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits) ?? readings[0];
  if (governing === undefined) return [];
  const { ok, ...missing } = branch;
  const known: FigureReading = { ...governing, ...(ok || governing.value === null ? { subjects } : { ...missing, subjects, value: null }) };
  return [
    holdReading(known, {
      place,
      what: message('drain-units/what'),
      limit: branch.ok ? branch.value : null,
      severity: 'watch',
      message: (units) => {
        const [bore, most] = branch.ok ? [branch.bore, branch.value] : [0, 0];
        const counted: Counted = { code: codeOf(governing), units, machines, hasSinks, bore, most };
        return message(units <= most ? 'drain-units/within' : exceededKey(counted), counted);
      },
    }),
  ];
}

const codeOf = ({ part }: FigureReading): UnitCode | null => UNIT_CODES.find((code) => code === part) ?? null;

/** A table has a value for a machine; other codes count it as a steady flow, if it is one. */
const exceededKey = ({ code, machines }: Counted) =>
  machines.length > 0 && code !== 'municipal-old' ? 'drain-units/exceeded-by-flow' : 'drain-units/exceeded';

type Branch = { ok: true; bore: number; value: number } | ({ ok: false } & Pick<FigureReading, 'ask' | 'refusal'>);

/** What a pipe may take, by its nominal size. */
function branchOf({ value, input, path }: CarryingPipe['bore']): Branch {
  if (value === null) return { ok: false, ask: { input, path } };
  const size = nominalSize({ boreM: value / 1000 });
  const units = size.ok ? branchUnits({ sizeM: size.value, kind: 'branch' }) : size;
  return units.ok ? { ok: true, bore: value, value: units.value } : { ok: false, refusal: units.refusal };
}
