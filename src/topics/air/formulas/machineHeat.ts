import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  findOutOfRange,
  formula,
  pick,
  type Refusal,
} from '../../../rules';
import { toSI } from '../../../units';

/** Edition of the table. They disagree, so the plan says which one it goes by. */
export const HEAT_TABLES = ['2001', '2009-2017'] as const;
export const MACHINE_KINDS = ['door', 'conveyor'] as const;
export const SANITIZINGS = ['hot-water', 'chemical'] as const;
/** How the vapour leaves: nothing takes it, a hood, the machine's own vent run, or the machine condenses it itself. */
export const VAPOUR_WAYS = ['none', 'hood', 'direct-vent', 'condensing'] as const;

export interface MachineHeatInputs {
  table: (typeof HEAT_TABLES)[number];
  machine: (typeof MACHINE_KINDS)[number];
  sanitizing: (typeof SANITIZINGS)[number];
  vapourWay: (typeof VAPOUR_WAYS)[number];
  dishesPerHour: number;
}

/** Heat that a machine gives to its room. */
export interface MachineHeat {
  sensibleW: number;
  latentW: number;
}

/**
 * Heat of a machine to the room while it washes. Under a hood only the sensible row of the table is left; a direct
 * vent is counted as a hood. A machine that condenses its own vapour is counted as if nothing took it, which is the
 * most it can be: what it wins back goes into its water, and its own sheet may say less.
 */
export function machineHeat(inputs: MachineHeatInputs): FormulaResult<MachineHeat> {
  const refusal = findOutOfRange(machineSensibleRecord, inputs) ?? findUnheld(inputs);
  if (refusal !== null) return { ok: false, refusal };
  const isTaken = inputs.vapourWay === 'hood' || inputs.vapourWay === 'direct-vent';
  const row = inputs.table === '2001' ? scale(OLDER[inputs.machine][inputs.sanitizing], inputs.dishesPerHour / 100) : NEWER;
  return { ok: true, value: isTaken ? { sensibleW: row.hoodedW, latentW: 0 } : { sensibleW: row.sensibleW, latentW: row.latentW } };
}

interface Row extends MachineHeat {
  hoodedW: number;
}

/** W to 100 dishes an hour, ASHRAE Fundamentals 2001 (SI), ch. 29 Table 5: single rows. */
const OLDER: Record<MachineHeatInputs['machine'], Record<MachineHeatInputs['sanitizing'], Row>> = {
  door: { chemical: { sensibleW: 50, latentW: 110, hoodedW: 50 }, 'hot-water': { sensibleW: 56, latentW: 123, hoodedW: 56 } },
  conveyor: { chemical: { sensibleW: 41, latentW: 97, hoodedW: 44 }, 'hot-water': { sensibleW: 44, latentW: 108, hoodedW: 50 } },
};

/** A door machine that washes, either way of sanitising (ASHRAE Fundamentals 2009–2017, unchecked); under a hood it radiates nothing. */
const NEWER: Row = { sensibleW: toSI(1980, 'Btu/h'), latentW: toSI(2790, 'Btu/h'), hoodedW: 0 };

const scale = ({ sensibleW, latentW, hoodedW }: Row, by: number): Row => ({
  sensibleW: sensibleW * by,
  latentW: latentW * by,
  hoodedW: hoodedW * by,
});

/** Where the table of door machines begins. A slower machine gives no more than this one. */
export const LEAST_DOOR_DISHES = 950;

const SIZES = { door: [LEAST_DOOR_DISHES, 2000], conveyor: [5000, 9000] } as const;
const also = 'the tables are held for door machines of 950 to 2000 dishes an hour and, in 2001, conveyors of 5000 to 9000';

function findUnheld({ table, machine, dishesPerHour }: MachineHeatInputs): Refusal | null {
  const [least, most] = SIZES[machine];
  const isHeld = table === '2001' ? dishesPerHour >= least && dishesPerHour <= most : machine === 'door';
  return isHeld ? null : createRefusal(machineSensibleRecord, 'machine-not-in-tables', { machine, dishesPerHour, table });
}

const older = 'ASHRAE Fundamentals 2001 (SI), ch. 29 Table 5';
const newer = 'ASHRAE Fundamentals 2009–2017, ch. 18 Table 5E, unchecked';
const law = 'Minn. R. 1346.0507: a machine with its own recovery counts with sensible and latent heat';

const inputs: FormulaRecord<MachineHeatInputs>['inputs'] = {
  table: { text: 'Edition of the table', choices: HEAT_TABLES },
  machine: { text: 'Kind of machine', choices: MACHINE_KINDS },
  sanitizing: { text: 'Way of sanitising', choices: SANITIZINGS },
  vapourWay: { text: 'How the vapour leaves', choices: VAPOUR_WAYS },
  dishesPerHour: { text: 'Dishes an hour; the later table does not ask', unit: '1/h', min: 950, max: 9000 },
};

const source: FormulaSource[] = [
  { text: older, documents: ['ashrae-fundamentals-2001'], confidence: 'read' },
  { text: newer, documents: ['ashrae-fundamentals-2009'], confidence: 'memory' },
  { text: law, documents: ['minnesota-1346'], confidence: 'read' },
  { text: 'A direct vent takes the vapour as a hood does', documents: ['common-practice'], confidence: 'practice' },
];

const door: MachineHeatInputs = { table: '2001', machine: 'door', sanitizing: 'hot-water', vapourWay: 'none', dishesPerHour: 1000 };

export const machineSensibleRecord: FormulaRecord<MachineHeatInputs> = {
  id: 'machine-sensible-heat',
  title: 'Sensible heat of the machine',
  formula: 'q_s = row of the table × dishes an hour / 100; later table: one value',
  inputs,
  result: { text: 'Sensible heat to the room', unit: 'W', min: 0, max: 10_000 },
  source,
  examples: [
    { kind: 'source', from: older, inputs: door, result: 560, tolerance: 1e-9 },
    { kind: 'source', from: older, inputs: { ...door, sanitizing: 'chemical', vapourWay: 'hood' }, result: 500, tolerance: 1e-9 },
    { kind: 'memory', from: newer, inputs: { ...door, table: '2009-2017' }, result: 580, tolerance: 1 },
  ],
  also,
};

export const machineLatentRecord: FormulaRecord<MachineHeatInputs> = {
  id: 'machine-latent-heat',
  title: 'Latent heat of the machine',
  formula: 'q_l = row of the table × dishes an hour / 100; 0 where a hood or a vent takes it',
  inputs,
  result: { text: 'Latent heat to the room', unit: 'W', min: 0, max: 10_000 },
  source,
  examples: [
    { kind: 'source', from: older, inputs: door, result: 1230, tolerance: 1e-9 },
    { kind: 'source', from: `${older}, under a hood sensible only`, inputs: { ...door, vapourWay: 'hood' }, result: 0, tolerance: 0 },
    { kind: 'memory', from: newer, inputs: { ...door, table: '2009-2017' }, result: 818, tolerance: 1 },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 540,
    formulas: [
      formula(machineSensibleRecord, (inputs) => pick(machineHeat(inputs), ({ sensibleW }) => sensibleW)),
      formula(machineLatentRecord, (inputs) => pick(machineHeat(inputs), ({ latentW }) => latentW)),
    ],
  },
];
