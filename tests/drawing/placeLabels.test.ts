import { describe, expect, test, vi } from 'vitest';
import type { Prim } from '../../src/drawing';
import type { Box } from '../../src/drawing/layout/box';
import { type IsWorth, type Label, type LabelChoice, placeLabels } from '../../src/drawing/layout/placeLabels';
import { createRandom } from '../support/seeded';

/** An upright box of 4 by 4, or longer. */
const boxAt = (x: number, length = 4): Box => ({
  centre: { x: x + length / 2, y: 2 },
  d: { x: 1, y: 0 },
  halfLength: length / 2,
  halfHeight: 2,
});

/** A way to place a label whose drawing is a point of its own, so that it can be told from all others. */
function choice(x: number, cost: number): LabelChoice {
  const prim: Prim = { kind: 'symbol', layer: 'marks', at: { x, y: cost }, shape: 'dot', size: 1 };
  return { cost, boxes: [boxAt(x)], draw: () => [prim] };
}

/** Ways at random on a short strip, so that they often cover each other; the spare ones are none of the cheapest. */
function createLabels(seed: number): { whole: Label; split: Label }[] {
  const random = createRandom(seed);
  const ways = (least: number) => Array.from({ length: 4 }, () => choice(random() * 30, least + random() * 6));
  return Array.from({ length: 6 }, () => {
    const [first, rest] = [ways(0), ways(3)];
    const isRequired = random() < 0.5;
    return {
      whole: { isRequired, choices: [...first, ...rest] },
      split: { isRequired, choices: first, spare: { cost: 3, choices: (isWorth) => rest.filter(({ cost }) => isWorth(cost)) } },
    };
  });
}

const OBSTACLES: Box[] = [boxAt(10, 10)];

describe('spare ways', () => {
  test.each(Array.from({ length: 40 }, (_, seed) => seed))('seed %i: the same as if all ways were listed', (seed) => {
    const labels = createLabels(seed);
    const place = (of: (typeof labels)[number][]) => of.map(({ whole, split }) => [whole, split] as const);
    const [whole, split] = [place(labels).map(([one]) => one), place(labels).map(([, other]) => other)];
    expect(placeLabels(split, [], OBSTACLES)).toEqual(placeLabels(whole, [], OBSTACLES));
  });

  test('are not worked out where a better way is free', () => {
    const spare = vi.fn<(isWorth: IsWorth) => LabelChoice[]>(() => []);
    placeLabels([{ isRequired: true, choices: [choice(0, 1)], spare: { cost: 2, choices: spare } }], [], []);
    expect(spare).not.toHaveBeenCalled();
  });
});
