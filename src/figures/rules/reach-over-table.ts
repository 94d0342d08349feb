import { BODIES, reachOverDepth, reachOverDepthRecord } from '../../engineering';
import { compute } from '../compute';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'reach-over-table',
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
