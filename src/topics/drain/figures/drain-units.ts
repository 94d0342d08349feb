import type { Codes } from '../../../plan';
import {
  askDataSheet,
  compute,
  createMessages,
  type Derivation,
  type FigureReading,
  type FigureRule,
  type Message,
  type NoParams,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { fixtureUnitsOfFlow, fixtureUnitsOfFlowRecord } from '../formulas/fixtureUnits';
import { dishMachineUnits, fixtureSource } from '../formulas/support/fixtureTable';
import { FLOW_INPUT } from './support/drains';

export const rule: FigureRule = {
  id: 'drain-units',
  order: 770,
  title: 'Fixture units of the machine’s drain',
  group: 'drain',
  unit: 'count',
  derive: (scene) => scene.machines.flatMap((placed) => deriveReadings(scene, placed)),
};

/** What is said beside each code. */
export interface DrainUnitsMessages {
  'drain-units/ipc': NoParams;
  'drain-units/upc': NoParams;
  'drain-units/chicago': NoParams;
  'drain-units/municipal-old': NoParams;
  'drain-units/upc-intermittent': NoParams;
  'drain-units/cubic-foot': NoParams;
  'drain-units/as-continuous': NoParams;
  'drain-units/none-counts-more': NoParams;
  'drain-units/own-choice': NoParams;
}

const message = createMessages<DrainUnitsMessages>();

/** Every code beside the others, a steady flow and one that comes and goes; the one that counts for this plan says so. */
function deriveReadings(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const flowM3S = placed.sheet.drainFlow;
  if (flowM3S === null) return [askDataSheet(scene, placed, FLOW_INPUT, 'drainFlow')];
  const subjects = [placed.machine.id];
  const byFlow = (part: (typeof CODES | typeof BESIDE)[number], ...notes: Message[]): FigureReading => ({
    part,
    subjects,
    ...compute(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow, { flowM3S, rule: part }),
    notes: [message(`drain-units/${part}`), ...notes],
  });
  const readings = [
    ...CODES.map((part) => byFlow(part, message('drain-units/as-continuous'))),
    ...deriveByTable(placed),
    ...BESIDE.map((part) => byFlow(part)),
  ];
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits);
  return readings.map((reading) =>
    reading === governing ? { ...reading, notes: [...(reading.notes ?? []), governs(scene.plan.codes)] } : reading,
  );
}

/** By the table of an old city code, where it has a row for such a tank; a machine without one holds no more than a small one. */
function deriveByTable({ machine, sheet }: PlacedMachine): FigureReading[] {
  const tankM3 = sheet.tank?.volume ?? 0;
  const value = dishMachineUnits(tankM3);
  const how: Derivation = {
    formula: 'a value for each fixture',
    inputs: [{ name: 'What its tank holds', value: tankM3, unit: 'm3' }],
    source: [fixtureSource('municipal-old')],
  };
  const notes = [message('drain-units/municipal-old')];
  return value === null ? [] : [{ part: 'municipal-old', subjects: [machine.id], value, how, notes }];
}

/** The code of the plan; of several, the first of those that count most. */
export function findGoverningUnits<R extends FigureReading>(readings: readonly R[], code: Codes['drainUnits']): R | undefined {
  if (code !== 'strictest') return readings.find(({ part }) => part === code);
  const codes = readings.filter(({ part }) => part !== 'upc-intermittent' && part !== 'cubic-foot');
  return codes.reduce<R | undefined>((most, row) => (most === undefined || (row.value ?? 0) > (most.value ?? 0) ? row : most), undefined);
}

/** Why a code counts for this plan. */
export const governs = ({ drainUnits }: Codes): Message =>
  message(drainUnits === 'strictest' ? 'drain-units/none-counts-more' : 'drain-units/own-choice');

/** The codes that a plan may choose. */
const CODES = ['ipc', 'upc', 'chicago'] as const;

/** Shown beside them; they never count. */
const BESIDE = ['upc-intermittent', 'cubic-foot'] as const;
