import { type Plan, type PlanTransform, transformPlan } from '../../src/plan';

/** A motion of the whole plan that must change no verdict and no measured value. */
export interface PlanMotion extends PlanTransform {
  name: string;
}

const MOVE = { x: 4321, y: -1234 };

/** As drawn, quarter turns, an odd angle, and a mirror with and without an odd angle. */
export const PLAN_MOTIONS: readonly PlanMotion[] = [
  { name: 'as drawn' },
  ...[90, 180, 270, 37].map((rotateDeg) => ({ name: `turned ${rotateDeg}°`, rotateDeg, move: MOVE })),
  { name: 'in a mirror', mirror: true },
  { name: 'in a mirror, turned 37°', mirror: true, rotateDeg: 37, move: MOVE },
];

export const movedPlan = (plan: Plan, { name: _name, ...motion }: PlanMotion): Plan => transformPlan(plan, motion);

/** A mirror swaps left and right in words such as `left-to-right`; everything else stays. */
export function wordIn(motion: PlanMotion, value: string): string {
  if (motion.mirror !== true) return value;
  return value.replaceAll(/left|right/g, (word) => (word === 'left' ? 'right' : 'left'));
}
