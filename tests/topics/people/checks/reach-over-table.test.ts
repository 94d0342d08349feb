import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/reach-over-table';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';
import { addShelf } from '../../../support/roomPlan';

const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit: 677,
});
/** 273 to the rack line and half a rack of 508, or half a bowl of 510. */
const [RACK, BOWL] = [527, 528];
const clean = of('clean-table', 'clear', RACK);
const soiled = of('soiled-table', 'clear', BOWL);
const change = (edit: (plan: Plan) => void) => linePlan({}, edit);

/** 26.7 in: MIL-STD-1472G, App. B, 5th percentile female (read). */
describeCheck(check, [
  { name: 'a whole line', plan: linePlan(), expect: [soiled, clean] },
  {
    name: 'the rack line of the clean table 450 from the edge',
    plan: change((plan) => void (tableOf(plan, 'clean').rackLineFromEdge = 450)),
    expect: [
      {
        ...of('clean-table', 'watch', 704),
        says: 'At the clean table hands reach 2′ 3 ¹¹⁄₁₆″, to the far edge of a rack, 1 ¹⁄₁₆″ more than a person with a short reach. Bring it nearer to the edge.',
      },
      soiled,
    ],
  },
  {
    name: 'a bowl of 810 across',
    plan: change((plan) => {
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'sink') fitting.width = 810;
    }),
    expect: [of('soiled-table', 'watch', 678), clean],
  },
  {
    name: 'an overshelf 50 deep at the back of the clean table',
    plan: change((plan) => {
      addShelf(tableOf(plan, 'clean'), 100, 700, 1400);
      const shelf = tableOf(plan, 'clean').fittings.at(-1);
      if (shelf?.kind === 'overshelf') shelf.depth = 50;
    }),
    expect: [of('clean-table', 'watch', 712), soiled],
  },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
