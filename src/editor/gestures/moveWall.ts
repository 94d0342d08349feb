import { along, cross, directionTo, distance, dot, type Point, scale, sub } from '../../geometry';
import { type Corner, moveCorners, type Plan } from '../../plan';
import type { Wall } from '../../scene';
import { nameWall } from '../lists/names';
import { roundTo } from '../snap/step';
import type { Guide, Readout } from '../types';
import type { Aim } from './aim';
import type { Pull, Solution } from './solution';

/** Drags a wall straight in or out. Its neighbours keep their directions and grow or shrink. */
export function solveWallMove({ scene, from, to, aim }: Pull, id: string): Solution {
  const { walls } = scene.room;
  const wall = walls.find((item) => item.id === id);
  if (wall === undefined) return { label: 'Move wall', recipe: () => {} };
  const raw = dot(sub(to, from), wall.inward);
  const caught = aim.isFree ? null : alignWall(wall, walls, raw, aim.reach);
  const by = caught ?? stepWall(wall, walls, raw, aim);
  const ends = slideEnds(scene.plan, id, scale(wall.inward, by));
  const places = new Map(ends.map(({ corner, to: place }) => [corner.id, place]));
  return {
    label: `Move ${nameWall(scene.plan, id).toLowerCase()}`,
    recipe: moveCorners(places),
    guides: caught === null ? [] : alignGuide(wall, by),
    readouts: readoutsOf(wall, ends, by, walls),
  };
}

interface SlidEnd {
  corner: Corner;
  /** The corner beyond, which stays. */
  beyond: Corner;
  to: Point;
}

/** Each end slides along its neighbour; along the motion itself where the neighbour goes on in the same line. */
function slideEnds({ room: { outline } }: Plan, id: string, by: Point): SlidEnd[] {
  const index = outline.findIndex((corner) => corner.id === id);
  const at = (offset: number) => outline[(index + offset + outline.length) % outline.length] as Corner;
  const [before, a, b, after] = [at(-1), at(0), at(1), at(2)];
  const line = directionTo(a, b);
  const slide = (corner: Corner, beyond: Corner): SlidEnd => {
    const d = directionTo(beyond, corner);
    const det = cross(d, line);
    const isInLine = Math.abs(det) < 0.02;
    const to = isInLine ? { x: corner.x + by.x, y: corner.y + by.y } : along(corner, d, cross(by, line) / det);
    return { corner, beyond, to };
  };
  return [slide(a, before), slide(b, after)];
}

/** The motion that brings a wall in line with another that runs the same way. */
function alignWall(wall: Wall, walls: readonly Wall[], by: number, reach: number): number | null {
  const offsets = walls
    .filter((other) => other.id !== wall.id && Math.abs(cross(other.direction, wall.direction)) < 0.01)
    .filter((other) => dot(other.inward, wall.inward) > 0)
    .map((other) => dot(sub(other.a, wall.a), wall.inward));
  const best = offsets.sort((p, q) => Math.abs(p - by) - Math.abs(q - by))[0];
  return best !== undefined && Math.abs(best - by) <= reach && Math.abs(best) > 1e-6 ? best : null;
}

/** Keeps the width of the room before the wall to the step. */
function stepWall(wall: Wall, walls: readonly Wall[], by: number, { step }: Aim): number {
  const width = widthBefore(wall, walls);
  return width === null ? roundTo(by, step) : width - roundTo(width - by, step);
}

/** Distance to the wall opposite; null where none faces it. */
function widthBefore(wall: Wall, walls: readonly Wall[]): number | null {
  const widths = walls
    .filter((other) => dot(other.inward, wall.inward) < -0.9999)
    .map((other) => dot(sub(other.a, wall.a), wall.inward))
    .filter((width) => width > 0);
  return widths.length === 0 ? null : Math.min(...widths);
}

function alignGuide(wall: Wall, by: number): Guide[] {
  const shift = (point: Point) => along(point, wall.inward, by);
  return [{ kind: 'aligned', from: shift(wall.a), to: shift(wall.b) }];
}

/** Lengths of the two neighbours, and the width of the room before the wall. */
function readoutsOf(wall: Wall, ends: readonly SlidEnd[], by: number, walls: readonly Wall[]): Readout[] {
  const sides = ends.map(({ beyond, to }): Readout => ({ kind: 'length', from: beyond, to, value: distance(beyond, to) }));
  const width = widthBefore(wall, walls);
  if (width === null) return sides;
  const middle = along(along(wall.a, wall.direction, wall.length / 2), wall.inward, by);
  return [...sides, { kind: 'distance', from: middle, to: along(middle, wall.inward, width - by), value: width - by }];
}
