import { directionOf, distance, distance3, nearestOnSegment, type Point, type Point3 } from '../../geometry';
import { moveRunPoint, type Plan, type Run } from '../../plan';
import type { Scene } from '../../scene';
import { raysFrom, type SnapLine, snapPoint } from '../snap/snapPoint';
import type { Readout } from '../types';
import type { Pull, Solution } from './solution';

/** Drags a point of a run over the paper; its height stays. It catches where its legs run square, and at a duct exit. */
export function solveRunPoint({ scene, from, to, aim }: Pull, run: Run, index: number): Solution {
  const point = run.points[index];
  if (point === undefined) return { label: 'Move duct run', recipe: () => {} };
  const wanted = { x: point.x + to.x - from.x, y: point.y + to.y - from.y };
  const neighbours = [before(scene, run, index), run.points[index + 1]].filter((each) => each !== undefined);
  const targets = { points: ductExits(scene.plan), lines: runLines(scene, run.machine, neighbours) };
  const snapped = aim.isFree ? { point: wanted, guides: [] } : snapPoint(wanted, targets, aim.reach, aim.step);
  return {
    label: 'Move point of duct run',
    recipe: moveRunPoint(run.id, index, { x: snapped.point.x, y: snapped.point.y }),
    guides: snapped.guides,
    readouts: neighbours.filter((each) => distance(each, snapped.point) > 1).map((each): Readout => legReadout(each, snapped.point)),
  };
}

const legReadout = (from: Point, to: Point): Readout => ({ kind: 'length', from: { x: from.x, y: from.y }, to, value: distance(from, to) });

/** The point before one of a run: the collar before the first. */
function before(scene: Scene, run: Run, index: number): Point | undefined {
  return index > 0 ? run.points[index - 1] : (collarOf(scene, run.machine) ?? undefined);
}

export function collarOf(scene: Scene, machine: string): Point3 | null {
  return scene.machines.find((item) => item.machine.id === machine)?.collar ?? null;
}

/** Where the ducts leave the room, on the paper. */
export function ductExits({ room }: Plan): Point[] {
  return room.stubs.filter(({ kind }) => kind === 'duct-exit').map(({ x, y }) => ({ x, y }));
}

/** Lines square and at 45° to the machine and the walls, through the neighbours and the duct exits. */
export function runLines(scene: Scene, machine: string, through: readonly Point[]): SnapLine[] {
  const rotationDeg = scene.plan.machines.find(({ id }) => id === machine)?.rotationDeg ?? 0;
  const direction = directionOf(rotationDeg);
  return [
    ...through.flatMap((point) => raysFrom(point, direction, 'square', true)),
    ...ductExits(scene.plan).flatMap((point) => raysFrom(point, direction, 'aligned')),
  ];
}

/** Slides the fan along its run. */
export function solveFan({ scene, to, aim }: Pull, run: Run): Solution {
  const placed = scene.runs.find((item) => item.run.id === run.id);
  const at = placed === undefined ? 0 : nearestAlong(placed.points, to);
  const stepped = aim.step === 0 ? at : Math.round(at / aim.step) * aim.step;
  return {
    label: 'Move fan',
    recipe: (draft) => {
      const fan = draft.runs.find(({ id }) => id === run.id)?.fan;
      if (fan) fan.at = Math.min(Math.max(stepped, 0), placed?.length ?? stepped);
    },
    readouts: [],
  };
}

/** Distance along a way in space to the place of it that is nearest on the paper. Risers are points there and are passed over. */
function nearestAlong(points: readonly Point3[], to: Point): number {
  let [from, best, least] = [0, 0, Infinity];
  for (const [index, b] of points.entries()) {
    const a = points[index - 1];
    if (a === undefined) continue;
    const length = distance3(a, b);
    const { point, t } = nearestOnSegment(to, { a, b });
    const away = distance(point, to);
    if (away < least && distance(a, b) > 1) [best, least] = [from + t * length, away];
    from += length;
  }
  return best;
}
