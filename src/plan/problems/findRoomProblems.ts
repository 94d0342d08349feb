import { wallLength } from '../mirrorRoom';
import type { Corner, Opening, Room } from '../planSchema';
import { createProblem, type PlanProblem } from './planProblem';

/** Least length of a wall and slack for openings that end on a corner, mm. */
const SLACK = 0.01;

/** A room whose walls cross, have no length or enclose no floor, and openings that do not lie on their wall. */
export function findRoomProblems(room: Room): PlanProblem[] {
  const outline = findOutlineProblems(room.outline);
  return [...outline, ...room.openings.flatMap((opening, index) => findOpeningProblems(room, opening, index))];
}

function findOutlineProblems(outline: readonly Corner[]): PlanProblem[] {
  const path = (index: number) => ['room', 'outline', index];
  const short = outline.findIndex((corner) => wallLength(outline, corner.id) < SLACK);
  if (short >= 0) return [createProblem('wall-too-short', path(short), { id: outline[short]?.id ?? '' })];
  if (Math.abs(signedArea(outline)) < 1) return [createProblem('no-area', ['room', 'outline'])];
  const crossing = findCrossing(outline);
  if (crossing === null) return [];
  const [a, b] = crossing;
  return [createProblem('walls-cross', path(b), { a: outline[a]?.id ?? '', b: outline[b]?.id ?? '' })];
}

/** Area of the outline, mm²; positive when its corners run clockwise on the paper. */
function signedArea(outline: readonly Corner[]): number {
  return outline.reduce((sum, corner, index) => {
    const next = outline[(index + 1) % outline.length] ?? corner;
    return sum + (corner.x * next.y - next.x * corner.y) / 2;
  }, 0);
}

/** The first two walls that meet where they should not. Neighbours meet at their corner and may not fold back. */
function findCrossing(outline: readonly Corner[]): [number, number] | null {
  const count = outline.length;
  const at = (index: number): Corner => outline[index % count] ?? { id: '', x: 0, y: 0 };
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      if (b === a + 1 && !foldsBack(at(a), at(b), at(b + 1))) continue;
      if (a === 0 && b === count - 1 && !foldsBack(at(b), at(a), at(a + 1))) continue;
      if (b === a + 1 || (a === 0 && b === count - 1) || doMeet(at(a), at(a + 1), at(b), at(b + 1))) return [a, b];
    }
  }
  return null;
}

/** The way from a over b to c turns right round at b. */
function foldsBack(a: Corner, b: Corner, c: Corner): boolean {
  const dot = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
  return dot < 0 && Math.abs(cross(a, b, c)) < 1e-9 * -dot;
}

/** The two segments share at least one point. */
function doMeet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [c1, c2, a1, a2] = [cross(a, b, c), cross(a, b, d), cross(c, d, a), cross(c, d, b)];
  if (((c1 > 0 && c2 < 0) || (c1 < 0 && c2 > 0)) && ((a1 > 0 && a2 < 0) || (a1 < 0 && a2 > 0))) return true;
  return (
    (c1 === 0 && isWithin(a, b, c)) || (c2 === 0 && isWithin(a, b, d)) || (a1 === 0 && isWithin(c, d, a)) || (a2 === 0 && isWithin(c, d, b))
  );
}

const cross = (a: Corner, b: Corner, c: Corner): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

function isWithin(a: Corner, b: Corner, p: Corner): boolean {
  return Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y);
}

function findOpeningProblems(room: Room, opening: Opening, index: number): PlanProblem[] {
  const path = ['room', 'openings', index];
  if (!room.outline.some((corner) => corner.id === opening.wall)) {
    return [createProblem('no-such-wall', [...path, 'wall'], { id: opening.wall })];
  }
  const length = wallLength(room.outline, opening.wall);
  const end = opening.from + opening.width;
  if (end > length + SLACK) return [createProblem('opening-off-wall', path, { end: round(end), length: round(length) })];
  const other = room.openings.slice(0, index).find((before) => doOverlap(before, opening));
  return other === undefined ? [] : [createProblem('openings-overlap', path, { other: other.id })];
}

/** Two openings may stand over each other: a window above a pass window. */
function doOverlap(a: Opening, b: Opening): boolean {
  const isBeside = a.from + a.width <= b.from + SLACK || b.from + b.width <= a.from + SLACK;
  const isAbove = a.sill + a.height <= b.sill + SLACK || b.sill + b.height <= a.sill + SLACK;
  return a.wall === b.wall && !isBeside && !isAbove;
}

const round = (value: number): number => Math.round(value * 10) / 10;
