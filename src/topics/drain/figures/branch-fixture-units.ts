import {
  askFor,
  compute,
  createMessages,
  type Derivation,
  explain,
  type FigureReading,
  type FigureRule,
  type Message,
  type NoParams,
  notesOf,
  readFigure,
  refuse,
} from '../../../rules';
import { machinePath, type Scene } from '../../../scene';
import { branchUnits } from '../formulas/branchUnits';
import { nominalSize } from '../formulas/nominalSize';
import { receptorUnits, receptorUnitsRecord } from '../formulas/receptorUnits';
import { fixtureSource } from '../formulas/support/fixtureTable';
import { rule as drainUnits, findGoverningUnits, governs } from './drain-units';
import { WASTE_INPUT } from './support/drains';
import { FIXTURE_ROWS, UNIT_CODES, type UnitCode } from './support/fixtureUnits';
import { listReceptors, type Receptor } from './support/receptors';

export const rule: FigureRule = {
  id: 'branch-fixture-units',
  order: 780,
  title: 'Fixture units of all that empties into the floor drain',
  group: 'drain',
  unit: 'count',
  derive: (scene) => listReceptors(scene).flatMap((receptor) => deriveReceptor(scene, receptor)),
};

/** What is said beside each code, and of what counts. */
export interface BranchFixtureUnitsMessages {
  'branch-fixture-units/ipc': NoParams;
  'branch-fixture-units/upc': NoParams;
  'branch-fixture-units/chicago': NoParams;
  'branch-fixture-units/municipal-old': NoParams;
  'branch-fixture-units/sinks-counted': NoParams;
  'branch-fixture-units/branch-may-take': { units: number };
}

const message = createMessages<BranchFixtureUnitsMessages>();

/** Every code beside the others; the one that counts for this plan says so, and what the branch may take. */
function deriveReceptor(scene: Scene, receptor: Receptor): FigureReading[] {
  const subjects = [receptor.placed.drain.id];
  const open = receptor.machines.find(({ machine }) => machine.hookUp.waste === null);
  if (open !== undefined) return [askFor(subjects, WASTE_INPUT, machinePath(open, 'hookUp', 'waste'))];
  const ofMachines = receptor.machines.map(({ machine }) => readFigure(drainUnits, scene).filter((one) => one.subjects[0] === machine.id));
  const asking = ofMachines.flat().find(({ ask }) => ask !== undefined)?.ask;
  if (asking !== undefined) return [askFor(subjects, asking.input, asking.path)];
  const readings = UNIT_CODES.map((code) => deriveByCode(receptor, ofMachines, code));
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits);
  return readings.map((reading) =>
    reading === governing ? { ...reading, ...notesOf(...(reading.notes ?? []), governs(scene.plan.codes), mayTake(receptor)) } : reading,
  );
}

/** A machine counts as its own figure has it; where the table has no row for it, as a flow by the code that counts most. */
function deriveByCode(receptor: Receptor, ofMachines: readonly FigureReading[][], code: UnitCode): FigureReading {
  const { drain } = receptor.placed;
  const rows = FIXTURE_ROWS[code];
  const counted = ofMachines.flatMap(
    (readings) => readings.find(({ part }) => part === code) ?? readings.find(({ part }) => part === 'ipc') ?? [],
  );
  const refusal = counted.find((reading) => reading.refusal !== undefined)?.refusal;
  if (refusal !== undefined) return { part: code, ...refuse([drain.id], refusal) };
  const fixtures = [
    ...receptor.machines.map(({ sheet }, i) => ({ name: sheet.name, value: counted[i]?.value ?? Number.NaN })),
    ...receptor.sinks.map(({ name }) => ({ name, value: rows.sink })),
    ...receptor.fitted.map(() => ({ name: 'Sink in a table', value: rows.fitted })),
  ];
  const own = drain.kind === 'floor-sink' ? 0 : rows.floorDrain(drain);
  const inputs = { fixtures: fixtures.map(({ value }) => value), own };
  const how: Derivation = {
    ...explain(receptorUnitsRecord, inputs),
    inputs: [...fixtures, { name: 'The floor drain itself', value: own }].map((input) => ({ unit: 'count', ...input })),
    source: [...new Set([...receptorUnitsRecord.source, ...rows.from.map(fixtureSource), ...counted.flatMap(sourcesOf)])],
  };
  return {
    part: code,
    subjects: [drain.id],
    ...compute(receptorUnitsRecord, receptorUnits, inputs),
    how,
    ...notesOf(message(`branch-fixture-units/${code}`), hasUnsaid(receptor) ? message('branch-fixture-units/sinks-counted') : null),
  };
}

const hasUnsaid = ({ sinks, fitted }: Receptor): boolean =>
  sinks.some(({ thing }) => (thing.basins?.waste ?? null) === null) || fitted.some(({ waste }) => waste === null);

const sourcesOf = ({ how }: FigureReading) => (how === null ? [] : how.source);

/** What a branch as wide as the drain's pipe may take. */
function mayTake({ placed: { drain } }: Receptor): Message | null {
  const size = nominalSize({ boreM: (drain.waste.bore ?? 0) / 1000 });
  const units = size.ok ? branchUnits({ sizeM: size.value, kind: 'branch' }) : size;
  return units.ok ? message('branch-fixture-units/branch-may-take', { units: units.value }) : null;
}
