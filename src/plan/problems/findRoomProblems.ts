import { distance, findSelfCrossing } from '../../geometry';
import { wallLength } from '../mirrorRoom';
import type { Corner, Opening, Room } from '../planSchema';
import { createProblem, type PlanProblem } from './planProblem';

/** Least length of a wall and slack for openings that end on a corner, mm. */
const SLACK = 0.01;

/** A room whose walls cross, have no length or enclose no floor, and openings that do not lie on their wall. */
export function findRoomProblems(room: Room): readonly PlanProblem[] {
  const found = known.get(room) ?? findProblems(room);
  known.set(room, found);
  return found;
}

/** Rooms are never changed in place, and seldom at all while things are dragged about in them. */
const known = new WeakMap<Room, readonly PlanProblem[]>();

function findProblems(room: Room): PlanProblem[] {
  const outline = findOutlineProblems(room.outline);
  return [...outline, ...room.openings.flatMap((opening, index) => findOpeningProblems(room, opening, index))];
}

function findOutlineProblems(outline: readonly Corner[]): PlanProblem[] {
  const path = (index: number) => ['room', 'outline', index];
  const short = outline.findIndex((corner) => wallLength(outline, corner.id) < SLACK);
  if (short >= 0) return [createProblem('wall-too-short', path(short), { id: outline[short]?.id ?? '' })];
  if (isFlat(outline)) return [createProblem('no-area', ['room', 'outline'])];
  const crossing = findSelfCrossing(outline);
  if (crossing === null) return [];
  const [a, b] = crossing.edges;
  return [createProblem('walls-cross', path(b), { a: outline[a]?.id ?? '', b: outline[b]?.id ?? '' })];
}

/** All corners lie on one line. */
function isFlat(outline: readonly Corner[]): boolean {
  const first = outline[0];
  const farthest = first && [...outline].sort((a, b) => distance(first, b) - distance(first, a))[0];
  if (first === undefined || farthest === undefined) return true;
  const width = (corner: Corner) =>
    Math.abs((farthest.x - first.x) * (corner.y - first.y) - (farthest.y - first.y) * (corner.x - first.x)) / distance(first, farthest);
  return outline.every((corner) => width(corner) < SLACK);
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
