import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule as fanAirflowFigure, rule } from '../../../../src/topics/duct/figures/fan-airflow';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';
import { densityBy, lossBy, runPlan, ventSheet } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 10_000]] as const;

/** Fan law: pressure goes with the density; the sheet is drawn for 0.075 lb/ft³. */
const THINNER = densityBy(35, 0.7, 100) / 1.2014;
const CURVE = [
  [0, 300],
  [0.06, 292],
  [0.12, 268],
  [0.18, 222],
  [0.24, 150],
  [0.28, 75],
  [0.31, 0],
] as const;

/** Where the family's curve meets 10 m of straight run with entry 0.57 and a capped end, by halving. */
function meetingBy(): number {
  let [low, high] = [0.05, 0.31];
  for (let i = 0; i < 60; i++) {
    const airflow = (low + high) / 2;
    const loss = lossBy({ airflow, diameter: 0.1778, length: 10, coefficients: 1.82 });
    if (fanBy(airflow) > loss) low = airflow;
    else high = airflow;
  }
  return low;
}

function fanBy(airflow: number): number {
  const at = CURVE.findIndex(([q]) => q >= airflow);
  const [[q0, p0], [q1, p1]] = [CURVE[at - 1] ?? [0, 0], CURVE[at] ?? [0, 0]];
  return THINNER * (p0 + ((p1 - p0) * (airflow - q0)) / (q1 - q0));
}

describeFigure(rule, [
  { name: 'meets the run', plan: runPlan(UP), expect: [{ subjects, value: meetingBy(), within: 2e-4, notes: 'fan laws' }] },
  {
    name: 'does not depend on what the run must carry',
    plan: runPlan(UP, { airflow: 0.3 }),
    expect: [{ subjects, value: meetingBy(), within: 2e-4 }],
  },
  {
    name: 'no curve on a sheet of the plan’s own',
    plan: linePlan({ family: ventSheet({ fanCurve: [] }) }),
    expect: [{ subjects, value: null, asks: 'sheets.0.vent.fanCurve' }],
  },
  {
    name: 'a curve that ends before the two meet',
    plan: linePlan({
      family: ventSheet({
        fanCurve: [
          { airflow: 0, pressure: 430 },
          { airflow: 0.1, pressure: 400 },
        ],
      }),
    }),
    expect: [{ subjects, value: null, refuses: 'do not meet' }],
  },
  { name: 'material not known', plan: runPlan(UP, { material: null }), expect: [{ subjects, value: null, asks: 'runs.0.duct.material' }] },
  { name: 'a machine under a hood', plan: linePlan({ family: ownDataSheet({}) }), expect: [] },
]);

describe('the airflow of a fan', () => {
  const airflowOf = (plan: Plan) => readFigure(fanAirflowFigure, deriveScene(plan))[0]?.value ?? Number.NaN;

  it('falls with a longer run', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 40_000 }), (rise) => {
        expect(airflowOf(runPlan([[0, 0, rise + 500]]))).toBeLessThan(airflowOf(runPlan([[0, 0, rise]])));
      }),
      { numRuns: 25 },
    );
  });
});
