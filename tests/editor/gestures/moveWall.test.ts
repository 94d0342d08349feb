import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan } from '../plans';
import { pull } from '../pulls';

type Pair = readonly [number, number];

const withOutline = (...corners: readonly Pair[]): Plan => {
  const plan = emptyPlan();
  return { ...plan, room: { ...plan.room, openings: [], outline: corners.map(([x, y], i) => ({ id: `wall-${i + 1}`, x, y })) } };
};
const outlineOf = ({ room }: Plan) => room.outline.map(({ x, y }) => [x, y]);

const square = withOutline([0, 0], [8000, 0], [8000, 5000], [0, 5000]);
/** Its lower side steps up at x = 4000: from 5000 to 3000. */
const step = withOutline([0, 0], [8000, 0], [8000, 5000], [4000, 5000], [4000, 3000], [0, 3000]);

describe('a wall that is dragged', () => {
  it.each([
    {
      name: 'the left one in',
      plan: square,
      wall: 'wall-4',
      by: at(500, 70),
      gives: [
        [500, 0],
        [8000, 0],
        [8000, 5000],
        [500, 5000],
      ],
    },
    {
      name: 'the left one out',
      plan: square,
      wall: 'wall-4',
      by: at(-500, 70),
      gives: [
        [-500, 0],
        [8000, 0],
        [8000, 5000],
        [-500, 5000],
      ],
    },
    {
      name: 'the upper one in',
      plan: square,
      wall: 'wall-1',
      by: at(70, 300),
      gives: [
        [0, 300],
        [8000, 300],
        [8000, 5000],
        [0, 5000],
      ],
    },
    {
      name: 'the right one in',
      plan: square,
      wall: 'wall-2',
      by: at(-400, 0),
      gives: [
        [0, 0],
        [7600, 0],
        [7600, 5000],
        [0, 5000],
      ],
    },
    {
      name: 'the lower one out',
      plan: square,
      wall: 'wall-3',
      by: at(0, 400),
      gives: [
        [0, 0],
        [8000, 0],
        [8000, 5400],
        [0, 5400],
      ],
    },
    {
      name: 'beside a slant one, which keeps its direction',
      plan: withOutline([0, 0], [8000, 0], [7000, 5000], [0, 5000]),
      wall: 'wall-3',
      by: at(0, -1000),
      gives: [
        [0, 0],
        [8000, 0],
        [7200, 4000],
        [0, 4000],
      ],
    },
    {
      name: 'beside one in its own line, which is bent',
      plan: withOutline([0, 0], [4000, 0], [8000, 0], [8000, 5000], [0, 5000]),
      wall: 'wall-1',
      by: at(0, 500),
      gives: [
        [0, 500],
        [4000, 500],
        [8000, 0],
        [8000, 5000],
        [0, 5000],
      ],
    },
    {
      name: 'beside one in its own line, out',
      plan: withOutline([0, 0], [4000, 0], [8000, 0], [8000, 5000], [0, 5000]),
      wall: 'wall-2',
      by: at(0, -500),
      gives: [
        [0, 0],
        [4000, -500],
        [8000, -500],
        [8000, 5000],
        [0, 5000],
      ],
    },
  ])('$name', ({ plan, wall, by, gives }) => {
    expect(outlineOf(pull(plan, { ids: [wall] }, by.x, by.y).plan)).toEqual(nearly(gives));
  });

  it.each([
    { name: 'to the nearest step', by: 507, gives: 500 },
    { name: 'on to the next', by: 530, gives: 550 },
    { name: 'out', by: -507, gives: -500 },
  ])('keeps the width of the room $name', ({ by, gives }) => {
    expect(pull(square, { ids: ['wall-4'] }, by, 0, { step: 50 }).plan.room.outline[0]?.x).toBeCloseTo(gives, 9);
  });

  it('free keeps to no step', () => {
    expect(pull(square, { ids: ['wall-4'] }, 507, 0, { step: 0, isFree: true }).plan.room.outline[0]?.x).toBe(507);
  });

  it('the width is that before the nearest wall opposite', () => {
    // 3010 before the nearer of the two lower walls, 5000 before the other.
    const plan = withOutline([0, 0], [8000, 0], [8000, 5000], [4000, 5000], [4000, 3010], [0, 3010]);
    expect(pull(plan, { ids: ['wall-1'] }, 0, 7, { step: 50 }).plan.room.outline[0]?.y).toBeCloseTo(10, 9);
    expect(pull(plan, { ids: ['wall-1'] }, 0, 7, { step: 50 }).readouts?.at(-1)?.value).toBeCloseTo(3000, 9);
  });

  it('without a wall opposite it moves by steps itself', () => {
    const triangle = withOutline([0, 0], [6000, 0], [0, 4000]);
    const result = pull(triangle, { ids: ['wall-1'] }, 0, 512, { step: 50 });
    expect(outlineOf(result.plan)).toEqual(
      nearly([
        [0, 500],
        [5250, 500],
        [0, 4000],
      ]),
    );
    expect(result.readouts?.map(({ kind }) => kind)).toEqual(['length', 'length']);
  });

  it('says its name, and reads its neighbours and the width', () => {
    const { label, readouts, guides } = pull(square, { ids: ['wall-4'] }, 500, 0);
    expect(label).toBe('Move wall 4');
    expect(guides).toEqual([]);
    expect(readouts).toMatchObject([
      { kind: 'length', from: at(8000, 5000), to: at(500, 5000), value: 7500 },
      { kind: 'length', from: at(8000, 0), to: at(500, 0), value: 7500 },
      { kind: 'distance', from: at(500, 2500), to: at(8000, 2500), value: 7500 },
    ]);
  });
});

