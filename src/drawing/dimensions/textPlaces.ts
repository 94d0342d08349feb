import { add, directionOf, midpoint, type Point, scale } from '../../geometry';
import { type Box, boxAround } from '../layout/box';
import { readingAngle } from '../support/vec';
import { CAP_HEIGHT, DESCENT, measureTextWidth } from '../typeset/textWidth';
import type { Stretch } from './layRow';
import { DIMENSION } from './types';

/** One place for the figures of a span, paper mm: the foot of their middle, their box, and the leader when they stand apart. */
export interface TextPlace {
  at: Point;
  angleDeg: number;
  box: Box;
  leader: Point[];
  leaderBoxes: Box[];
  cost: number;
}

const CAP = CAP_HEIGHT * DIMENSION.letter;
const BELOW = DESCENT * DIMENSION.letter;
/** From one line of figures to the next. */
const LINE = CAP + BELOW + 1.3;

/** The figures of a span: their reading direction, the way up from the line, their width. */
export interface Setting {
  r: Point;
  up: Point;
  angleDeg: number;
  width: number;
  middle: Point;
  /** Whether they find room between the ticks. */
  isFitting: boolean;
}

export function createSetting(axis: Point, { span, from, to, length }: Stretch): Setting {
  const angleDeg = readingAngle(axis);
  const r = directionOf(angleDeg);
  const width = measureTextWidth(span.text, DIMENSION.letter);
  return { r, up: { x: r.y, y: -r.x }, angleDeg, width, middle: midpoint(from, to), isFitting: width + 1.2 <= length };
}

/** Places on the line: above its middle; where that is too short, beyond a free end. */
export function placesNear(set: Setting, stretch: Stretch, all: readonly Stretch[], index: number): TextPlace[] {
  return set.isFitting ? placesOnLine(set, stretch.length) : placesBeyond(set, stretch, all, index);
}

function placesOnLine(set: Setting, length: number): TextPlace[] {
  const play = (length - set.width) / 2 - 0.8;
  const shifts = play < 1 ? [0] : [0, play / 2, -play / 2, play, -play];
  return shifts.map((shift, i) => createPlace(set, shift, DIMENSION.lift, false, i * 0.4));
}

/** On the line's prolongation, where no neighbour of the row stands. */
function placesBeyond(set: Setting, stretch: Stretch, all: readonly Stretch[], index: number): TextPlace[] {
  const { middle } = set;
  const reach = stretch.length / 2 + set.width / 2 + 1.8;
  return [1, -1].flatMap((side, i) => {
    const way = scale(set.r, side);
    const isTaken = all.some((other, j) => j !== index && isWithin(other, middle, way, stretch.length / 2, set.width + 3));
    return isTaken ? [] : [0, 4].map((more, j) => createPlace(set, side * (reach + more), DIMENSION.lift, false, 2 + i * 0.3 + j));
  });
}

function isWithin(other: Stretch, middle: Point, way: Point, near: number, room: number): boolean {
  const p = (other.from.x - middle.x) * way.x + (other.from.y - middle.y) * way.y;
  const q = (other.to.x - middle.x) * way.x + (other.to.y - middle.y) * way.y;
  const a = Math.min(p, q);
  const b = Math.max(p, q);
  return b > near - 0.01 && a < near + room && b > near + 0.01;
}

/** Raised or lowered by one to three lines of figures, straight or to a side, with a leader to the middle of the span. */
export function placesApart(set: Setting): TextPlace[] {
  const cost = set.isFitting ? 6 : 4;
  const side = set.width / 2 + 1.4;
  const shifts = [0, side, -side, side * 2, -side * 2];
  const heights = [1, 2, -1, 3, -2, -3];
  return heights.flatMap((level, i) =>
    shifts.map((shift, j) => {
      const height = level > 0 ? DIMENSION.lift + level * LINE : level * LINE - CAP + 0.6;
      return createPlace(set, shift, height, true, cost + i + j * 0.6);
    }),
  );
}

/** Figures whose foot is `height` above the line and whose middle is `shift` along it from `middle`. */
function createPlace(
  { r, up, angleDeg, width, middle }: Setting,
  shift: number,
  height: number,
  isApart: boolean,
  cost: number,
): TextPlace {
  const foot = add(middle, add(scale(r, shift), scale(up, height)));
  const centre = add(foot, scale(up, (CAP - BELOW) / 2));
  const box = { centre, d: r, halfLength: width / 2, halfHeight: (CAP + BELOW) / 2 };
  if (!isApart) return { at: foot, angleDeg, box, leader: [], leaderBoxes: [], cost };
  const under = height > 0 ? add(foot, scale(up, -BELOW - 0.25)) : add(foot, scale(up, CAP + 0.35));
  const end = (k: number) => add(under, scale(r, (k * width) / 2));
  const [near, far] = shift >= 0 ? [end(-1), end(1)] : [end(1), end(-1)];
  const leader = Math.abs(shift) < 0.01 ? [middle, under] : [middle, near, far];
  const elbow = leader[1] ?? middle;
  const start = add(middle, scale(add(elbow, scale(middle, -1)), 0.3));
  return { at: foot, angleDeg, box, leader, leaderBoxes: [boxAround(start, elbow, 0.1)], cost };
}
