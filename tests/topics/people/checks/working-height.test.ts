import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/working-height';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

const deck = (jointHeight: number | null) =>
  linePlan({}, (plan: Plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight, fall: 1 / 48 }));
const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: number | null, limit: number): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit,
});
const [LOW, HIGH] = [711.2, 939.8];
const soiled = of('soiled-table', 'clear', 863.6, HIGH);

/** 28 in for heavy work to 37 in for light work: NIOSH 97-117 (secondary); 34 in: ASTM F953 (read). */
describeCheck(check, [
  {
    name: '34 in',
    plan: linePlan(),
    expect: [
      { ...soiled, says: 'The deck of the soiled table is at 2′ 10″, within 2′ 4″ to 3′ 1″.' },
      of('clean-table', 'clear', 863.6, HIGH),
    ],
  },
  { name: '37 in', plan: deck(939.8), expect: [soiled, of('clean-table', 'clear', 939.8, HIGH)] },
  { name: '38 in', plan: deck(965.2), expect: [of('clean-table', 'watch', 965.2, HIGH), soiled] },
  { name: '28 in', plan: deck(711.2), expect: [soiled, of('clean-table', 'clear', 711.2, LOW)] },
  {
    name: '27 in',
    plan: deck(685.8),
    expect: [
      {
        ...of('clean-table', 'watch', 685.8, LOW),
        says: 'The deck of the clean table is at 2′ 3″; standing, people work at 2′ 4″ to 3′ 1″. Raise it.',
      },
      soiled,
    ],
  },
  {
    name: 'not surveyed',
    plan: deck(null),
    expect: [{ ...of('clean-table', 'ask', null, LOW), asks: 'tables.1.deck.jointHeight' }, soiled],
  },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
