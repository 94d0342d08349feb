import { createPlan, type Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { rule } from '../../../../src/topics/people/figures/shared-places';
import { describeFigure } from '../../../support/figureCases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

/** A straight line with a clean table of a foot, and its shelving so far from the line of the racks, 1.5 m beyond the soiled joint. */
const shelvingBefore = (away: number) =>
  linePlan({ configuration: 'straight' }, (plan) => {
    shortClean(plan);
    plan.things = [];
    addThing(plan, 'clean-shelving', joint.x - 1500, joint.y + away, 500, 500, { kind: 'shelving', ware: 'clean' });
  });
function shortClean(plan: Plan): void {
  tableOf(plan, 'clean').legs = [{ length: 300, turnDeg: 0 }];
  tableOf(plan, 'clean').fittings = [];
}
const line = deriveScene(linePlan({ configuration: 'straight' }, shortClean)).lines[0]!;
const [joint, end, far] = [line.soiled!.path[0]!, line.clean!.path[1]!, line.soiled!.path.at(-1)!];

/** Length of the clean way over the floor that lies within 711.2 of the soiled table but its last 711.2 before the joint; tried millimetre by millimetre. */
function triedLength(away: number): number {
  const [dx, dy] = [joint.x - 1500 - end.x, away];
  const size = Math.hypot(dx, dy);
  const samples = Array.from({ length: Math.floor(size) }, (_, i) => ({ x: end.x + (dx * i) / size, y: end.y + (dy * i) / size }));
  const isNear = ({ x, y }: { x: number; y: number }) => {
    const beside = Math.max(0, x - (joint.x - 711.2), far.x - x);
    return Math.hypot(beside, y - joint.y) < 711.2;
  };
  return samples.filter(isNear).length / 1000;
}

/** Kept apart by distance: Codex CXC 1-1969, 9.1.2 (secondary). */
describeFigure(rule, [
  {
    name: 'a whole line: both ways merely meet at the machine',
    plan: linePlan(),
    expect: [{ subjects: ['machine'], value: 0, notes: /^Nowhere/ }],
  },
  ...[300, 600, 700, 900, 2000].map((away) => ({
    name: `shelving ${away} from the line of the soiled racks`,
    plan: shelvingBefore(away),
    expect: [{ subjects: ['machine'], value: triedLength(away), within: 0.002 }],
  })),
  {
    name: 'without a clean way there is nothing to share',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
