import type { Prim } from '../drawing';
import { type Box, overlaps } from './box';

/** One way to place a label: the boxes that it takes, how much worse it is than the best way, and its primitives, drawn only when it is taken. */
export interface LabelChoice {
  draw: () => Prim[];
  boxes: Box[];
  cost: number;
}

/** Whether a way of such a cost could still be the best one. */
export type IsWorth = (cost: number) => boolean;

/** A label and the ways to place it. One that must be shown is placed even where every way is crowded. */
export interface Label {
  choices: LabelChoice[];
  /** More ways, none of them better than `cost`: worked out only where all of `choices` are worse, and of them only what is still worth it. */
  spare?: { cost: number; choices: (isWorth: IsWorth) => Iterable<LabelChoice> };
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
  const best: { choice: LabelChoice | null; cost: number } = { choice: null, cost: Number.POSITIVE_INFINITY };
  const isWorth: IsWorth = (cost) => cost < best.cost;
  const consider = (ways: Iterable<LabelChoice>) => {
    for (const choice of ways) {
      if (!isWorth(choice.cost) || !isFree(choice.boxes, taken)) continue;
      const cost = choice.cost + COVERED * countCovered(choice.boxes, obstacles);
      if (isWorth(cost)) Object.assign(best, { choice, cost });
    }
  };
  consider(choices);
  if (spare !== undefined && isWorth(spare.cost)) consider(spare.choices(isWorth));
  return best.choice ?? (isRequired ? firstOf([...choices, ...(spare?.choices(isWorth) ?? [])]) : null);
}

const firstOf = ([first]: readonly LabelChoice[]) => first ?? null;

/** Plain loops: they run some ten thousand times for one drawing. */
function isFree(boxes: readonly Box[], taken: readonly Box[]): boolean {
  for (const box of boxes) {
    for (const other of taken) if (overlaps(box, other, CLEARANCE)) return false;
  }
  return true;
}

function countCovered(boxes: readonly Box[], obstacles: readonly Box[]): number {
  let count = 0;
  for (const box of boxes) {
    for (const other of obstacles) if (overlaps(box, other)) count += 1;
  }
  return count;
}
