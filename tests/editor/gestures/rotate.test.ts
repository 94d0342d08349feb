import { describe, expect, it } from 'vitest';
import { pivotOf } from '../../../src/editor/gestures/rotate';
import { edit, freeTable, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { emptyPlan, straightPlan, withThing } from '../plans';
import { pull } from '../pulls';

const free = edit(straightPlan(), 'free', freeTable('soiled-table')).plan;

describe('what can be turned', () => {
  it.each([
    { id: 'machine', plan: straightPlan(), gives: { centre: at(4000, 800), rotationDeg: 0 } },
    { id: 'cart-1', plan: withThing(emptyPlan(), { rotationDeg: 33 }), gives: { centre: at(2000, 3500), rotationDeg: 33 } },
    { id: 'soiled-table', plan: free, gives: { centre: at(3631.5, 800), rotationDeg: 180 } },
    { id: 'soiled-table', plan: straightPlan(), gives: null },
    { id: 'pre-rinse', plan: straightPlan(), gives: null },
    { id: 'door-1', plan: emptyPlan(), gives: null },
    { id: 'wall-1', plan: emptyPlan(), gives: null },
    { id: 'nobody', plan: emptyPlan(), gives: null },
  ])('$id: $gives', ({ id, plan, gives }) => {
    expect(pivotOf(plan, id)).toEqual(nearly(gives));
  });
});

describe('turning', () => {
  /** From below the thing, round by so many degrees, 500 mm out. */
  const turn = (plan: Plan, id: string, centre: { x: number; y: number }, deg: number, options = {}) => {
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
    const from = at(centre.x, centre.y + 400);
    return pull(plan, { id, handle: 'rotate' }, -500 * s, 500 * c - 400, { from, ...options });
  };
  const cart = (rotationDeg: number) => withThing(emptyPlan(), { rotationDeg });
  it.each([
    { start: 0, deg: 20, isFree: false, gives: 15 },
    { start: 0, deg: -20, isFree: false, gives: -15 },
    { start: 0, deg: 23, isFree: false, gives: 30 },
    { start: 40, deg: 20, isFree: false, gives: 60 },
    { start: 40, deg: 20.04, isFree: true, gives: 60 },
    { start: 350, deg: 25, isFree: false, gives: 375 },
    { start: 10, deg: -25, isFree: false, gives: -15 },
  ])('from $start° by $deg°: $gives°', ({ start, deg, isFree, gives }) => {
    const result = turn(cart(start), 'cart-1', at(2000, 3500), deg, { isFree });
    const after = result.plan.things[0]!;
    expect((((after.rotationDeg - gives) % 360) + 360.0001) % 360).toBeCloseTo(0.0001, 6);
    expect(at(after.x, after.y)).toEqual(nearly(at(2000, 3500)));
    expect(result.label).toBe('Turn cart');
  });

  it('shows the arm that it was turned to, and its rotation', () => {
    const { guides, readouts } = turn(cart(0), 'cart-1', at(2000, 3500), 20);
    // From straight down by 15°, as far out as the pointer.
    const arm = at(2000 - 500 * Math.sin(Math.PI / 12), 3500 + 500 * Math.cos(Math.PI / 12));
    expect(guides).toEqual(nearly([{ kind: 'step', from: at(2000, 3500), to: arm }]));
    expect(readouts).toEqual(nearly([{ kind: 'angle', from: at(2000, 3500), to: arm, value: 15 }]));
    const { readouts: turned } = turn(cart(40), 'cart-1', at(2000, 3500), 20);
    expect(turned).toEqual(
      nearly([
        { kind: 'angle', from: at(2000, 3500), to: at(2000 - 500 * Math.sin(Math.PI / 9), 3500 + 500 * Math.cos(Math.PI / 9)), value: 60 },
      ]),
    );
  });

  it('a free table turns about its start', () => {
    const result = turn(free, 'soiled-table', at(3631.5, 800), 90);
    expect(result.plan.tables[0]?.place).toEqual(nearly({ kind: 'free', x: 3631.5, y: 800, headingDeg: 270 }));
    expect(result.label).toBe('Turn soiled table');
  });

  it('a machine takes its hood along', () => {
    const plan = straightPlan();
    const { x, y } = plan.hoods[0]!;
    const after = turn(plan, 'machine', at(4000, 800), 90).plan.hoods[0]!;
    expect(after).toMatchObject(nearly({ x: 4000 - (y - 800), y: 800 + (x - 4000), rotationDeg: 90 }));
  });

  it('what has no pivot stays', () => {
    expect(pull(straightPlan(), { id: 'soiled-table', handle: 'rotate' }, 100, 100).plan).toEqual(straightPlan());
  });
});
