import { describe, expect, it } from 'vitest';
import { targetsBeside } from '../../../src/editor/gestures/moveThings';
import { edit, type Plan, UNKNOWN_FLOOR_WASTE } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan, straightPlan, withThing } from '../plans';
import { pull } from '../pulls';

/** An empty room of 8 × 5 m with a cart of 800 × 500 at (2000, 3500). */
const room = withThing(emptyPlan());
const cart = ({ things }: Plan) => ({ x: things[0]!.x, y: things[0]!.y });
const turned = (deg: number) => withThing(emptyPlan(), { rotationDeg: deg });

describe('a thing', () => {
  it.each([
    { name: 'goes by what the pointer goes', by: at(300, -700), options: {}, gives: at(2300, 2800) },
    { name: 'is caught by the wall at the reach', by: at(-1570, 0), options: {}, gives: at(400, 3500) },
    { name: 'is free beyond it', by: at(-1569, 0), options: {}, gives: at(431, 3500) },
    { name: 'keeps to the step elsewhere', by: at(313, -712), options: { step: 50 }, gives: at(2300, 2800) },
    { name: 'is free with alt', by: at(-1590, 0), options: { isFree: true }, gives: at(410, 3500) },
    { name: 'with shift goes across', by: at(300, -299), options: { isStraight: true }, gives: at(2300, 3500) },
    { name: 'with shift goes across where both are as far', by: at(300, 300), options: { isStraight: true }, gives: at(2300, 3500) },
    { name: 'with shift goes down', by: at(299, -300), options: { isStraight: true }, gives: at(2000, 3200) },
    { name: 'with shift and alt goes across', by: at(-1590, 20), options: { isStraight: true, isFree: true }, gives: at(410, 3500) },
    { name: 'with shift is caught on its way', by: at(-1580, 20), options: { isStraight: true }, gives: at(400, 3500) },
  ])('$name', ({ by, options, gives }) => {
    const result = pull(room, { ids: ['cart-1'] }, by.x, by.y, options);
    expect(cart(result.plan)).toEqual(nearly(gives));
    expect(result.label).toBe('Move cart');
  });

  it.each([
    { name: 'across the way', start: { y: 270 }, by: at(300, 20), gives: at(2300, 270) },
    { name: 'down the way', start: { x: 420 }, by: at(20, 300), gives: at(420, 3800) },
  ])('with shift nothing catches it $name', ({ start, by, gives }) => {
    expect(cart(pull(withThing(emptyPlan(), start), { ids: ['cart-1'] }, by.x, by.y, { isStraight: true }).plan)).toEqual(nearly(gives));
  });

  it.each([
    { deg: 90, by: at(100, -99), gives: at(2100, 3500) },
    { deg: 90, by: at(99, -100), gives: at(2000, 3400) },
    { deg: 30, by: at(100, 0), gives: at(2075, 3500 + 25 * Math.sqrt(3)) },
    { deg: 30, by: at(0, 100), gives: at(2000 - 25 * Math.sqrt(3), 3575) },
  ])('with shift keeps to its own directions, at $deg°', ({ deg, by, gives }) => {
    const result = pull(turned(deg), { ids: ['cart-1'] }, by.x, by.y, { isStraight: true, isFree: true });
    expect(cart(result.plan)).toEqual(nearly(gives));
  });

  it('reads the distances around where it comes to stand, and shows what caught it', () => {
    const { readouts, guides } = pull(room, { ids: ['cart-1'] }, -1590, -500);
    // It touches the left wall, and the right one is more than 6 m away.
    expect(readouts?.map(({ value }) => value)).toEqual(nearly([1750, 2750]));
    expect(guides).toEqual([{ kind: 'flush', from: at(0, 2750), to: at(0, 3250) }]);
  });

  it('a second one goes along, and is no aim', () => {
    const two = withThing(room, { id: 'cart-2', x: 5000 });
    const result = pull(two, { ids: ['cart-1', 'cart-2'] }, 1200, 10);
    expect(result.plan.things.map(({ x, y }) => at(x, y))).toEqual(nearly([at(3200, 3510), at(6200, 3510)]));
    expect(result.label).toBe('Move 2 things');
    // By itself it would be caught in line with the other.
    expect(cart(pull(two, { ids: ['cart-1'] }, 1200, 10).plan)).toEqual(nearly(at(3200, 3500)));
  });
});

describe('a machine', () => {
  it('is caught by the ends of its tables', () => {
    // The soiled table ends at 3631.5 − 2900, 731.5 mm from the wall.
    const { plan, guides, readouts } = pull(straightPlan(), { ids: ['machine'] }, -711.5, 500);
    expect(plan.machines[0]).toMatchObject({ x: nearly(4000 - 731.5), y: nearly(1300) });
    expect(plan.hoods[0]?.x).toBeCloseTo(straightPlan().hoods[0]!.x - 731.5, 8);
    expect(guides?.map(({ kind }) => kind)).toEqual(['flush']);
    // To the right wall from the end of the clean table: 8000 − (3268.5 + 368.5 + 1600).
    expect(readouts?.map(({ value }) => value)).toEqual(nearly([2763, 5000 - 1300 - 355.5, 1300 - 355.5]));
  });
});

describe('what a move can be caught by', () => {
  const plan = edit(withThing(straightPlan()), 'more', (draft) => {
    draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 });
    draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
    draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
    draft.hoods.push({ ...draft.hoods[0]!, id: 'hood-2', x: 1500, y: 3500 });
  }).plan;
  it.each([
    { ids: [], seen: ['machine', 'soiled-table', 'clean-table', 'cart-1', 'column-1'], limits: 0 },
    { ids: ['cart-1'], seen: ['machine', 'soiled-table', 'clean-table', 'column-1'], limits: 0 },
    { ids: ['machine'], seen: ['cart-1', 'column-1'], limits: 0 },
    { ids: ['soiled-table'], seen: ['machine', 'clean-table', 'cart-1', 'column-1'], limits: 0 },
    { ids: ['hood'], seen: ['machine', 'hood-2'], limits: 1 },
    { ids: ['hood-2', 'machine'], seen: [], limits: 1 },
    { ids: ['cart-1', 'hood-2'], seen: ['machine', 'hood'], limits: 1 },
  ])('$ids: $seen', ({ ids, seen, limits }) => {
    const targets = targetsBeside(deriveScene(plan), ids);
    expect(targets.boxes.map(({ id }) => id)).toEqual(seen);
    expect(targets.limits).toHaveLength(limits);
    expect(targets.walls).toBe(deriveScene(plan).room.walls);
  });
});
