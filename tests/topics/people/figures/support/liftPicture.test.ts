import { describe, expect, it } from 'vitest';
import { createPlan, type Plan } from '../../../../../src/plan';
import { deriveScene } from '../../../../../src/scene';
import { rule } from '../../../../../src/topics/people/figures/lifting-limit';
import { deriveLiftPictures, type LiftPicture } from '../../../../../src/topics/people/figures/support/liftPicture';
import { examplePlans } from '../../../../support/examplePlans';
import { figuresOf } from '../../../../support/figureCases';
import { linePlan, ownDataSheet, tableOf } from '../../../../support/linePlan';

const picturesOf = (plan: Plan, machine = 'machine') => deriveLiftPictures(deriveScene(plan), machine);
const product = ({ loadKg, bars }: LiftPicture) => bars.reduce((left, { value }) => left * value, loadKg);
const costsMost = ({ bars }: LiftPicture) => bars.filter((bar) => bar.costsMost).map(({ name }) => name);

/** Overshelves of 12 in over the clean table, so high above the floor. */
const shelved = (...heights: number[]) =>
  linePlan({}, (plan) => {
    for (const [i, height] of heights.entries())
      tableOf(plan, 'clean').fittings.push({ id: `shelf-${i}`, kind: 'overshelf', at: 800, length: 600, depth: 304.8, height });
  });

const plans = [...examplePlans(), { name: 'a line', plan: linePlan() }, { name: 'a line with overshelves', plan: shelved(1524, 1400) }];

describe.each(plans)('the lifts of $name', ({ plan }) => {
  const figures = figuresOf(rule, plan);
  const pictures = [...new Set(figures.map(({ subjects: [machine = ''] }) => machine))].flatMap((machine) => picturesOf(plan, machine));

  it('are those of the figure, in its order', () => {
    expect(pictures.length).toBeGreaterThan(0);
    expect(pictures.map(({ part, limitKg }) => ({ part, limitKg }))).toEqual(figures.map(({ part, value }) => ({ part, limitKg: value })));
  });

  it('are drawn by multipliers whose product with the load at best is the figure', () => {
    for (const [i, picture] of pictures.entries()) {
      expect(picture.bars.map(({ name }) => name)).toEqual(['horizontal', 'vertical', 'distance', 'asymmetry', 'frequency', 'coupling']);
      expect(Math.abs(product(picture) - (figures[i]?.value ?? Number.NaN))).toBeLessThan(1e-9);
      expect(picture.bars.every(({ value }) => value >= 0 && value <= 1)).toBe(true);
    }
  });

  it('mark what costs most, and it is the least', () => {
    for (const picture of pictures) {
      const least = Math.min(...picture.bars.map(({ value }) => value));
      expect(picture.bars.filter(({ costsMost }) => costsMost).map(({ value }) => value)).toEqual([least]);
    }
  });

  it('are told apart', () => expect(new Set(pictures.map(({ id }) => id)).size).toBe(pictures.length));
});

it('of a line says where the hands are: a deck at 34 in, a shelf at 6 in', () => {
  const heights = picturesOf(linePlan()).map(({ height }) => height / 25.4);
  expect(heights[0]).toBeCloseTo(34, 9);
  expect(heights[1]).toBeCloseTo(6, 9);
});

it('what costs most changes with the lift: at 6 a minute all day long it is how often, 0.27', () => {
  const family = ownDataSheet({ cycle: { washS: 5, rinseS: 2, dwellS: 1, loadS: 2 } });
  const fast = picturesOf(linePlan({ family }, ({ demand }) => void Object.assign(demand, { peakMeals: 5000, peakMinutes: 180 })));
  expect(picturesOf(linePlan()).map(costsMost)).toEqual([['horizontal'], ['horizontal']]);
  expect(fast.map(costsMost)).toEqual([['frequency'], ['frequency']]);
  expect(fast[0]?.bars.find(({ name }) => name === 'frequency')?.value).toBeCloseTo(0.27, 12);
});

it('of a lift above 70 in leaves nothing, by its height alone', () => {
  const [, , high] = picturesOf(shelved(1800));
  expect(high && { most: costsMost(high), limit: high.limitKg, height: high.height }).toEqual({
    most: ['vertical'],
    limit: 0,
    height: 1800,
  });
});

it.each([
  ['no such machine', linePlan(), 'other'],
  ['no line', createPlan(), 'machine'],
  ['the rest is not known', linePlan({}, ({ demand }) => void (demand.restMinutes = null)), 'machine'],
  ['the equation does not hold', linePlan({}, ({ demand }) => void (demand.peakMinutes = 600)), 'machine'],
])('there is none: %s', (_name, plan, machine) => expect(picturesOf(plan, machine)).toEqual([]));
