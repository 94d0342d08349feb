import { describe, expect, it } from 'vitest';
import { readFigure } from '../../../../../src/rules';
import { deriveScene } from '../../../../../src/scene';
import { rule as fanAirflowFigure } from '../../../../../src/topics/duct/figures/fan-airflow';
import { rule as fanPressureFigure } from '../../../../../src/topics/duct/figures/fan-pressure';
import { deriveFanPicture } from '../../../../../src/topics/duct/figures/support/fanPicture';
import { linePlan } from '../../../../support/linePlan';
import { runPlan, ventSheet } from '../../../../support/runPlans';

const UP = [[0, 0, 10_000]] as const;
const scene = deriveScene(runPlan(UP));

describe('the picture of a fan and its run', () => {
  const picture = deriveFanPicture(scene, 'run');

  it('has both curves: the fan falls, the system rises from nothing', () => {
    const falls = picture?.fan.every(({ pressure }, i, all) => i === 0 || pressure < (all[i - 1]?.pressure ?? 0));
    const rises = picture?.system.every(({ pressure }, i, all) => i === 0 || pressure > (all[i - 1]?.pressure ?? Number.POSITIVE_INFINITY));
    expect({ falls, rises, first: picture?.system[0] }).toEqual({ falls: true, rises: true, first: { airflow: 0, pressure: 0 } });
  });

  it('marks the point of the figures, and it lies on the parabola', () => {
    expect(picture?.point?.airflow).toBe(readFigure(fanAirflowFigure, scene)[0]?.value);
    expect(picture?.point?.pressure).toBe(readFigure(fanPressureFigure, scene)[0]?.value);
    const last = picture?.system.at(-1);
    const k = (last?.pressure ?? 0) / (last?.airflow ?? 1) ** 2;
    expect(picture?.point?.pressure).toBeCloseTo(k * (picture?.point?.airflow ?? 0) ** 2, 9);
  });

  it('marks what is needed', () => expect(picture?.needed.airflow).toBe(0.2));

  it('of a run that chokes the fan stays on the paper', () => {
    const choked = deriveFanPicture(deriveScene(runPlan(UP, { sides: { width: 80, height: 80 } })), 'run');
    expect(choked?.system.at(-1)?.pressure).toBeLessThan(1.2 * (choked?.fan[0]?.pressure ?? 0));
  });

  it('has no point where the curves do not meet', () => {
    const fanCurve = [
      { airflow: 0, pressure: 430 },
      { airflow: 0.1, pressure: 400 },
    ];
    const short = deriveFanPicture(deriveScene(linePlan({ family: ventSheet({ fanCurve }) })), 'run');
    expect({ point: short?.point, points: short?.fan.length }).toEqual({ point: null, points: 2 });
  });

  it.each([
    ['no such run', deriveScene(runPlan(UP)), 'other'],
    ['an input is missing', deriveScene(runPlan(UP, { cap: null })), 'run'],
    ['no curve', deriveScene(linePlan({ family: ventSheet({}) })), 'run'],
    ['a machine under a hood', deriveScene(linePlan()), 'run'],
  ])('there is none: %s', (_name, of, id) => expect(deriveFanPicture(of, id)).toBeNull());
});
