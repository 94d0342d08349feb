import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/floor-drains';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const floor = (change: Partial<Plan['finish']>, edit: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    Object.assign(plan.finish, change);
    edit(plan);
  });
const of = (
  part: string,
  verdict: ExpectedFinding['verdict'],
  measured: ExpectedFinding['measured'],
  subjects: string[] = [],
): ExpectedFinding => ({
  part,
  verdict,
  subjects,
  measured,
});
const cove = of('cove', 'clear', true);
const drain = of('drain', 'clear', true, ['floor-drain']);
const fall = (verdict: ExpectedFinding['verdict'], slope: number | null) => ({ ...of('fall', verdict, slope), limit: 1 / 96 });
const steep = (verdict: ExpectedFinding['verdict'], slope: number) => ({ ...of('steep', verdict, slope), limit: 1 / 48 });

/** FDA Food Code 6-201.13 (secondary); 1:50 Marin County (read); ⅛ in/ft (secondary); 1:48 ADA 403.3 (read). */
describeCheck(check, [
  { name: '¼ in/ft, coved, drained', plan: linePlan(), expect: [cove, drain, fall('clear', 1 / 48), steep('clear', 1 / 48)] },
  {
    name: '⅛ in/ft',
    plan: floor({ floorSlope: 1 / 96 }),
    expect: [
      { ...fall('watch', 1 / 96), says: 'The floor falls ⅛″ per ft to its drain; some counties ask for ¼″ per ft.' },
      cove,
      drain,
      steep('clear', 1 / 96),
    ],
  },
  { name: 'less than ⅛ in/ft', plan: floor({ floorSlope: 0.005 }), expect: [fall('watch', 0.005), cove, drain, steep('clear', 0.005)] },
  {
    name: 'level',
    plan: floor({ floorSlope: 0 }),
    expect: [{ ...fall('stop', 0), says: 'The floor is level: it must be graded to its drain.' }, cove, drain, steep('clear', 0)],
  },
  { name: 'steeper than ¼ in/ft', plan: floor({ floorSlope: 0.03 }), expect: [steep('watch', 0.03), cove, drain, fall('clear', 0.03)] },
  { name: 'fall not known', plan: floor({ floorSlope: null }), expect: [{ ...fall('ask', null), asks: 'finish.floorSlope' }, cove, drain] },
  {
    name: 'not coved',
    plan: floor({ floorCoved: false }),
    expect: [of('cove', 'stop', false), drain, fall('clear', 1 / 48), steep('clear', 1 / 48)],
  },
  {
    name: 'coving not known',
    plan: floor({ floorCoved: null }),
    expect: [{ ...of('cove', 'ask', null), asks: 'finish.floorCoved' }, drain, fall('clear', 1 / 48), steep('clear', 1 / 48)],
  },
  {
    name: 'no drain',
    plan: floor({}, ({ room }) => void (room.floorDrains = [])),
    expect: [of('drain', 'stop', false), cove, fall('clear', 1 / 48), steep('clear', 1 / 48)],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
