import { describe, expect, it } from 'vitest';
import { nearestWall, placeOnWall, readoutsOn } from '../../../src/editor/gestures/moveOpening';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan } from '../plans';
import { pull } from '../pulls';
import { wallFrom } from '../shapes';

/** A door 914 wide in the lower wall of an 8 × 5 m room. That wall runs from (8000, 5000) to the left: the door begins at x = 7000. */
const plan = emptyPlan();
const door = ({ room }: Plan) => ({ wall: room.openings[0]!.wall, from: room.openings[0]!.from });
const withWindow = (from: number, width: number, wall = 'wall-3') =>
  edit(
    plan,
    'window',
    (draft) => void draft.room.openings.push({ ...draft.room.openings[0]!, id: 'window-1', kind: 'window', wall, from, width }),
  ).plan;
const slide = (of: Plan, by: number, options = {}) => pull(of, { ids: ['door-1'] }, -by, 0, { from: at(6500, 5000), ...options });

describe('a door along its wall', () => {
  it.each([
    { name: 'goes with the pointer', by: 100, options: {}, from: 1100 },
    { name: 'goes back', by: -300, options: {}, from: 700 },
    { name: 'by steps from the start of the wall', by: 107, options: { step: 50 }, from: 1100 },
    { name: 'flush at the start, at the reach', by: -970, options: {}, from: 0 },
    { name: 'free before it', by: -969, options: {}, from: 31 },
    { name: 'never past the start', by: -1500, options: {}, from: 0 },
    { name: 'flush at the end, at the reach', by: 6056, options: {}, from: 7086 },
    { name: 'free before the end', by: 6055, options: {}, from: 7055 },
    { name: 'never past the end', by: 6500, options: {}, from: 7086 },
    { name: 'never past the end by a step', by: 6085, options: { reach: 0, step: 50 }, from: 7086 },
    { name: 'in the middle, at the reach', by: 2573, options: {}, from: 3543 },
    { name: 'free beyond the middle', by: 2574, options: {}, from: 3574 },
    { name: 'past the middle at the reach', by: 2513, options: {}, from: 3543 },
    { name: 'free before the middle', by: 2512, options: {}, from: 3512 },
    { name: 'free with alt', by: 2550, options: { isFree: true }, from: 3550 },
    { name: 'with alt never past the end', by: 6500, options: { isFree: true }, from: 7086 },
  ])('$name', ({ by, options, from }) => {
    expect(door(slide(plan, by, options).plan)).toEqual(nearly({ wall: 'wall-3', from }));
  });

  it.each([
    { name: 'beside its neighbour, before it', window: [3000, 1000], by: 1066, from: 2086 },
    { name: 'beside its neighbour, beyond it', window: [3000, 1000], by: 3020, from: 4000 },
    { name: 'not before one that leaves no room', window: [900, 50], by: -990, from: 0 },
    { name: 'the nearer of neighbour and middle', window: [4470, 500], by: 2550, from: 3556 },
  ])('$name', ({ window: [begin = 0, width = 0], by, from }) => {
    expect(door(slide(withWindow(begin, width), by).plan).from).toBeCloseTo(from, 9);
  });

  it('a window in another wall is no neighbour', () => {
    expect(door(slide(withWindow(3000, 1000, 'wall-1'), 1066).plan).from).toBeCloseTo(2066, 9);
  });

  it('shows where it was caught, and reads what is left on both sides', () => {
    const { guides, readouts, label } = slide(withWindow(3000, 1000), 1066);
    expect(label).toBe('Move door');
    expect(guides).toEqual(nearly([{ kind: 'flush', from: at(5914, 5000), to: at(5000, 5000) }]));
    expect(readouts).toEqual(
      nearly([
        { kind: 'distance', from: at(8000, 5000), to: at(5914, 5000), value: 2086 },
        { kind: 'length', from: at(5914, 5000), to: at(5000, 5000), value: 914 },
        { kind: 'distance', from: at(5000, 5000), to: at(0, 5000), value: 5000 },
      ]),
    );
    expect(slide(plan, 2550).guides?.map(({ kind }) => kind)).toEqual(['centred']);
  });
});

