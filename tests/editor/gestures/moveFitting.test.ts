import { describe, expect, it } from 'vitest';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { straightPlan } from '../plans';
import { pull } from '../pulls';

/**
 * The soiled table runs from (3631.5, 800) to the left over 2900: landing to 1530, pre-rinse sink to 2040, scrap to 2240,
 * drop-off to the end. Motion to the left is along it.
 */
const plan = straightPlan();
const fitting = (of: Plan, id = 'pre-rinse') => of.tables[0]!.fittings.find((each) => each.id === id)!;
const slide = (by: number, options = {}, of = plan) => pull(of, { ids: ['pre-rinse'] }, -by, 25, { from: at(1846.5, 800), ...options });

describe('a fitting along its table', () => {
  // The sink is 510 long, its middle at 1785.
  it.each([
    { name: 'goes with the pointer', by: 100, options: {}, gives: 1885 },
    { name: 'goes back', by: -100, options: {}, gives: 1685 },
    { name: 'by steps of its near edge', by: 112, options: { reach: 0, step: 50 }, gives: 1905 },
    { name: 'beside the scrap, at the reach', by: 680, options: {}, gives: 2495 },
    { name: 'free before it', by: 679, options: {}, gives: 2464 },
    { name: 'beside the scrap, from beyond', by: 740, options: {}, gives: 2495 },
    { name: 'free beyond it', by: 741, options: {}, gives: 2526 },
    { name: 'beside the landing', by: -20, options: {}, gives: 1785 },
    { name: 'before the drop-off', by: 210, options: {}, gives: 1985 },
    { name: 'at the end, at the reach', by: 830, options: {}, gives: 2645 },
    { name: 'free before the end', by: 829, options: {}, gives: 2614 },
    { name: 'never past the end', by: 1050, options: {}, gives: 2645 },
    { name: 'never past the end by a step', by: 1050, options: { reach: 0, step: 700 }, gives: 2645 },
    { name: 'at the joint, within the reach', by: -1501, options: {}, gives: 255 },
    { name: 'free before the joint', by: -1499, options: {}, gives: 286 },
    { name: 'never past the joint', by: -1700, options: {}, gives: 255 },
    { name: 'free with alt', by: 700, options: { isFree: true }, gives: 2485 },
    { name: 'never past the end with alt', by: 1000, options: { isFree: true }, gives: 2645 },
  ])('$name', ({ by, options, gives }) => {
    expect(fitting(slide(by, options).plan).at).toBeCloseTo(gives, 8);
    expect(fitting(slide(by, options).plan).length).toBe(510);
  });

  it.each([
    // Alone with the scrap, which lies from 2040 to 2240.
    { name: 'beside its only neighbour, beyond it', by: 690, gives: 2495 },
    { name: 'beside its only neighbour, before it', by: 10, gives: 1785 },
  ])('$name', ({ by, gives }) => {
    const two = edit(plan, 'two', (draft) => {
      draft.tables[0]!.fittings = draft.tables[0]!.fittings.filter(({ id }) => id === 'pre-rinse' || id === 'scrap');
    }).plan;
    expect(fitting(slide(by, {}, two).plan).at).toBeCloseTo(gives, 8);
  });

  it('an overshelf is no neighbour', () => {
    const shelf = edit(
      plan,
      'shelf',
      (draft) => void draft.tables[0]!.fittings.push({ id: 'shelf', kind: 'overshelf', at: 900, length: 400, depth: 305, height: 1524 }),
    ).plan;
    // It ends at 1100: the sink beside it would lie at 1355.
    expect(fitting(slide(-440, {}, shelf).plan).at).toBeCloseTo(1345, 8);
  });

  it('says what it is, where it was caught, and reads its place', () => {
    const { label, guides, readouts } = slide(690);
    expect(label).toBe('Move pre-rinse sink');
    expect(guides).toEqual(
      nearly([
        { kind: 'flush', from: at(1391.5, 800), to: at(1391.5, 800) },
        { kind: 'flush', from: at(881.5, 800), to: at(881.5, 800) },
      ]),
    );
    expect(readouts).toEqual(
      nearly([
        { kind: 'distance', from: at(3631.5, 800), to: at(1391.5, 800), value: 2240 },
        { kind: 'length', from: at(1391.5, 800), to: at(881.5, 800), value: 510 },
        { kind: 'distance', from: at(881.5, 800), to: at(731.5, 800), value: 150 },
      ]),
    );
    expect(slide(300, { reach: 0 }).guides).toEqual([]);
    expect(slide(1050).readouts?.map(({ value }) => value)).toEqual(nearly([2390, 510]));
  });
});

describe('the end of a fitting', () => {
  it.each([
    { handle: 'to', by: 60, options: {}, gives: { at: 1815, length: 570 } },
    { handle: 'to', by: 107, options: { step: 50 }, gives: { at: 1830, length: 600 } },
    { handle: 'to', by: -600, options: {}, gives: { at: 1535, length: 10 } },
    { handle: 'to', by: 1050, options: {}, gives: { at: 2215, length: 1370 } },
    { handle: 'from', by: -60, options: {}, gives: { at: 1755, length: 570 } },
    { handle: 'from', by: -107, options: { step: 50 }, gives: { at: 1740, length: 600 } },
    { handle: 'from', by: 600, options: {}, gives: { at: 2035, length: 10 } },
    { handle: 'from', by: -1700, options: {}, gives: { at: 1020, length: 2040 } },
  ])('$handle by $by', ({ handle, by, options, gives }) => {
    const result = pull(plan, { id: 'pre-rinse', handle }, -by, 10, { from: at(1846.5, 800), ...options });
    expect(fitting(result.plan)).toMatchObject(nearly(gives));
    expect(result.label).toBe('Change length of pre-rinse sink');
    expect(result.readouts?.find(({ kind }) => kind === 'length')?.value).toBeCloseTo(gives.length, 8);
    expect(fitting(result.plan, 'scrap')).toEqual(fitting(plan, 'scrap'));
  });
});
