import { pathOf } from '../../../plan';
import { askFor, compute, type FigureReading, type FigureRule, judge, withSources } from '../../../rules';
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

/** What the rules of exhaust count: air blown into the hood's own cavity takes no vapour of the room away. */
function deriveHood({ plan }: Scene, { hood, covers }: PlacedHood): FigureReading {
  const subjects = [hood.id, ...covers.map(({ machine }) => machine)];
  if (hood.exhaust === null) return askFor(subjects, 'exhaust of the hood', pathOf(plan, 'hoods', hood.id, 'exhaust'));
  if (hood.cavityAir === null) return askFor(subjects, 'air blown into the hood’s cavity', pathOf(plan, 'hoods', hood.id, 'cavityAir'));
  const answer = compute(netExhaustRecord, netExhaust, { totalM3s: hood.exhaust, intoCavityM3s: hood.cavityAir });
  if (judge(UNLISTED_HOOD_EXHAUST, hood.exhaust) === 'pass') return { subjects, ...answer };
  return { subjects, ...answer, how: withSources(answer.how, ...UNLISTED_HOOD_EXHAUST.source), note: LISTED };
}

const LISTED =
  'It draws more than 1,000 cfm: up to that Washington’s energy code leaves a Type II hood over dish machines free; above, it is to be listed, or holds to the most that the code lets it draw.';
