import { describe, expect, it } from 'vitest';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan } from '../plans';
import { pull } from '../pulls';

type Pair = readonly [number, number];
const withOutline = (...corners: readonly Pair[]): Plan =>
  edit(emptyPlan(), 'outline', (draft) => {
    draft.room.openings = [];
    draft.room.outline = corners.map(([x, y], i) => ({ id: `wall-${i + 1}`, x, y }));
  }).plan;
/** 8 × 5 m with a cut corner: wall-3 runs slant from (8000, 3000) to (6000, 5000). */
const plan = withOutline([0, 0], [8000, 0], [8000, 3000], [6000, 5000], [0, 5000]);
const drag = (corner: string, dx: number, dy: number, options = {}, of = plan) =>
  pull(of, { id: corner, handle: `corner-${corner}` }, dx, dy, options);
const corner = (of: Plan, index: number) => at(of.room.outline[index]!.x, of.room.outline[index]!.y);

describe('a corner', () => {
  it.each([
    { name: 'goes with the pointer', id: 'wall-3', index: 2, by: at(-500, 300), options: {}, gives: at(7500, 3300) },
    { name: 'stays in line with the wall before', id: 'wall-3', index: 2, by: at(20, 600), options: {}, gives: at(8000, 3600) },
    { name: 'is free beyond the reach', id: 'wall-3', index: 2, by: at(31, 600), options: {}, gives: at(8031, 3600) },
    { name: 'in steps from its neighbour', id: 'wall-3', index: 2, by: at(20, 613), options: { step: 50 }, gives: at(8000, 3600) },
    { name: 'where its walls would meet at a right angle', id: 'wall-3', index: 2, by: at(-20, 1980), options: {}, gives: at(8000, 5000) },
    { name: 'free with alt', id: 'wall-3', index: 2, by: at(20, 600), options: { isFree: true }, gives: at(8020, 3600) },
    // The wall before the neighbour at (0, 5000) runs up: level there is square to it.
    { name: 'square to the wall beyond the next', id: 'wall-4', index: 3, by: at(-700, 12), options: {}, gives: at(5300, 5000) },
    { name: 'upright over the next, whatever lies beyond', id: 'wall-2', index: 1, by: at(-300, 11), options: {}, gives: at(7700, 0) },
  ])('$name', ({ id, index, by, options, gives }) => {
    const result = drag(id, by.x, by.y, options);
    expect(corner(result.plan, index)).toEqual(nearly(gives));
    expect(result.label).toBe('Move corner');
  });

  it('square to a slant wall beyond its neighbour', () => {
    // The wall beyond (8000, 3000) runs at 45°. From there to (6500, 1510) is 1500 and 1490: 1495 of both lie square to it.
    const result = drag('wall-2', -1500, 1510);
    expect(corner(result.plan, 1)).toEqual(nearly(at(6505, 1505)));
  });

  it('reads its two walls', () => {
    expect(drag('wall-3', -500, 300, { isFree: true }).readouts).toMatchObject(
      nearly([
        { kind: 'length', from: at(8000, 0), to: at(7500, 3300), value: Math.sqrt(500 ** 2 + 3300 ** 2) },
        { kind: 'length', from: at(6000, 5000), to: at(7500, 3300), value: Math.sqrt(1500 ** 2 + 1700 ** 2) },
      ]),
    );
    expect(drag('wall-3', -500, 300, { isFree: true }).guides).toEqual([]);
    expect(drag('wall-3', 20, 600).guides?.length).toBeGreaterThan(0);
  });
});

describe('a corner on its neighbour', () => {
  it.each([
    { name: 'goes within 30 mm', by: at(0, -2970), options: { reach: 10 }, goes: true },
    { name: 'stays beyond', by: at(0, -2969), options: { reach: 10 }, goes: false },
    { name: 'goes within the reach where that is more', by: at(0, -2950), options: { reach: 50 }, goes: true },
    { name: 'stays beyond the reach', by: at(0, -2949), options: { reach: 50 }, goes: false },
    { name: 'goes on the next as well', by: at(-1985, 1985), options: {}, goes: true },
    { name: 'stays with alt', by: at(0, -2990), options: { isFree: true }, goes: false },
  ])('$name', ({ by, options, goes }) => {
    const result = drag('wall-3', by.x, by.y, options);
    expect(result.plan.room.outline.some(({ id }) => id === 'wall-3')).toBe(!goes);
    expect(result.label).toBe(goes ? 'Take out corner' : 'Move corner');
  });

  it('shows where it went, and reads nothing', () => {
    expect(drag('wall-3', 0, -2990)).toMatchObject({ guides: [{ kind: 'joint', from: at(8000, 3000), to: at(8000, 3000) }], readouts: [] });
  });

  it('of a triangle stays', () => {
    const triangle = withOutline([0, 0], [6000, 0], [0, 4000]);
    expect(drag('wall-2', -5980, 0, {}, triangle).plan.room.outline).toHaveLength(3);
    const square = withOutline([0, 0], [6000, 0], [6000, 4000], [0, 4000]);
    expect(drag('wall-2', -5980, 0, {}, square).plan.room.outline).toHaveLength(3);
  });

  it('one that is not there moves nothing', () => {
    expect(drag('wall-9', 100, 100)).toMatchObject({ label: 'Move corner', plan: { room: plan.room } });
  });
});
