import type { Scene } from '../../../../scene';
import { needRunFan, type RunFan } from './runFan';

/** A point of a curve: airflow in m³/s, pressure in Pa. */
export interface FanPicturePoint {
  airflow: number;
  pressure: number;
}

/** The curves of a fan and of the run that it blows through, in the air of the run. */
export interface FanPicture {
  /** Points of the fan's curve, airflow rising; straight lines between them. */
  fan: FanPicturePoint[];
  /** Points of p = K Q² from 0 as far as the fan's curve reaches, or to a little above its highest pressure. */
  system: FanPicturePoint[];
  /** Where the two meet: there the fan runs. null where they do not. */
  point: FanPicturePoint | null;
  /** Airflow that the run must carry, m³/s, and the loss of the run at it. */
  needed: FanPicturePoint;
}

/** The picture of a run's fan; null where it has no fan curve, or an input of its loss is missing. */
export function deriveFanPicture(scene: Scene, runId: string): FanPicture | null {
  const placed = scene.runs.find(({ run }) => run.id === runId);
  const fan = placed === undefined ? null : needRunFan(scene, placed);
  return fan === null || 'reading' in fan ? null : createPicture(fan.known);
}

function createPicture({ curve, systemK, point, duct }: RunFan): FanPicture {
  const { airflowM3s } = duct;
  return {
    fan: curve.map(({ airflowM3s: airflow, pressurePa: pressure }) => ({ airflow, pressure })),
    system: systemPoints(curve, systemK),
    point: point.ok ? { airflow: point.value.airflowM3s, pressure: point.value.pressurePa } : null,
    needed: { airflow: airflowM3s, pressure: systemK * airflowM3s ** 2 },
  };
}

/** So many equal steps of airflow draw the parabola smooth. */
const STEPS = 24;
/** A system that rises steeply is drawn to a little above the fan's highest pressure. */
const HEADROOM = 1.1;

function systemPoints(curve: RunFan['curve'], systemK: number): FanPicturePoint[] {
  const last = curve.at(-1)?.airflowM3s ?? 0;
  const highest = Math.max(...curve.map(({ pressurePa }) => pressurePa)) * HEADROOM;
  const most = systemK > 0 ? Math.min(last, Math.sqrt(highest / systemK)) : last;
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const airflow = (most * step) / STEPS;
    return { airflow, pressure: systemK * airflow ** 2 };
  });
}
