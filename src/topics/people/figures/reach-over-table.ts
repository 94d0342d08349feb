import { compute, type FigureRule } from '../../../rules';
import { reachOverDepth, reachOverDepthRecord } from '../formulas/reach';
import { BODIES } from '../formulas/support/bodies';

export const rule: FigureRule = {
  id: 'reach-over-table',
  order: 850,
  title: 'Reach left at the back of the table',
  group: 'people',
  unit: 'm',
  derive: ({ tables }) =>
    tables.map(({ table }) => {
      const answer = compute(reachOverDepthRecord, reachOverDepth, { reachM: SHORT_REACH, depthM: table.depth / 1000 });
      return { subjects: [table.id], ...answer, note: noteFor(answer.value) };
    }),
};

/** Of the 5th percentile woman of the source, to the tip of the finger. */
const SHORT_REACH = BODIES['small-woman'].reachM;

function noteFor(leftM: number | null): string {
  const who = 'For a person with a short reach (5th percentile), who does not lean.';
  return leftM === null || leftM >= 0 ? who : `${who} The back edge is out of reach.`;
}
