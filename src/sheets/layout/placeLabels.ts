import type { Prim } from '../drawing';
import { type Box, overlaps } from './box';

/** One way to place a label: the boxes that it takes, how much worse it is than the best way, and its primitives, drawn only when it is taken. */
export interface LabelChoice {
  draw: () => Prim[];
  boxes: Box[];
  cost: number;
}

/** A label and the ways to place it. One that must be shown is placed even where every way is crowded. */
export interface Label {
  choices: LabelChoice[];
  /** More ways, none of them better than `cost`: worked out only where all of `choices` are worse. */
  spare?: { cost: number; choices: () => LabelChoice[] };
  isRequired: boolean;
}

export interface PlacedLabels {
  prims: Prim[];
  /** What is taken now: what was taken before, and every label's boxes. */
  taken: Box[];
}

/** Space kept between labels, paper mm. */
const CLEARANCE = 0.6;

/**
 * Places labels one after the other, each in its cheapest free way: the most important come first. Boxes are in
 * paper millimetres. `obstacles` cost when they are covered; `taken` must not be.
 */
export function placeLabels(labels: readonly Label[], taken: readonly Box[], obstacles: readonly Box[]): PlacedLabels {
  const placed: PlacedLabels = { prims: [], taken: [...taken] };
  for (const label of labels) {
    const choice = chooseBest(label, placed.taken, obstacles);
    if (choice === null) continue;
    placed.prims.push(...choice.draw());
    placed.taken.push(...choice.boxes);
  }
  return placed;
}

const COVERED = 4;

function chooseBest({ choices, spare, isRequired }: Label, taken: readonly Box[], obstacles: readonly Box[]): LabelChoice | null {
  let found = findBetter(NONE, choices, taken, obstacles);
  if (spare !== undefined && spare.cost < found.cost) found = findBetter(found, spare.choices(), taken, obstacles);
  return found.choice ?? (isRequired ? (choices[0] ?? spare?.choices()[0] ?? null) : null);
}

interface Found {
  choice: LabelChoice | null;
  cost: number;
}

const NONE: Found = { choice: null, cost: Number.POSITIVE_INFINITY };

function findBetter(found: Found, choices: readonly LabelChoice[], taken: readonly Box[], obstacles: readonly Box[]): Found {
  let best = found;
  for (const choice of choices) {
    if (choice.cost >= best.cost || !isFree(choice.boxes, taken)) continue;
    const cost = choice.cost + COVERED * countCovered(choice.boxes, obstacles);
    if (cost < best.cost) best = { choice, cost };
  }
  return best;
}

export const isFree = (boxes: readonly Box[], taken: readonly Box[], clearance = CLEARANCE) =>
  boxes.every((box) => taken.every((other) => !overlaps(box, other, clearance)));

export const countCovered = (boxes: readonly Box[], obstacles: readonly Box[]) =>
  boxes.reduce((sum, box) => sum + obstacles.filter((other) => overlaps(box, other)).length, 0);
