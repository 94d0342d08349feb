import { describe, expect, it } from 'vitest';
import {
  boxesOf,
  cornersOfBox,
  createBox,
  extentOf,
  keepOffAlong,
  middleOf,
  moveBox,
  nodesOf,
  startOf,
  tableBoxes,
} from '../../../src/editor/snap/box';
import { hoodLimits } from '../../../src/editor/snap/hoodLimits';
import { edit, UNKNOWN_FLOOR_WASTE } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { cornerPlan, straightPlan, withThing } from '../plans';
import { boxAt } from '../shapes';

const at = (x: number, y: number) => ({ x, y });
const root = Math.sqrt(3) / 2;

describe('a box', () => {
  it.each([
    { deg: 0, corners: [at(-100, -50), at(100, -50), at(100, 50), at(-100, 50)] },
    { deg: 90, corners: [at(50, -100), at(50, 100), at(-50, 100), at(-50, -100)] },
    {
      deg: 30,
      corners: [
        at(-100 * root + 25, -50 - 50 * root),
        at(100 * root + 25, 50 - 50 * root),
        at(100 * root - 25, 50 + 50 * root),
        at(-100 * root - 25, -50 + 50 * root),
      ],
    },
  ])('has its corners from the back left, clockwise, at $deg°', ({ deg, corners }) => {
    expect(cornersOfBox(boxAt(0, 0, 200, 100, deg))).toEqual(nearly(corners));
  });

  it.each([
    { n: at(1, 0), deg: 0, gives: { min: 900, max: 1100, mid: 1000 } },
    { n: at(0, 1), deg: 0, gives: { min: 450, max: 550, mid: 500 } },
    { n: at(-1, 0), deg: 0, gives: { min: -1100, max: -900, mid: -1000 } },
    { n: at(1, 0), deg: 90, gives: { min: 950, max: 1050, mid: 1000 } },
    { n: at(1, 0), deg: 150, gives: { min: 1000 - 100 * root - 25, max: 1000 + 100 * root + 25, mid: 1000 } },
  ])('reaches along $n at $deg°', ({ n, deg, gives }) => {
    expect(extentOf(boxAt(1000, 500, 200, 100, deg), n)).toEqual(nearly(gives));
  });

  it('is moved whole', () => {
    expect(moveBox(boxAt(10, 20), at(3, -4))).toEqual(boxAt(13, 16));
    expect(createBox('a', at(1, 2), 90, 60, 40)).toEqual({ id: 'a', centre: at(1, 2), u: at(0, 1), hu: 30, hv: 20 });
  });

  it.each([
    { deg: 0, n: at(1, 0), gives: { min: 1, max: 2 } },
    { deg: 0, n: at(-1, 0), gives: { min: 2, max: 1 } },
    { deg: 0, n: at(0, 1), gives: { min: 3, max: 4 } },
    { deg: 0, n: at(0, -1), gives: { min: 4, max: 3 } },
    { deg: 90, n: at(1, 0), gives: { min: 4, max: 3 } },
    { deg: 90, n: at(0, 1), gives: { min: 1, max: 2 } },
    { deg: 180, n: at(1, 0), gives: { min: 2, max: 1 } },
    { deg: 270, n: at(1, 0), gives: { min: 3, max: 4 } },
  ])('keeps off at its sides, at $deg° along $n', ({ deg, n, gives }) => {
    const keepOff = { left: 1, right: 2, back: 3, front: 4 };
    expect(keepOffAlong({ ...boxAt(0, 0, 200, 100, deg), keepOff }, n)).toEqual(gives);
    expect(keepOffAlong(boxAt(0, 0, 200, 100, deg), n)).toEqual({ min: 0, max: 0 });
  });

  it('the middle of several is that of all they cover', () => {
    expect(middleOf([boxAt(0, 0), boxAt(1000, 500, 400, 300)])).toEqual(nearly(at(550, 300)));
    expect(middleOf([boxAt(0, 0), boxAt(1000, 500, 400, 300), boxAt(300, 200)])).toEqual(nearly(at(550, 300)));
    expect(middleOf([boxAt(0, 0), boxAt(-1000, -500, 400, 300)])).toEqual(nearly(at(-550, -300)));
  });
});

