import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, type Refusal } from '../../../rules';
import { toSI } from '../../../units';
import { heatUnitsBetween, heatUnitsRecord } from './heatUnits';

export interface RecordedHeatUnitInputs {
  /** Since the start of the cycle, rising from point to point. */
  atS: readonly number[];
  /** Temperature at the plates at each of these times. */
  tempsC: readonly number[];
}

/** Heat-unit equivalents of a cycle that a thermometer wrote down at times of its own: straight between the points, no credit above 165 °F. */
export function recordedHeatUnits(inputs: RecordedHeatUnitInputs): FormulaResult {
  const refusal = findOutOfRange(recordedHeatUnitsRecord, inputs) ?? findBrokenRow(inputs);
  return refusal === null ? { ok: true, value: accumulateRecordedHeatUnits(inputs).at(-1) ?? 0 } : { ok: false, refusal };
}

/** Heat units up to each point of the record; the first is 0. For a record in order. */
export function accumulateRecordedHeatUnits({ atS, tempsC }: RecordedHeatUnitInputs): number[] {
  let sum = 0;
  return tempsC.map((temp, i) => {
    if (i > 0) sum += heatUnitsBetween(tempsC[i - 1] ?? temp, temp, (atS[i] ?? 0) - (atS[i - 1] ?? 0));
    return sum;
  });
}

const also = 'a record has two points at least, and each comes after the one before it';

function findBrokenRow({ atS, tempsC }: RecordedHeatUnitInputs): Refusal | null {
  if (atS.length !== tempsC.length)
    return createRefusal(recordedHeatUnitsRecord, 'record-lengths-differ', { times: atS.length, temperatures: tempsC.length });
  if (atS.length < 2) return createRefusal(recordedHeatUnitsRecord, 'record-too-short', { points: atS.length });
  const late = atS.findIndex((at, i) => i > 0 && at <= (atS[i - 1] ?? 0));
  if (late < 0) return null;
  return createRefusal(recordedHeatUnitsRecord, 'record-goes-back', { fromS: atS[late - 1] ?? 0, toS: atS[late] ?? 0 });
}

const slides = '“Sanitation History”, slides of 14 Dec 2009';
const f = (...degrees: number[]) => degrees.map((value) => toSI(value, 'F'));

export const recordedHeatUnitsRecord: FormulaRecord<RecordedHeatUnitInputs> = {
  id: 'recorded-heat-units',
  title: 'Heat units of a record',
  formula: heatUnitsRecord.formula,
  inputs: {
    atS: { text: 'Since the start of the cycle', unit: 's', min: 0, max: 7200 },
    tempsC: { text: 'Temperature at the plates', unit: 'C', min: 0, max: 120 },
  },
  result: { text: 'Heat-unit equivalents', unit: 'count', min: 0, max: 3e6 },
  also,
  source: heatUnitsRecord.source,
  examples: [
    {
      kind: 'source',
      from: `${slides}: 143 °F for 1800 s are 1800 HUE, read at 0, 300 and 1800 s`,
      inputs: { atS: [0, 300, 1800], tempsC: f(143, 143, 143) },
      result: 1800,
      tolerance: 0.5,
    },
    {
      kind: 'source',
      from: `${slides}: 165 °F and up for 30 s are 10,404 HUE, read at 5, 6 and 35 s`,
      inputs: { atS: [5, 6, 35], tempsC: f(165, 171, 180) },
      result: 10_404,
      tolerance: 52,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1020, formulas: [formula(recordedHeatUnitsRecord, recordedHeatUnits)] }];
