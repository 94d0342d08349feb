import { compute, createMessages, type FigureRule, type NoParams, notesOf } from '../../../rules';
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
      return {
        subjects: [table.id],
        ...answer,
        ...notesOf(say('reach-over-table/short-reach'), isBeyond(answer.value) ? say('reach-over-table/back-edge') : null),
      };
    }),
};

export interface ReachOverTableNotes {
  'reach-over-table/short-reach': NoParams;
  'reach-over-table/back-edge': NoParams;
}

const say = createMessages<ReachOverTableNotes>();

/** Of the 5th percentile woman of the source, to the tip of the finger. */
const SHORT_REACH = BODIES['small-woman'].reachM;

const isBeyond = (leftM: number | null) => leftM !== null && leftM < 0;
