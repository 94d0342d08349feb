import { netExhaust, netExhaustRecord } from '../../engineering';
import { pathOf } from '../../plan';
import { type Canopy, canopiesOf, type Scene } from '../../scene';
import { compute } from '../compute';
import { askFor } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'hood-net-exhaust',
  title: 'Net exhaust of the hood',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => canopiesOf(scene).map((hood) => deriveHood(scene, hood)),
};

/** What the rules of exhaust count: air blown into the hood's own cavity takes no vapour of the room away. */
function deriveHood({ plan }: Scene, { hood, covers }: Canopy): FigureReading {
  const subjects = [hood.id, ...covers.map(({ machine }) => machine)];
  if (hood.exhaust === null) return askFor(subjects, 'exhaust of the hood', pathOf(plan, 'hoods', hood.id, 'exhaust'));
  if (hood.cavityAir === null) return askFor(subjects, 'air blown into the hood’s cavity', pathOf(plan, 'hoods', hood.id, 'cavityAir'));
  return { subjects, ...compute(netExhaustRecord, netExhaust, { totalM3s: hood.exhaust, intoCavityM3s: hood.cavityAir }) };
}
