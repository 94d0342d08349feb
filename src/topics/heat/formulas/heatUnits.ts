import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  type Limit,
  limit,
} from '../../../rules';
import { fromSI, toSI } from '../../../units';

export interface HeatUnitInputs {
  /** Temperature at the plates, at even steps of time. */
  tempsC: readonly number[];
  stepS: number;
}

/** What a cycle must give at the surface of the dishes. */
export const HEAT_UNITS: Limit = limit(
  'heat-units',
  'Heat units of a cycle',
  'count',
  { min: 3600 },
  {
    text: 'NSF/ANSI 3, as a comparison with NSF/ANSI 184 restates it',
    documents: ['nsf-ansi-3'],
    confidence: 'secondary',
  },
);

/** Heat-unit equivalents of a cycle, from the temperature at the plates: straight between the points, no credit above 165 °F. */
export function heatUnits(inputs: HeatUnitInputs): FormulaResult {
  const refusal = findOutOfRange(heatUnitsRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const points = inputs.tempsC.length;
  if (points < 2) return { ok: false, refusal: createRefusal(heatUnitsRecord, 'too-few-points', { points }, { input: 'tempsC' }) };
  return { ok: true, value: accumulateHeatUnits(inputs).at(-1) ?? 0 };
}

/** Heat units up to each point of the curve, for its picture; the first is 0. */
export function accumulateHeatUnits({ tempsC, stepS }: HeatUnitInputs): number[] {
  let sum = 0;
  return tempsC.map((temp, i) => {
    if (i > 0) sum += heatUnitsBetween(tempsC[i - 1] ?? temp, temp, stepS);
    return sum;
  });
}

const COLD_RATE = 3.03438e-17;
const PER_F = 0.265972;
const CAP_C = toSI(165, 'F');

/** Heat units in a second at a temperature that stands still. */
export const heatUnitRate = (tempC: number): number => COLD_RATE * Math.exp(PER_F * fromSI(Math.min(tempC, CAP_C), 'F'));

/** Over one straight piece of the curve, exactly; the part above the cap is counted at the cap. */
export function heatUnitsBetween(fromC: number, toC: number, seconds: number): number {
  const low = Math.min(fromC, toC);
  const high = Math.max(fromC, toC);
  if (low >= CAP_C || high - low < 1e-6) return seconds * heatUnitRate((low + high) / 2);
  const belowS = (seconds * (Math.min(high, CAP_C) - low)) / (high - low);
  const growth = PER_F * fromSI(Math.min(high, CAP_C) - low, 'deltaF');
  const below = (belowS * heatUnitRate(low) * Math.expm1(growth)) / growth;
  return below + (seconds - belowS) * heatUnitRate(CAP_C);
}

const slides = '“Sanitation History”, slides of 14 Dec 2009';
const steady = (f: number, seconds: number): HeatUnitInputs => ({ tempsC: [toSI(f, 'F'), toSI(f, 'F')], stepS: seconds });

export const heatUnitsRecord: FormulaRecord<HeatUnitInputs> = {
  id: 'heat-units',
  title: 'Heat units of a cycle',
  formula: 'HUE = ∫ 3.03438·10^−17 · e^(0.265972 T) dt, T in °F and at most 165',
  inputs: {
    tempsC: { text: 'Temperature at the plates', unit: 'C', min: 0, max: 100 },
    stepS: { text: 'Time from one point to the next', unit: 's', min: 0.01, max: 7200 },
  },
  result: { text: 'Heat-unit equivalents', unit: 'count', min: 0, max: 3e6 },
  source: [{ text: `${slides}: rate and basis`, documents: ['sanitation-history'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: `${slides}: 143 °F for 1800 s are 1800 HUE`, inputs: steady(143, 1800), result: 1800, tolerance: 0.5 },
    { kind: 'source', from: `${slides}: 161 °F for 15 s are 1800 HUE`, inputs: steady(161, 15), result: 1800, tolerance: 0.5 },
    {
      kind: 'source',
      from: `${slides}: 165 °F and up for 30 s are 10,404 HUE`,
      inputs: steady(180, 30),
      result: 10_404,
      tolerance: 52,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1010, formulas: [formula(heatUnitsRecord, heatUnits)] },
  { order: 440, limits: [HEAT_UNITS] },
];
