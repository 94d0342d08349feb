import { createRefusal, type Refusal } from '../../../../rules';

/** One point of the curve on a fan's data sheet. */
export interface FanPoint {
  airflowM3s: number;
  pressurePa: number;
}

/** Why a list of points is no fan curve; null when it is one. */
export function findCurveFault(curve: readonly FanPoint[], record: { id: string; title: string }): Refusal | null {
  if (curve.length < 2) return createRefusal(record, 'fan-curve-too-short', { points: curve.length });
  const isBad = ({ airflowM3s, pressurePa }: FanPoint, i: number) =>
    !(airflowM3s > (curve[i - 1]?.airflowM3s ?? -1) && airflowM3s >= 0 && pressurePa >= 0);
  const bad = curve.findIndex(isBad);
  return bad < 0 ? null : createRefusal(record, 'fan-curve-out-of-order', { point: bad + 1 });
}

export const FAN_CURVE_FORM = 'a fan curve has two points or more, airflow rising from 0 or above, no pressure below 0';

export interface FanChange {
  /** New speed over that of the sheet. */
  speedRatio: number;
  /** Density of the air over that for which the sheet is drawn. */
  densityRatio: number;
}

/** The curve of the same fan at another speed and in other air, by the fan laws. */
export const scaleFanCurve = (curve: readonly FanPoint[], { speedRatio, densityRatio }: FanChange): FanPoint[] =>
  curve.map(({ airflowM3s, pressurePa }) => ({
    airflowM3s: airflowM3s * speedRatio,
    pressurePa: pressurePa * speedRatio ** 2 * densityRatio,
  }));
