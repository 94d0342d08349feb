import { describe, expect, it } from 'vitest';
import { edit, freeTable, type Plan, tableLength } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { straightPlan } from '../plans';
import { pull } from '../pulls';

/** The soiled table runs from (3631.5, 800) to the left over 2900, to x = 731.5. Its deck reaches from 311 to 1073. */
const plan = straightPlan();
const stretch = (by: number, options = {}, of = plan) => pull(of, { id: 'soiled-table', handle: 'leg-0' }, -by, 40, options);
const length = (of: Plan, leg = 0) => of.tables[0]!.legs[leg]!.length;

describe('the end of a table', () => {
  it.each([
    { name: 'goes with the pointer', by: 100, options: {}, gives: 3000 },
    { name: 'goes back', by: -100, options: {}, gives: 2800 },
    { name: 'by steps', by: 112, options: { step: 50 }, gives: 3000 },
    { name: 'catches the wall at the reach', by: 701.5, options: {}, gives: 3631.5 },
    { name: 'is free beyond the reach', by: 701, options: {}, gives: 3601 },
    { name: 'catches the wall rather than the step', by: 705, options: { step: 50 }, gives: 3631.5 },
    { name: 'is free with alt', by: 720, options: { isFree: true }, gives: 3620 },
    { name: 'is 100 at least', by: -2850, options: { reach: 0 }, gives: 100 },
    { name: 'is 100 at least with alt', by: -2850, options: { isFree: true }, gives: 100 },
    { name: 'is 100 at least where the machine’s other side would catch it', by: -2900 - 740, options: {}, gives: 100 },
  ])('$name', ({ by, options, gives }) => {
    expect(length(stretch(by, options).plan)).toBeCloseTo(gives, 8);
  });

  it('says so, shows what caught it, and reads the leg', () => {
    const { label, guides, readouts } = stretch(720);
    expect(label).toBe('Change length of soiled table');
    expect(guides).toEqual(nearly([{ kind: 'flush', from: at(0, 1073), to: at(0, 311) }]));
    expect(readouts).toEqual(nearly([{ kind: 'length', from: at(3631.5, 800), to: at(0, 800), value: 3631.5 }]));
    expect(stretch(100).guides).toEqual([]);
  });

  it('its deck lies on the other side of the rack line where people stand there', () => {
    const turned = edit(plan, 'turn', (draft) => void (draft.tables[0]!.operatorSide = 'right')).plan;
    // 273 to the right of the way, that is up the paper, and 489 down.
    expect(stretch(720, {}, turned).guides).toEqual(nearly([{ kind: 'flush', from: at(0, 1289), to: at(0, 527) }]));
  });

  it('of the second leg goes along that leg, and the first stays', () => {
    const bent = edit(plan, 'bend', (draft) => void draft.tables[0]!.legs.push({ length: 800, turnDeg: -90 })).plan;
    // To the left, then a turn to the left of the way: down the paper.
    const result = pull(bent, { id: 'soiled-table', handle: 'leg-1' }, 333, 100);
    expect([length(result.plan), length(result.plan, 1)]).toEqual([2900, 900]);
    expect(result.readouts).toEqual(nearly([{ kind: 'length', from: at(731.5, 800), to: at(731.5, 1700), value: 900 }]));
  });

  it('of a leg that is not there changes nothing', () => {
    expect(pull(plan, { id: 'soiled-table', handle: 'leg-5' }, 100, 0)).toMatchObject({
      label: 'Change length',
      plan: { tables: plan.tables },
    });
  });
});

describe('the start of a free table', () => {
  const free = edit(plan, 'free', freeTable('soiled-table')).plan;
  const begin = (dx: number, options = {}) => pull(free, { id: 'soiled-table', handle: 'start' }, dx, 30, options);
  it.each([
    // To the right is against its way: it grows.
    { name: 'grows', dx: 200, options: {}, gives: { x: 3831.5, length: 3100, landing: 965 } },
    { name: 'shrinks, its fittings as far as they fit', dx: -300, options: {}, gives: { x: 3331.5, length: 2600, landing: 765 } },
    { name: 'by steps', dx: 212, options: { step: 50 }, gives: { x: 3831.5, length: 3100, landing: 965 } },
    { name: 'free with alt', dx: 212, options: { isFree: true }, gives: { x: 3843.5, length: 3112, landing: 977 } },
  ])('$name', ({ dx, options, gives }) => {
    const { plan: after, label, readouts } = begin(dx, options);
    const table = after.tables[0]!;
    expect(table.place).toEqual(nearly({ kind: 'free', x: gives.x, y: 800, headingDeg: 180 }));
    expect(tableLength(table)).toBeCloseTo(gives.length, 8);
    expect(table.fittings[0]?.at).toBeCloseTo(gives.landing, 8);
    expect(label).toBe('Change length of soiled table');
    expect(readouts).toEqual(nearly([{ kind: 'length', from: at(gives.x, 800), to: at(731.5, 800), value: gives.length }]));
  });

  it('is 100 long at least, its end where it was', () => {
    expect(begin(-2880).plan.tables[0]?.place).toEqual(nearly({ kind: 'free', x: 831.5, y: 800, headingDeg: 180 }));
  });

  it('moves its fittings with the room, not with the start', () => {
    // What began 2240 from the start begins 2440 from it.
    expect(begin(200).plan.tables[0]?.fittings.map(({ at: middle }) => middle)).toEqual(nearly([965, 1985, 2340, 2770]));
    // The landing, 1530 long, can't go before the start; all others stay in the room, the drop-off at the end.
    expect(begin(-300).plan.tables[0]?.fittings.map(({ at: middle }) => middle)).toEqual(nearly([765, 1485, 1840, 2270]));
  });

  it('of a joined table stays', () => {
    expect(pull(plan, { id: 'soiled-table', handle: 'start' }, 200, 0).plan).toEqual(plan);
  });
});