describe('boxes of a plan', () => {
  const plan = edit(withThing(straightPlan(), { rotationDeg: 90 }), 'more', (draft) => {
    draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 });
    draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
    draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
  }).plan;
  const boxOf = (id: string) => boxesOf(plan).filter((each) => each.id === id);

  it.each([
    // The machine is 737 × 711; the rack line lies 273 from the operator's edge of tables 762 deep.
    { id: 'soiled-table', centre: at(4000 - 368.5 - 1450, 800 + 273 - 381), u: at(-1, 0), hu: 1450, hv: 381 },
    { id: 'clean-table', centre: at(4000 + 368.5 + 800, 800 + 273 - 381), u: at(1, 0), hu: 800, hv: 381 },
    { id: 'cart-1', centre: at(2000, 3500), u: at(0, 1), hu: 400, hv: 250 },
    { id: 'column-1', centre: at(7000, 4000), u: at(1, 0), hu: 150, hv: 100 },
    { id: 'drain-1', centre: at(5000, 3000), u: at(1, 0), hu: 102, hv: 102 },
    { id: 'stub-1', centre: at(100, 110), u: at(1, 0), hu: 0, hv: 0 },
  ])('$id', ({ id, ...rest }) => {
    expect(boxOf(id)).toEqual(nearly([{ id, ...rest }]));
  });

  it('a machine keeps its service space where no table stands, and none before its front', () => {
    const keepOff = (of: typeof plan) => boxesOf(of).find(({ id }) => id === 'machine')?.keepOff;
    const own = (of: typeof plan) =>
      edit(of, 'own', (draft) => {
        const sheet = deriveScene(of).machines[0]!.sheet;
        draft.sheets.push({
          ...JSON.parse(JSON.stringify(sheet)),
          id: 'own',
          clearances: { left: 11, right: 12, back: 13, front: 14, above: 15 },
        });
        draft.machines[0]!.sheet = 'own';
      }).plan;
    expect(keepOff(own(plan))).toEqual({ left: 0, right: 0, back: 13, front: 0 });
    expect(keepOff(own(cornerPlan()))).toEqual({ left: 0, right: 12, back: 13, front: 0 });
    const other = edit(own(cornerPlan()), 'other', (draft) => {
      draft.machines.push({ ...draft.machines[0]!, id: 'machine-2', x: 1000, y: 4000 });
      draft.tables.push({
        ...draft.tables[0]!,
        id: 'third',
        fittings: [],
        place: { kind: 'joined', machine: 'machine-2', side: 'right', gap: 0, offset: 0, skewDeg: 0 },
      });
    }).plan;
    expect(keepOff(other)).toEqual({ left: 0, right: 12, back: 13, front: 0 });
    const alone = edit(own(plan), 'alone', (draft) => {
      draft.tables.length = 0;
    }).plan;
    expect(keepOff(alone)).toEqual({ left: 11, right: 12, back: 13, front: 0 });
  });

  it('are gathered once a plan', () => {
    expect(boxesOf(plan)).toBe(boxesOf(plan));
    expect(boxesOf(straightPlan())).not.toEqual(boxesOf(plan));
  });

  it('the least hood over a machine reaches 6 in beyond its open sides', () => {
    expect(hoodLimits(deriveScene(straightPlan()))).toEqual(
      nearly([{ id: 'machine', centre: at(4000, 800), u: at(1, 0), hu: 368.5 + 152.4, hv: 355.5 + 152.4 }]),
    );
  });
});

describe('a table', () => {
  const [table] = straightPlan().tables;
  const legs = [
    { length: 1000, turnDeg: 0 },
    { length: 500, turnDeg: 90 },
    { length: 300, turnDeg: -45 },
  ];
  it('has nodes at its joint, its turns and its end', () => {
    const half = 300 * Math.SQRT1_2;
    expect(nodesOf({ legs }, { x: 100, y: 200, headingDeg: 0 })).toEqual(
      nearly([
        { point: at(100, 200), from: at(100, 200), headingDeg: 0, length: 0 },
        { point: at(1100, 200), from: at(100, 200), headingDeg: 0, length: 1000 },
        { point: at(1100, 700), from: at(1100, 200), headingDeg: 90, length: 500 },
        { point: at(1100 + half, 700 + half), from: at(1100, 700), headingDeg: 45, length: 300 },
      ]),
    );
  });

  it.each([
    // The rack line lies 273 from the operator's edge of a deck of 762: its middle is 108 farther from the operator.
    { operatorSide: 'right' as const, first: at(500, -108), second: at(1108, 250) },
    { operatorSide: 'left' as const, first: at(500, 108), second: at(892, 250) },
  ])('has a box a leg, operator on the $operatorSide', ({ operatorSide, first, second }) => {
    const boxes = tableBoxes({ ...table!, legs, operatorSide }, { x: 0, y: 0, headingDeg: 0 });
    expect(boxes.slice(0, 2)).toEqual(
      nearly([
        { id: 'soiled-table', centre: first, u: at(1, 0), hu: 500, hv: 381 },
        { id: 'soiled-table', centre: second, u: at(0, 1), hu: 250, hv: 381 },
      ]),
    );
    expect(boxes).toHaveLength(3);
  });

  it('begins at its door, or where it stands free', () => {
    expect(startOf(straightPlan(), table!)).toEqual(nearly({ x: 3631.5, y: 800, headingDeg: 180 }));
    const place = { kind: 'free' as const, x: 12, y: 34, headingDeg: 56 };
    expect(startOf(straightPlan(), { ...table!, place })).toEqual(place);
    expect(startOf({ ...straightPlan(), machines: [] }, table!)).toEqual({ x: 0, y: 0, headingDeg: 0 });
  });
});
