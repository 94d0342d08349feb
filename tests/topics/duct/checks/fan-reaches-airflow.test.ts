import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/duct/checks/fan-reaches-airflow';
import { rule as fanAirflowFigure } from '../../../../src/topics/duct/figures/fan-airflow';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runPlan, ventSheet } from '../../../support/runPlans';

const UP = [[0, 0, 10_000]] as const;
const TURNS = [
  [0, 0, 1000],
  [-1000, 0, 0],
  [0, 0, 1000],
] as const;
const MITRED = { bendMake: null, bendRadius: 0 } as const;
const LONG = [[0, 0, 60_000]] as const;
const airflowOf = (plan: Parameters<typeof deriveScene>[0]) => readFigure(fanAirflowFigure, deriveScene(plan))[0]?.value ?? Number.NaN;
const found = (verdict: ExpectedFinding['verdict'], measured: number | null, limit = 0.2): ExpectedFinding => ({
  verdict,
  subjects: ['run', 'machine'],
  measured,
  limit,
});
/** A fan that moves its air only freely: with no curve that reaches the run the formula says so. */
const weak = ventSheet({
  fanCurve: [
    { airflow: 0, pressure: 60 },
    { airflow: 0.3, pressure: 0 },
  ],
});

describeCheck(check, [
  { name: 'a run of 10 m', plan: runPlan(UP), expect: [found('clear', airflowOf(runPlan(UP)))] },
  { name: 'a run of 60 m', plan: runPlan(LONG), expect: [found('stop', airflowOf(runPlan(LONG)))] },
  {
    name: 'the plan wants more of the same run',
    plan: runPlan(UP, { airflow: 0.3 }),
    expect: [found('stop', airflowOf(runPlan(UP)), 0.3)],
  },
  { name: 'a weak fan', plan: linePlan({ family: weak }), expect: [found('stop', airflowOf(linePlan({ family: weak })))] },
  {
    name: 'no curve on the sheet',
    plan: linePlan({ family: ventSheet({}) }),
    expect: [{ ...found('ask', null), asks: 'sheets.0.vent.fanCurve' }],
  },
  {
    name: 'the cap is not known',
    plan: runPlan(UP, { cap: null }),
    expect: [{ ...found('ask', null), asks: 'runs.0.duct.cap' }],
  },
  {
    name: 'bends whose make is not known may lose more than smooth ones, with which the fan does',
    plan: runPlan(TURNS, { bendMake: null }),
    expect: [{ ...found('ask', null), asks: 'runs.0.duct.bendMake' }],
  },
  {
    name: 'too weak for smooth bends, however they are made',
    plan: runPlan(TURNS, { bendMake: null, airflow: 0.3 }),
    expect: [found('stop', airflowOf(runPlan(TURNS, { airflow: 0.3 })), 0.3)],
  },
  { name: 'a mitred bend has one make', plan: runPlan(TURNS, MITRED), expect: [found('clear', airflowOf(runPlan(TURNS, MITRED)))] },
  { name: 'a run without bends asks for no make', plan: runPlan(UP, { bendMake: null }), expect: [found('clear', airflowOf(runPlan(UP)))] },
  { name: 'a machine under a hood', plan: linePlan(), expect: [] },
]);
