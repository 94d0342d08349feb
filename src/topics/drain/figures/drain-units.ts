import type { Codes } from '../../../plan';
import { askSheet, compute, type FigureReading, type FigureRule, type How, readNote } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { fixtureUnitsOfFlow, fixtureUnitsOfFlowRecord } from '../formulas/fixtureUnits';
import { dishMachineUnits, fixtureSource } from '../formulas/support/fixtureTable';

export const rule: FigureRule = {
  id: 'drain-units',
  order: 770,
  title: 'Fixture units of the machine’s drain',
  group: 'drain',
  unit: 'count',
  derive: (scene) => scene.machines.flatMap((placed) => deriveReadings(scene, placed)),
};

/** Every code beside the others, a steady flow and one that comes and goes; the one that counts for this plan says so. */
function deriveReadings(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const flowM3S = placed.sheet.drainFlow;
  if (flowM3S === null) return [askSheet(scene, placed, 'flow of the drain while the machine empties', 'drainFlow')];
  const subjects = [placed.machine.id];
  const byFlow = ({ part, note }: (typeof CODES | typeof BESIDE)[number]): FigureReading => ({
    part,
    subjects,
    ...compute(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow, { flowM3S, rule: part }),
    note,
  });
  const readings = [...CODES.map(byFlow), ...deriveByTable(placed), ...BESIDE.map(byFlow)];
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits);
  return readings.map((reading) =>
    reading === governing
      ? {
          ...reading,
          note: `${readNote(reading)} ${governs(scene.plan.codes)}`,
        }
      : reading,
  );
}

/** By the table of an old city code, where it has a row for such a tank; a machine without one holds no more than a small one. */
function deriveByTable({ machine, sheet }: PlacedMachine): FigureReading[] {
  const tankM3 = sheet.tank?.volume ?? 0;
  const value = dishMachineUnits(tankM3);
  const how: How = {
    formula: 'a value for each fixture',
    inputs: [{ name: 'What its tank holds', value: tankM3, unit: 'm3' }],
    source: [fixtureSource('municipal-old')],
  };
  return value === null ? [] : [{ part: 'municipal-old', subjects: [machine.id], value, how, note: BY_TABLE }];
}

/** The code of the plan; of several, the first of those that count most. */
export function findGoverningUnits<R extends FigureReading>(readings: readonly R[], code: Codes['drainUnits']): R | undefined {
  if (code !== 'strictest') return readings.find(({ part }) => part === code);
  const codes = readings.filter(({ part }) => part !== 'upc-intermittent' && part !== 'cubic-foot');
  return codes.reduce<R | undefined>((most, row) => (most === undefined || (row.value ?? 0) > (most.value ?? 0) ? row : most), undefined);
}

/** Why a code counts for this plan. */
export const governs = ({ drainUnits }: Codes) =>
  drainUnits === 'strictest' ? 'Governs: none counts more.' : 'Governs: the plan’s own choice of code.';

const AS_CONTINUOUS =
  'Counted as a continuous or semi-continuous flow; whether a machine that empties now and then is one, the local authority says.';

const BY_TABLE = 'An old city code, by its table: of its rows for such a machine, any or by what the tank holds, the one that counts more.';

/** The codes that a plan may choose. */
const CODES = [
  { part: 'ipc', note: `International code: 2 units a gallon a minute. ${AS_CONTINUOUS}` },
  { part: 'upc', note: `Uniform code: 2 units a gallon a minute, from memory. ${AS_CONTINUOUS}` },
  { part: 'chicago', note: `Chicago: 1 unit a gallon a minute. ${AS_CONTINUOUS}` },
] as const;

/** Shown beside them; they never count. */
const BESIDE = [
  {
    part: 'upc-intermittent',
    note: 'Beside it, from memory: as a flow that only comes and goes the Uniform code counts 1 unit to 7.5 gpm and 2 units to 15 gpm.',
  },
  {
    part: 'cubic-foot',
    note: 'Beside it: by the first definition a unit is a cubic foot a minute, 7.5 gpm, as the code of Redwood City still has it.',
  },
] as const;
