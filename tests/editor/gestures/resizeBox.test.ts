import { describe, expect, it } from 'vitest';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan, straightPlan, withThing } from '../plans';
import { pull } from '../pulls';

/** A cart of 800 × 500 at (2000, 3500): from 1600 to 2400 and from 3250 to 3750. */
const room = withThing(emptyPlan());
const body = ({ things }: Plan) => {
  const { x, y, width, depth } = things[0]!;
  return { x, y, width, depth };
};
const drag = (handle: string, dx: number, dy: number, options = {}, plan = room) => pull(plan, { id: 'cart-1', handle }, dx, dy, options);

describe('each handle', () => {
  it.each([
    { handle: 'left', gives: { x: 2005, y: 3500, width: 790, depth: 500 } },
    { handle: 'right', gives: { x: 2005, y: 3500, width: 810, depth: 500 } },
    { handle: 'back', gives: { x: 2000, y: 3510, width: 800, depth: 480 } },
    { handle: 'front', gives: { x: 2000, y: 3510, width: 800, depth: 520 } },
    { handle: 'left-back', gives: { x: 2005, y: 3510, width: 790, depth: 480 } },
    { handle: 'right-back', gives: { x: 2005, y: 3510, width: 810, depth: 480 } },
    { handle: 'right-front', gives: { x: 2005, y: 3510, width: 810, depth: 520 } },
    { handle: 'left-front', gives: { x: 2005, y: 3510, width: 790, depth: 520 } },
  ])('$handle', ({ handle, gives }) => {
    const result = drag(handle, 10, 20, { isFree: true });
    expect(body(result.plan)).toEqual(nearly(gives));
    expect(result.label).toBe('Change size of cart');
  });

  it('along its own directions where it is turned', () => {
    const turned = withThing(emptyPlan(), { rotationDeg: 90 });
    // Its right side looks down the paper, its front to the left.
    expect(body(drag('right', 30, 100, { isFree: true }, turned).plan)).toEqual(nearly({ x: 2000, y: 3550, width: 900, depth: 500 }));
    expect(body(drag('front', -100, 30, { isFree: true }, turned).plan)).toEqual(nearly({ x: 1950, y: 3500, width: 800, depth: 600 }));
  });
});

describe('a size', () => {
  it.each([
    { name: 'keeps to the step', handle: 'right', by: at(107, 0), options: { step: 50 }, gives: { x: 2050, width: 900 } },
    { name: 'keeps to the step at the left', handle: 'left', by: at(-107, 0), options: { step: 50 }, gives: { x: 1950, width: 900 } },
    { name: 'keeps to no step with alt', handle: 'right', by: at(107, 0), options: { isFree: true }, gives: { x: 2053.5, width: 907 } },
    { name: 'is 10 at least', handle: 'right', by: at(-795, 0), options: {}, gives: { x: 1605, width: 10 } },
    { name: 'is 10 at least, from the left', handle: 'left', by: at(900, 0), options: {}, gives: { x: 2395, width: 10 } },
    { name: 'catches the wall at the reach', handle: 'left', by: at(-1570, 0), options: {}, gives: { x: 1200, width: 2400 } },
    { name: 'is free beyond the reach', handle: 'left', by: at(-1569, 0), options: {}, gives: { x: 1215.5, width: 2369 } },
    { name: 'catches the wall below', handle: 'front', by: at(0, 1230), options: {}, gives: { y: 4125, depth: 1750 } },
    {
      name: 'catches the wall rather than the step',
      handle: 'left',
      by: at(-1590, 0),
      options: { step: 50 },
      gives: { x: 1200, width: 2400 },
    },
    { name: 'catches nothing with alt', handle: 'left', by: at(-1590, 0), options: { isFree: true }, gives: { x: 1205, width: 2390 } },
  ])('$name', ({ handle, by, options, gives }) => {
    expect(body(drag(handle, by.x, by.y, options).plan)).toMatchObject(nearly(gives));
  });

  it('catches the edge of another thing, as far as it lies before it', () => {
    const two = withThing(room, { id: 'cart-2', x: 5000, y: 3900 });
    // Its left side lies at 4600, its back at 3650.
    expect(body(drag('right', 2180, 0, {}, two).plan)).toMatchObject(nearly({ width: 3000 }));
    expect(drag('right', 2180, 0, {}, two).guides).toEqual(nearly([{ kind: 'flush', from: at(4600, 3250), to: at(4600, 4150) }]));
    expect(body(drag('front', 0, -90, {}, two).plan)).toMatchObject(nearly({ depth: 400 }));
  });

  it('shows the caught line along the edge, and no line where it is held to its least', () => {
    expect(drag('left', -1590, 0).guides).toEqual(nearly([{ kind: 'flush', from: at(0, 3250), to: at(0, 3750) }]));
    expect(drag('back', 0, -3230).guides).toEqual(nearly([{ kind: 'flush', from: at(2400, 0), to: at(1600, 0) }]));
    expect(drag('right', 100, 0).guides).toEqual([]);
    // The right side pulled back to the wall behind the left one.
    const beside = withThing(emptyPlan(), { x: 402 });
    expect(drag('right', -790, 0, {}, beside)).toMatchObject({ guides: [] });
    expect(body(drag('right', -790, 0, {}, beside).plan)).toMatchObject(nearly({ x: 7, width: 10 }));
  });

  it('of a hood is 100 at least', () => {
    const plan = straightPlan();
    const { x, width } = plan.hoods[0]!;
    const after = pull(plan, { id: 'hood', handle: 'right' }, -3000, 0, { isFree: true }).plan.hoods[0];
    expect(after).toMatchObject(nearly({ x: x - width / 2 + 50, width: 100 }));
  });

  it('of a column', () => {
    const plan = edit(
      emptyPlan(),
      'column',
      (draft) => void draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 }),
    ).plan;
    const result = pull(plan, { id: 'column-1', handle: 'right-front' }, 40, 60, { isFree: true });
    expect(result.plan.room.columns[0]).toMatchObject({ x: 7020, y: 4030, width: 340, depth: 260 });
    expect(result.label).toBe('Change size of column');
  });

  it.each([
    { handle: 'right', reads: [[at(1600, 3750), at(2500, 3750), 900]] },
    { handle: 'front', reads: [[at(2400, 3250), at(2400, 3850), 600]] },
    {
      handle: 'right-front',
      reads: [
        [at(1600, 3850), at(2500, 3850), 900],
        [at(2500, 3250), at(2500, 3850), 600],
      ],
    },
  ] as const)('is read on the edge beside: $handle', ({ handle, reads }) => {
    expect(drag(handle, 100, 100, { isFree: true }).readouts).toEqual(
      nearly(reads.map(([from, to, value]) => ({ kind: 'length', from, to, value }))),
    );
  });
});