describe('a wall in line with another', () => {
  // The fifth wall lies at 3000, the third at 5000, both with the room above.
  it.each([
    { name: 'is caught at the reach', by: 1970, gives: 5000 },
    { name: 'is free beyond', by: 1969, gives: 4969 },
    { name: 'is caught from beyond', by: 2030, gives: 5000 },
    { name: 'is free farther out', by: 2031, gives: 5031 },
  ])('$name', ({ by, gives }) => {
    const { plan, guides } = pull(step, { ids: ['wall-5'] }, 0, by);
    expect(plan.room.outline[5]?.y).toBeCloseTo(gives, 9);
    expect(guides).toEqual(gives === 5000 ? nearly([{ kind: 'aligned', from: at(4000, 5000), to: at(0, 5000) }]) : []);
  });

  it('the same inward, from the other', () => {
    expect(pull(step, { ids: ['wall-3'] }, 0, -1980).plan.room.outline[2]?.y).toBeCloseTo(3000, 9);
  });

  it('the nearer of two', () => {
    // Lower walls at 5000, 4000 and 3000: the middle one comes to either.
    const stairs = withOutline([0, 0], [9000, 0], [9000, 5000], [6000, 5000], [6000, 4000], [3000, 4000], [3000, 3000], [0, 3000]);
    expect(pull(stairs, { ids: ['wall-5'] }, 0, 980, { reach: 1500 }).plan.room.outline[4]?.y).toBeCloseTo(5000, 9);
    expect(pull(stairs, { ids: ['wall-5'] }, 0, -980, { reach: 1500 }).plan.room.outline[4]?.y).toBeCloseTo(3000, 9);
  });

  it('a wall opposite is none to be in line with, nor is one across', () => {
    expect(pull(square, { ids: ['wall-1'] }, 0, 4980).plan.room.outline[0]?.y).toBeCloseTo(4980, 9);
    expect(pull(square, { ids: ['wall-4'] }, 20, 0).plan.room.outline[0]?.x).toBeCloseTo(20, 9);
  });

  it('free is not caught', () => {
    expect(pull(step, { ids: ['wall-5'] }, 0, 1990, { isFree: true }).plan.room.outline[5]?.y).toBeCloseTo(4990, 9);
  });

  it('one that is in line already does not stay for that', () => {
    const plan = withOutline([0, 0], [3000, 0], [3000, 1000], [5000, 1000], [5000, 0], [8000, 0], [8000, 5000], [0, 5000]);
    expect(pull(plan, { ids: ['wall-1'] }, 0, 10).plan.room.outline[0]?.y).toBeCloseTo(10, 9);
  });
});
