import { along, dot, type Point, rightOf, sub } from '../../geometry';
import type { Scene } from '../../scene';
import { nounOf } from '../lists/names';
import { moveThings, withHoods } from '../moves/moveThings';
import { distancesAround } from '../snap/around';
import { type Box, boxesOf, moveBox } from '../snap/box';
import { hoodLimits } from '../snap/hoodLimits';
import { snapBoxes, type Targets } from '../snap/snapBoxes';
import type { Pull, Solution } from './solution';

/** Drags things that stand free, with what goes along with them. The first is the one under the pointer. */
export function solveMove(pull: Pull, ids: readonly string[]): Solution {
  const { scene, aim } = pull;
  const moving = movingBoxes(scene, ids);
  const targets = targetsBeside(scene, ids);
  const wanted = straighten(sub(pull.to, pull.from), moving[0], aim.isStraight);
  const shifted = moving.map((box) => moveBox(box, wanted.by));
  const snapped = aim.isFree ? NO_SNAP : snapBoxes(shifted, targets, { reach: aim.reach, step: aim.step, axes: wanted.axes });
  const by = { x: wanted.by.x + snapped.by.x, y: wanted.by.y + snapped.by.y };
  const [main] = moving;
  return {
    label: labelOf(scene, ids),
    recipe: moveThings(scene, ids, by),
    guides: snapped.guides,
    readouts:
      main === undefined
        ? []
        : distancesAround(
            moveBox(main, by),
            targets,
            moving.map((box) => moveBox(box, by)),
          ),
  };
}

const NO_SNAP = { by: { x: 0, y: 0 }, guides: [] };

/** What snaps while things move: themselves and the tables joined to them. */
function movingBoxes(scene: Scene, ids: readonly string[]): Box[] {
  const joined = scene.joints.filter(({ machine }) => ids.includes(machine)).map(({ table }) => table);
  const boxes = boxesOf(scene.plan);
  return [...ids.slice(0, 1), ...joined].flatMap((id) => boxes.filter((box) => box.id === id));
}

/** Walls and everything that stays where it is. A hood looks at machines below it; things on the floor do not look at hoods. */
export function targetsBeside(scene: Scene, ids: readonly string[]): Targets {
  const away = new Set([
    ...withHoods(scene, ids),
    ...scene.joints.filter(({ machine }) => ids.includes(machine)).map(({ table }) => table),
  ]);
  const { room } = scene.plan;
  // Nothing stands against a drain or a stub.
  for (const { id } of [...room.floorDrains, ...room.stubs]) away.add(id);
  const hoods = new Set(scene.plan.hoods.map(({ id }) => id));
  const isHood = ids.some((id) => hoods.has(id));
  const machines = new Set(scene.plan.machines.map(({ id }) => id));
  const isSeen = ({ id }: Box) => !away.has(id) && (isHood ? machines.has(id) || hoods.has(id) : !hoods.has(id));
  return { walls: scene.room.walls, boxes: boxesOf(scene.plan).filter(isSeen), limits: isHood ? hoodLimits(scene) : [] };
}

/** With shift, a move goes along one of the thing's own two directions only. */
function straighten(by: Point, main: Box | undefined, isStraight: boolean): { by: Point; axes: 'u' | 'v' | 'both' } {
  if (!isStraight) return { by, axes: 'both' };
  const u = main?.u ?? { x: 1, y: 0 };
  const v = rightOf(u);
  const [du, dv] = [dot(by, u), dot(by, v)];
  const zero = { x: 0, y: 0 };
  return Math.abs(du) >= Math.abs(dv) ? { by: along(zero, u, du), axes: 'u' } : { by: along(zero, v, dv), axes: 'v' };
}

function labelOf({ plan }: Scene, ids: readonly string[]): string {
  const [first = ''] = ids;
  return ids.length > 1 ? `Move ${ids.length} things` : `Move ${nounOf(plan, first)}`;
}
