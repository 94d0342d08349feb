import { pathOf } from '../../../plan';
import { askFor, compute, createMessages, type FigureReading, type FigureRule, judge, type NoParams, withSources } from '../../../rules';
import { coveringHoods, type PlacedHood, type Scene } from '../../../scene';
import { UNLISTED_HOOD_EXHAUST } from '../formulas/hoodLimits';
import { netExhaust, netExhaustRecord } from '../formulas/netExhaust';

export const rule: FigureRule = {
  id: 'hood-net-exhaust',
  order: 440,
  title: 'Net exhaust of the hood',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => coveringHoods(scene).map((hood) => deriveHood(scene, hood)),
};

export interface HoodNetExhaustMessages {
  'hood-net-exhaust/ask-exhaust': NoParams;
  'hood-net-exhaust/ask-cavity-air': NoParams;
  'hood-net-exhaust/to-be-listed': NoParams;
}

const say = createMessages<HoodNetExhaustMessages>();

/** What the rules of exhaust count: air blown into the hood's own cavity takes no vapour of the room away. */
function deriveHood({ plan }: Scene, { hood, covers }: PlacedHood): FigureReading {
  const subjects = [hood.id, ...covers.map(({ machine }) => machine)];
  if (hood.exhaust === null) return askFor(subjects, say('hood-net-exhaust/ask-exhaust'), pathOf(plan, 'hoods', hood.id, 'exhaust'));
  if (hood.cavityAir === null) {
    return askFor(subjects, say('hood-net-exhaust/ask-cavity-air'), pathOf(plan, 'hoods', hood.id, 'cavityAir'));
  }
  const answer = compute(netExhaustRecord, netExhaust, { totalM3s: hood.exhaust, intoCavityM3s: hood.cavityAir });
  if (judge(UNLISTED_HOOD_EXHAUST, hood.exhaust) === 'pass') return { subjects, ...answer };
  return {
    subjects,
    ...answer,
    how: withSources(answer.how, ...UNLISTED_HOOD_EXHAUST.source),
    notes: [say('hood-net-exhaust/to-be-listed')],
  };
}
