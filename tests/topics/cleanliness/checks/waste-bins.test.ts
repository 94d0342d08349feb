import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/waste-bins';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const without = (...ids: string[]) => linePlan({}, (plan: Plan) => void (plan.things = plan.things.filter(({ id }) => !ids.includes(id))));
const room = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'room',
  verdict,
  subjects: [],
  measured,
  limit: 1,
});
const sink = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'hand-sink',
  verdict,
  subjects: ['hand-sink'],
  measured,
  limit: 1524,
});
const scrap = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'scrap',
  verdict,
  subjects: ['scrap', 'soiled-table'],
  measured,
  limit: 1524,
});

/** A receptacle where refuse arises and one at each hand sink: WAC 246-215-05530 (read); two steps are common practice. */
describeCheck(check, [
  // The sink from 1749 to 2179, the bin from 2289.
  { name: 'one for scraps, one 110 from the sink', plan: linePlan(), expect: [room('clear', 2), sink('clear', 110), scrap('clear', 1340)] },
  {
    name: 'none at the sink: the other is across the room',
    plan: without('hand-sink-bin'),
    // From 370, 370 to 1749, 3669.5.
    expect: [sink('watch', Math.hypot(1379, 3299.5)), room('clear', 1), scrap('clear', 1340)],
  },
  {
    name: 'none',
    plan: without('hand-sink-bin', 'waste-bin'),
    expect: [{ ...room('watch', 0), says: 'No bin is drawn. Give the soiled side one.' }],
  },
  {
    name: 'none at the scrap opening',
    plan: without('waste-bin'),
    expect: [
      {
        // From 1910, 724 to the bin at the hand sink, 2289, 3679.5.
        ...scrap('watch', Math.hypot(379, 2955.5)),
        says: 'The nearest bin is 9′ 9 ⁵⁄₁₆″ from the scrap opening. Stand one beside it, within 5′ 0″.',
      },
      room('clear', 1),
      sink('clear', 110),
    ],
  },
  { name: 'no hand sink', plan: without('hand-sink'), expect: [room('clear', 2), scrap('clear', 1340)] },
  {
    name: 'no scrap opening',
    plan: linePlan({}, (plan) => {
      for (const table of plan.tables) table.fittings = table.fittings.filter(({ kind }) => kind !== 'scrap');
    }),
    expect: [room('clear', 2), sink('clear', 110)],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
