import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/drying-places';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

const of = (verdict: ExpectedFinding['verdict'], measured: number, limit: number, storage = true): ExpectedFinding => ({
  verdict,
  subjects: ['clean-table', ...(storage ? ['clean-shelving'] : [])],
  measured,
  limit,
});
const landing = (length: number) => (plan: Plan) => {
  for (const fitting of tableOf(plan, 'clean').fittings) Object.assign(fitting, { length, at: length / 2 });
};
const chemical = { family: 'chemical-sanitising' } as const;

/** 3 places after hot water and 5 after chemicals: City of Orono MN (read); racks of 20 in. */
describeCheck(check, [
  {
    name: 'hot water: 3 on 1530, 2 on a shelf of 1220',
    plan: linePlan(),
    expect: [
      {
        ...of('clear', 5, 3),
        says: '3 racks can dry on the clean table and 2 racks on a shelf of the storage; 3 places are wanted after hot water.',
      },
    ],
  },
  { name: 'chemicals: just 5', plan: linePlan(chemical), expect: [of('clear', 5, 5)] },
  {
    name: 'chemicals, 2 racks on the table',
    plan: linePlan(chemical, landing(1523)),
    expect: [
      {
        ...of('watch', 4, 5),
        says: '2 racks can dry on the clean table and 2 racks on a shelf of the storage; 5 places are wanted after chemicals. Lengthen the table or add a rack to dry on.',
      },
    ],
  },
  {
    name: 'hot water, the table alone',
    plan: linePlan({}, ({ things }) => void things.splice(0, 1)),
    expect: [of('clear', 3, 3, false)],
  },
  {
    name: 'hot water, 2 racks on the table alone',
    plan: linePlan({}, (plan) => {
      landing(1100)(plan);
      plan.things.splice(0, 1);
    }),
    expect: [of('watch', 2, 3, false)],
  },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
