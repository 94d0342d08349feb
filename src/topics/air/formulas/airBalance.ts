import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  findOutOfRange,
  formula,
} from '../../../rules';
import { toSI } from '../../../units';

export interface TotalExhaustInputs {
  airflowsM3s: readonly number[];
}

/** All the air in m³/s that hoods, runs and fans draw out of a room. */
export function totalExhaust(inputs: TotalExhaustInputs): FormulaResult {
  const refusal = findOutOfRange(totalExhaustRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.airflowsM3s.reduce((sum, one) => sum + one, 0) } : { ok: false, refusal };
}

export interface TransferAirInputs {
  exhaustM3s: number;
  makeUpM3s: number;
}

/** Air in m³/s that comes in from the rooms about it and through leaks; below 0 the room blows its own air out into them. */
export function transferAir(inputs: TransferAirInputs): FormulaResult {
  const refusal = findOutOfRange(transferAirRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.exhaustM3s - inputs.makeUpM3s } : { ok: false, refusal };
}

export interface ExhaustShareInputs {
  /** What hoods and runs draw at the machines. */
  atMachinesM3s: number;
  exhaustM3s: number;
}

/** Part of the exhaust that is drawn at the machines; the rest is drawn at the ceiling. */
export function exhaustShare(inputs: ExhaustShareInputs): FormulaResult {
  const refusal = findOutOfRange(exhaustShareRecord, inputs) ?? findMore(inputs);
  return refusal === null ? { ok: true, value: inputs.atMachinesM3s / inputs.exhaustM3s } : { ok: false, refusal };
}

const also = 'no more is drawn at the machines than in all';

const findMore = ({ atMachinesM3s, exhaustM3s }: ExhaustShareInputs) =>
  atMachinesM3s <= exhaustM3s * (1 + 1e-9)
    ? null
    : createRefusal(exhaustShareRecord, 'drawn-exceeds-exhaust', { atMachinesM3s, exhaustM3s });

const schedule: FormulaSource = {
  text: 'NYC Mechanical Code 508.1.2: the drawings balance exhaust with make-up, transfer and infiltration',
  documents: ['nyc-mechanical-code'],
  confidence: 'read',
};
const army = 'UFC 3-410-01FA (15 May 2003), 4-10.1, superseded: about 75 % at the dishwasher, the rest at the ceiling';
const airflow = (text: string, min = 0) => ({ text, unit: 'm3/s', min, max: 1000 }) as const;
const unprinted = 'The balance is a sum: no document prints a case of it.';

export const totalExhaustRecord: FormulaRecord<TotalExhaustInputs> = {
  id: 'total-exhaust',
  title: 'Air drawn out of a room',
  formula: 'Q = Σ Q_i',
  inputs: { airflowsM3s: airflow('Hood, run or fan') },
  result: { text: 'Exhaust', unit: 'm3/s', min: 0, max: Number.POSITIVE_INFINITY },
  source: [schedule],
  examples: [
    {
      kind: 'regression',
      from: 'a hood of 400 cfm and 100 cfm at the ceiling',
      inputs: { airflowsM3s: [toSI(400, 'cfm'), toSI(100, 'cfm')] },
      result: toSI(500, 'cfm'),
      tolerance: 1e-12,
    },
  ],
  unprinted,
};

export const transferAirRecord: FormulaRecord<TransferAirInputs> = {
  id: 'transfer-air',
  title: 'Air from the next rooms',
  formula: 'Q_t = Q − Q_m',
  inputs: { exhaustM3s: airflow('Exhaust of the room'), makeUpM3s: airflow('Make-up air') },
  result: { text: 'Air from the next rooms; below 0 out into them', unit: 'm3/s', min: -1000, max: 1000 },
  source: [schedule],
  examples: [
    {
      kind: 'regression',
      from: '400 cfm out and 320 cfm of make-up air: 80 cfm of transfer air',
      inputs: { exhaustM3s: toSI(400, 'cfm'), makeUpM3s: toSI(320, 'cfm') },
      result: toSI(80, 'cfm'),
      tolerance: 1e-12,
    },
  ],
  unprinted,
};

export const exhaustShareRecord: FormulaRecord<ExhaustShareInputs> = {
  id: 'exhaust-share',
  title: 'Part of the exhaust at the machines',
  formula: 's = Q_machines / Q',
  inputs: { atMachinesM3s: airflow('Drawn at the machines'), exhaustM3s: airflow('Exhaust of the room', 0.001) },
  result: { text: 'Part drawn at the machines', unit: 'share', min: 0, max: 1 + 1e-9 },
  source: [{ text: army, documents: ['ufc-3-410-01fa'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${army}: 300 of 400 cfm`,
      inputs: { atMachinesM3s: toSI(300, 'cfm'), exhaustM3s: toSI(400, 'cfm') },
      result: 0.75,
      tolerance: 1e-12,
    },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 570,
    formulas: [
      formula(totalExhaustRecord, totalExhaust),
      formula(transferAirRecord, transferAir),
      formula(exhaustShareRecord, exhaustShare),
    ],
  },
];
