import { add, dot, type Point, rightOf, scale } from '../../geometry';
import { type Box, boxAround, overlaps, withHalfHeight } from '../layout/box';
import { createSetting, placesApart, placesNear, type Setting, type TextPlace } from './textPlaces';
import { DIMENSION, type DimensionRow, type Span } from './types';

/** What is on the paper already, paper mm. */
export interface Ground {
  /** Texts and marks: nothing may cover them. */
  texts: Box[];
  /** Dimension lines: none may lie on another, and texts keep off them where they can. */
  lines: Box[];
  /** Bodies and walls: kept clear where it can be, but for the body that is measured. */
  bodies: Body[];
}

/** A body under the figures: boxes that together cover it. */
export interface Body {
  boxes: Box[];
  subject: string | null;
  /** How much it matters that figures keep off it; 1 unless told. */
  weight?: number;
  /** Dimension lines may cross it. */
  isOpen?: boolean;
}

/** A span in paper mm on its dimension line, in the order of the axis. */
export interface Stretch {
  span: Span;
  from: Point;
  to: Point;
  length: number;
}

/** A dimension line as it would stand: each span with the place of its figures (null where they found none). */
export interface LaidRow {
  row: DimensionRow;
  stretches: Stretch[];
  places: (TextPlace | null)[];
  lines: Box[];
  cost: number;
}

const ALONG_A_LINE = 12;
const ACROSS_A_TEXT = 30;
const BESIDE_A_TEXT = 2.5;
const ACROSS_A_BODY = 1;
const ON_A_LINE = 5;
const ON_A_BODY = 4;
const MISSING = 40;
/** Figures on their line that cost less than this are good: no place apart from it is tried. */
const GOOD = 4;
/** Space between letters of different texts, and between them and the lines of others, paper mm. */
const CLEARANCE = 0.6;
/** Of the strip that a dimension line keeps free of others beside it, paper mm. */
const STRIP = 3;
/** Of the strip that its ticks take, paper mm. */
const TICKS = DIMENSION.tick * 0.35;

/** Lays one dimension line and finds the best free place for each figure; null as soon as it costs `limit`. */
export function layRow(row: DimensionRow, unit: number, ground: Ground, limit: number): LaidRow | null {
  const stretches = row.spans.map((span) => measureSpan(row, span, unit));
  const lines = stretches.map(({ from, to }) => boxAround(from, to, 0.1));
  const laid: LaidRow = { row, stretches, places: [], lines, cost: row.cost };
  for (const [i, line] of lines.entries()) {
    laid.cost += costOfLine(line, row.spans[i], ground);
    if (laid.cost >= limit) return null;
  }
  const texts: Box[] = [];
  for (const index of stretches.keys()) {
    const place = choosePlace(row.axis, stretches, index, texts, lines, ground);
    laid.places.push(place?.place ?? null);
    laid.cost += place?.cost ?? MISSING;
    if (laid.cost >= limit) return null;
    if (place !== null) texts.push(place.place.box);
  }
  return laid;
}

function measureSpan({ axis, across }: DimensionRow, span: Span, unit: number): Stretch {
  const p = dot(span.from.point, axis) / unit;
  const q = dot(span.to.point, axis) / unit;
  const a = Math.min(p, q);
  const b = Math.max(p, q);
  const at = (t: number) => add(scale(axis, t), scale(rightOf(axis), across));
  return { span, from: at(a), to: at(b), length: b - a };
}

function costOfLine(line: Box, span: Span | undefined, { lines, texts, bodies }: Ground): number {
  let cost = 0;
  const strip = withHalfHeight(line, STRIP);
  const ticks = withHalfHeight(line, TICKS);
  for (const other of lines) if (isAlong(strip, other) && overlaps(strip, other)) cost += ALONG_A_LINE;
  for (const text of texts) {
    if (overlaps(ticks, text, CLEARANCE)) cost += overlaps(line, text, CLEARANCE) ? ACROSS_A_TEXT : BESIDE_A_TEXT;
  }
  for (const body of bodies) if (body.isOpen !== true && isOver(line, body, span)) cost += ACROSS_A_BODY;
  return cost;
}

const isAlong = (a: Box, b: Box) => Math.abs(a.d.x * b.d.y - a.d.y * b.d.x) < 0.05;

/** Whether a box lies over a body that is not the one measured. */
const isOver = (box: Box, { boxes, subject }: Body, span: Span | undefined) =>
  (subject === null || subject !== span?.subject) && boxes.some((other) => overlaps(box, other));

interface Chosen {
  place: TextPlace;
  cost: number;
}

function choosePlace(
  axis: Point,
  all: readonly Stretch[],
  index: number,
  texts: readonly Box[],
  lines: readonly Box[],
  ground: Ground,
): Chosen | null {
  const stretch = all[index];
  if (stretch === undefined) return null;
  const setting: Setting = createSetting(axis, stretch);
  const better = (best: Chosen | null, places: readonly TextPlace[]) => {
    let found = best;
    for (const place of places) {
      if (found !== null && place.cost >= found.cost) continue;
      if (isCovering(place, ground.texts) || isCovering(place, texts)) continue;
      const cost = place.cost + costOfText(place.box, stretch.span, lines, ground, (found?.cost ?? Infinity) - place.cost);
      if (found === null || cost < found.cost) found = { place, cost };
    }
    return found;
  };
  const near = better(null, placesNear(setting, stretch, all, index));
  return near !== null && near.cost <= GOOD ? near : better(near, placesApart(setting));
}

function isCovering({ box, leaderBoxes }: TextPlace, texts: readonly Box[]): boolean {
  return texts.some((text) => overlaps(box, text, CLEARANCE) || leaderBoxes.some((leader) => overlaps(leader, text, CLEARANCE)));
}

/** From `limit` on it is not told how much more it costs. */
function costOfText(box: Box, span: Span, lines: readonly Box[], ground: Ground, limit: number): number {
  let cost = 0;
  for (const line of lines) if (overlaps(box, line)) cost += ON_A_LINE;
  for (const line of ground.lines) if (overlaps(box, line, TICKS + CLEARANCE)) cost += ON_A_LINE;
  for (const body of ground.bodies) {
    if (cost >= limit) break;
    if (isOver(box, body, span)) cost += ON_A_BODY * (body.weight ?? 1);
  }
  return cost;
}
