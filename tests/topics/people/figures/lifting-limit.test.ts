import { describe, expect, it } from 'vitest';
import { createPlan, type Plan } from '../../../../src/plan';
import { notesWords } from '../../../../src/text';
import { rule } from '../../../../src/topics/people/figures/lifting-limit';
import { formatterFor, toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine', 'clean-shelving'];
/** Deck at 34 in, lowest shelf at 6 in, a rack of 20 in: H 18 in, near the floor 20 in; D 28 in; A 30°. */
const [DM, AM] = [0.82 + 4.5 / (28 * 2.54), 1 - 0.0032 * 30];
/** By the metric constants, the stricter of the two forms. */
const limits = (deckFm: number, shelfFm = deckFm) => [
  {
    part: 'deck',
    subjects,
    value: 23 * (25 / (18 * 2.54)) * (1 - 0.003 * (34 * 2.54 - 75)) * DM * AM * deckFm,
    notes: /as in the manual’s own example/,
  },
  { part: 'shelf', subjects, value: 23 * (25 / (20 * 2.54)) * (1 - 0.003 * (75 - 6 * 2.54)) * DM * AM * shelfFm },
];
const demand = (change: Partial<Plan['demand']>) => linePlan({}, (plan) => void Object.assign(plan.demand, change));

/** DHHS/NIOSH 94-110 (read; Table 5 secondary). */
describeFigure(rule, [
  { name: '18 racks in an hour: 0.3 a minute', plan: linePlan(), expect: limits(0.99) },
  // Short work needs as long a rest, moderate 0.3 of it.
  { name: '59 minutes of rest after an hour: moderate', plan: demand({ restMinutes: 59 }), expect: limits(0.94) },
  { name: '18 minutes of rest after an hour: moderate', plan: demand({ restMinutes: 18 }), expect: limits(0.94) },
  { name: '17 minutes of rest after an hour: long', plan: demand({ restMinutes: 17 }), expect: limits(0.85 - 0.04 / 3) },
  {
    name: 'the rest after an hour is not known',
    plan: demand({ restMinutes: null }),
    expect: [{ subjects, value: null, asks: 'demand.restMinutes' }],
  },
  {
    name: 'the rest after three hours is not known: long either way',
    plan: demand({ peakMeals: 180, peakMinutes: 180, restMinutes: null }),
    expect: limits(0.85 - 0.04 / 3),
  },
  { name: 'the same for two hours', plan: demand({ peakMeals: 120, peakMinutes: 120 }), expect: limits(0.94) },
  { name: 'the same for three', plan: demand({ peakMeals: 180, peakMinutes: 180 }), expect: limits(0.85 - 0.04 / 3) },
  // 3600 / 62 = 58.06 an hour: 0.9677 a minute.
  {
    name: 'no more than the machine washes',
    plan: demand({ peakMeals: 1000 }),
    expect: limits(0.97 - (0.03 * (58.0645161290322 / 60 - 0.5)) / 0.5),
  },
  { name: 'longer than a shift', plan: demand({ peakMinutes: 600 }), expect: [{ subjects, value: null, refuses: 'at most 8 h' }] },
  { name: 'the peak is not known', plan: demand({ peakMinutes: null }), expect: [{ subjects, value: null, asks: 'demand.peakMinutes' }] },
  {
    name: 'a hot room',
    plan: linePlan({}, ({ air }) => void (air.roomC = 30)),
    expect: limits(0.99).map((reading) => ({ ...reading, notes: /outside of that/ })),
  },
  {
    name: 'the shelf is not known',
    plan: linePlan({}, ({ things }) => {
      if (things[0] !== undefined) things[0].clearBelow = null;
    }),
    expect: [{ subjects, value: null, asks: 'things.0.clearBelow' }],
  },
  {
    name: 'racks of 20 in, longer than what is best to hold',
    plan: linePlan(),
    expect: limits(0.99).map((reading) => ({ ...reading, notes: /These racks are longer/ })),
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);

it('is the stricter of the two forms that the manual prints', () => {
  const inPounds = toSI(51 * (10 / 18) * (1 - 0.0075 * 4) * (0.82 + 1.8 / 28) * AM * 0.99, 'lb');
  expect(figuresOf(rule, linePlan())[0]?.value).toBeLessThan(inPounds);
  expect(figuresOf(rule, linePlan())[0]?.value).toBeGreaterThan(0.96 * inPounds);
});

describe('racks of 16 in', () => {
  const notes = figuresOf(
    rule,
    linePlan({}, ({ settings }) => void (settings.rackSize = 406.4)),
  ).map((figure) => notesWords(figure, formatterFor('us')));
  it('are not too long to hold well', () => {
    expect(notes).toHaveLength(2);
    expect(notes.filter((note) => note?.includes('longer'))).toEqual([]);
  });
});
