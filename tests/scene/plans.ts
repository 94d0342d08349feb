import { produce } from 'immer';
import { expect } from 'vitest';
import { createLinePlan, createPlan, type LineConfiguration, type LineHand, type Plan, type Table, UNKNOWN_MAKE } from '../../src/plan';

/** What a line plan of these tests may say of itself. */
export interface LineWords {
  family?: string;
  configuration?: LineConfiguration;
  hand?: LineHand;
}

/** A whole line, changed by a recipe: tall door, corner at left and front, left to right, unless told. */
export function linePlan(words: LineWords = {}, change: (draft: Plan) => unknown = () => {}): Plan {
  const { family = 'tall-door', configuration = 'left-front', hand = 'left-to-right' } = words;
  return produce(createLinePlan({ family, configuration, hand }), (draft) => void change(draft));
}

/** An empty room of 8 × 6 m with its corner at the origin, changed by a recipe. */
export function roomPlan(change: (draft: Plan) => unknown): Plan {
  return produce(createPlan(), (draft) => {
    for (const [i, [x, y]] of [
      [0, 0],
      [8000, 0],
      [8000, 6000],
      [0, 6000],
    ].entries())
      Object.assign(draft.room.outline[i] ?? {}, { x, y });
    draft.room.openings = [];
    change(draft);
  });
}

/** A table 762 deep whose rack centre line lies 273 from its operator's edge, free in the room. */
export const table = (changes: Partial<Table>): Table => ({
  id: 'table',
  role: 'clean',
  place: { kind: 'free', x: 2000, y: 3000, headingDeg: 0 },
  legs: [{ length: 2000, turnDeg: 0 }],
  depth: 762,
  rackLineFromEdge: 273,
  operatorSide: 'right',
  backsplash: 0,
  deck: { kind: 'fall', jointHeight: 864, fall: 0.01 },
  make: UNKNOWN_MAKE,
  fittings: [],
  ...changes,
});

/** The one item of a list that must not be empty. */
export function first<T>(items: readonly T[]): T {
  const [item] = items;
  if (item === undefined) throw new Error('an empty list');
  return item;
}

/** The table of an id in a draft. */
export function tableOf(draft: Plan, id: string): Table {
  return first(draft.tables.filter((item) => item.id === id));
}

/** Equal to the micrometre, or null as expected; for `toEqual`. */
export const near = (value: number | null, digits = 6): unknown => (value === null ? null : expect.closeTo(value, digits));