describe('a door over to another wall', () => {
  const over = (x: number, y: number, options = {}) =>
    door(pull(plan, { ids: ['door-1'] }, x - 6500, y - 5000, { from: at(6500, 5000), ...options }).plan);
  it.each([
    { name: 'keeps its wall within 400 mm', to: at(7700, 4600), gives: { wall: 'wall-3', from: 0 } },
    // By its middle: the right wall runs down from (8000, 0).
    { name: 'leaves it beyond', to: at(7700, 4599), gives: { wall: 'wall-2', from: 4086 } },
    { name: 'comes to lie about the pointer', to: at(3000, 90), gives: { wall: 'wall-1', from: 2543 } },
    { name: 'comes to the left wall, which runs up', to: at(50, 1700), gives: { wall: 'wall-4', from: 3300 - 457 } },
    { name: 'stays where its own is still the nearest', to: at(6400, 4000), gives: { wall: 'wall-3', from: 1100 } },
  ])('$name', ({ to, gives }) => {
    expect(over(to.x, to.y)).toEqual(nearly(gives));
  });
});

describe('the edge of a door', () => {
  // +x is back along the wall.
  it.each([
    { handle: 'to', dx: -107, options: { step: 50 }, from: 1000, width: 1000 },
    { handle: 'to', dx: -7000, options: {}, from: 1000, width: 7000 },
    { handle: 'to', dx: 900, options: {}, from: 1000, width: 50 },
    { handle: 'to', dx: -10, options: {}, from: 1000, width: 924 },
    { handle: 'from', dx: 107, options: { step: 50 }, from: 914, width: 1000 },
    { handle: 'from', dx: 1500, options: {}, from: 0, width: 1914 },
    { handle: 'from', dx: -900, options: {}, from: 1864, width: 50 },
    { handle: 'from', dx: 10, options: {}, from: 990, width: 924 },
  ])('$handle by $dx', ({ handle, dx, options, from, width }) => {
    const result = pull(plan, { id: 'door-1', handle }, dx, 33, options);
    expect(result.plan.room.openings[0]).toMatchObject({ from: nearly(from), width: nearly(width) });
    expect(result.label).toBe('Change width of door');
    expect(result.readouts?.find(({ kind }) => kind === 'length')?.value).toBeCloseTo(width, 9);
    expect(result.readouts?.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(8000, 9);
  });
});

describe('places on a wall', () => {
  const wall = wallFrom(1000, 0, 1000, 3000, 'wall-9');
  it.each([
    { from: 0, width: 900, values: [900, 2100] },
    { from: 0.5, width: 900, values: [900, 2099.5] },
    { from: 0.6, width: 900, values: [0.6, 900, 2099.4] },
    { from: 2100, width: 900, values: [2100, 900] },
    { from: 1000, width: 500, values: [1000, 500, 1500] },
  ])('reads what shows, from $from', ({ from, width, values }) => {
    expect(readoutsOn(wall, from, width).map(({ value }) => value)).toEqual(nearly(values));
  });

  it('an opening as wide as the wall takes all of it', () => {
    const aim = { reach: 30, step: 50, isFree: false, isStraight: false };
    expect(placeOnWall(plan, wall, { width: 3000 }, 200, aim)).toEqual({ from: 0, guides: [] });
    expect(placeOnWall(plan, wall, { width: 3000 }, -20, aim).guides[0]).toEqual({ kind: 'flush', from: at(1000, 0), to: at(1000, 3000) });
  });

  it('the nearest wall; none without walls', () => {
    const walls = [wallFrom(0, 0, 1000, 0, 'a'), wallFrom(1000, 0, 1000, 1000, 'b'), wallFrom(1000, 1000, 0, 1000, 'c')];
    expect(nearestWall(walls, at(500, 100))?.id).toBe('a');
    expect(nearestWall(walls, at(900, 400))?.id).toBe('b');
    expect(nearestWall(walls, at(500, 900))?.id).toBe('c');
    expect(nearestWall(walls, at(500, 500))?.id).toBe('a');
    expect(nearestWall([], at(0, 0))).toBeUndefined();
  });
});
