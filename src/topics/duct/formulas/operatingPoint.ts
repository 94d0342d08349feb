import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, type Refusal } from '../../../rules';
import { toSI } from '../../../units';
import { FAN_CURVE_FORM, type FanPoint, findCurveFault } from './support/fanCurve';

export interface OperatingPoint extends FanPoint {
  /** How often the curves meet. More than once, and the fan may hunt between them; the one of most air is given. */
  crossings: number;
}

/**
 * Where a fan runs: where its curve meets that of the system, p = K Q². It refuses where they meet nowhere on
 * the curve, and says on which side the system lies.
 */
export function solveOperatingPoint(fanCurve: readonly FanPoint[], systemK: number): FormulaResult<OperatingPoint> {
  const fault = findCurveFault(fanCurve, operatingPointRecord) ?? findSystemFault(systemK);
  if (fault !== null) return { ok: false, refusal: fault };
  const airflows = crossings(fanCurve, systemK);
  const airflowM3s = airflows.at(-1);
  if (airflowM3s === undefined) return { ok: false, refusal: whyApart(fanCurve, systemK) };
  return { ok: true, value: { airflowM3s, pressurePa: systemK * airflowM3s ** 2, crossings: airflows.length } };
}

/** All airflows where the curves meet, rising; a meeting at a joint of two lines counts once. */
function crossings(curve: readonly FanPoint[], systemK: number): number[] {
  const all = curve.slice(1).flatMap((end, i) => onLine(curve[i] ?? end, end, systemK));
  return all.filter((airflow, i) => i === 0 || airflow - (all[i - 1] ?? 0) > 1e-9 * airflow);
}

/** Where p₀ + m (Q − Q₀) = K Q² on one straight piece. */
function onLine(start: FanPoint, end: FanPoint, systemK: number): number[] {
  const slope = (end.pressurePa - start.pressurePa) / (end.airflowM3s - start.airflowM3s);
  const height = start.pressurePa - slope * start.airflowM3s;
  const slack = 1e-12 * end.airflowM3s;
  const isOn = (airflow: number) => airflow >= start.airflowM3s - slack && airflow <= end.airflowM3s + slack;
  return rootsOf(systemK, -slope, -height).filter(isOn);
}

/** Real roots of a x² + b x + c, rising, without the loss of digits of the school's form. */
function rootsOf(a: number, b: number, c: number): number[] {
  const inside = b ** 2 - 4 * a * c;
  if (inside < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  const roots = [...(a === 0 ? [] : [q / a]), ...(q === 0 ? [] : [c / q])];
  return roots.sort((one, other) => one - other);
}

const findSystemFault = (systemK: number) =>
  systemK >= 0 && systemK < Number.POSITIVE_INFINITY
    ? null
    : createRefusal(operatingPointRecord, 'below-least', {}, { input: 'systemK', value: systemK, min: 0 });

function whyApart(curve: readonly FanPoint[], systemK: number): Refusal {
  const last = curve.at(-1);
  const isFree = last !== undefined && last.pressurePa > systemK * last.airflowM3s ** 2;
  return createRefusal(operatingPointRecord, isFree ? 'system-too-free' : 'system-too-tight', {});
}

interface OperatingInputs {
  airflowsM3s: readonly number[];
  pressuresPa: readonly number[];
  systemK: number;
}

/** The same in plain numbers, for the record: the airflow of the operating point. */
export function operatingAirflow(inputs: OperatingInputs): FormulaResult {
  const refusal = findOutOfRange(operatingPointRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const curve = inputs.airflowsM3s.map((airflowM3s, i) => ({ airflowM3s, pressurePa: inputs.pressuresPa[i] ?? -1 }));
  const point = solveOperatingPoint(curve, inputs.systemK);
  return point.ok ? { ok: true, value: point.value.airflowM3s } : point;
}

const ALSO = 'two curves that meet';

const algebra = 'Algebra: fan 1.0 − (Q/1000)² in. wg, system 3 (Q/1000)² meet at 500 cfm';
const THOUSAND = toSI(1000, 'cfm');
const shares = Array.from({ length: 11 }, (_, i) => i / 10);

export const operatingPointRecord: FormulaRecord<OperatingInputs> = {
  id: 'fan-operating-point',
  title: 'Operating point of a fan',
  formula: 'p_fan(Q) = K Q², straight lines between the points of the fan curve',
  inputs: {
    airflowsM3s: { text: 'Airflows of the curve, rising', unit: 'm3/s', min: 0, max: 100 },
    pressuresPa: { text: 'Pressure at each of them', unit: 'Pa', min: 0, max: 10_000 },
    systemK: { text: 'Coefficient of the system', unit: 'Pa·s2/m6', min: 0, max: 1e9 },
  },
  result: { text: 'Airflow of the operating point', unit: 'm3/s', min: 0, max: 100 },
  source: [
    {
      text: `A fan runs only where its curve and the system's intersect; ${FAN_CURVE_FORM}`,
      documents: ['fan-system-principle'],
      confidence: 'read',
    },
  ],
  examples: [
    {
      kind: 'regression',
      from: algebra,
      inputs: {
        airflowsM3s: shares.map((share) => share * THOUSAND),
        pressuresPa: shares.map((share) => toSI(1 - share ** 2, 'inH2O')),
        systemK: toSI(3, 'inH2O') / THOUSAND ** 2,
      },
      result: toSI(500, 'cfm'),
      tolerance: 1e-9,
    },
  ],
  unprinted: 'The principle is published, a case with numbers is not: the example is algebra.',
  also: ALSO,
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 370, formulas: [formula(operatingPointRecord, operatingAirflow)] }];
