import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import {
  frequencyMultiplier,
  gripMultiplier,
  handsBeforeAnkles,
  LIFTING_CLIMATE,
  LIFTING_CONTAINER,
  type LiftInputs,
  liftingDuration,
  liftingIndex,
  liftingLimit,
  liftingLoad,
  liftingMultipliers,
} from '../../src/topics/people';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

const tray = (vertical: number): LiftInputs => ({
  horizontalM: 20 * INCH,
  verticalM: vertical * INCH,
  travelM: 37 * INCH,
  angleDeg: 30,
  frequency: valueOf(frequencyMultiplier({ liftsPerH: 300, duration: 'short', verticalM: 44 * INCH })),
  coupling: valueOf(gripMultiplier({ grip: 'good', verticalM: vertical * INCH })),
  form: 'us',
});

// source: DHHS/NIOSH 94-110, rev. 9/2021, Example 5, as a textbook chapter prints it · read · 0.1 lb
describe('Example 5, Dish-Washing Machine Unloading', () => {
  test.each([
    ['origin', 44, 14.4],
    ['destination', 7, 13.3],
  ])('%s: %d in, RWL %d lb', (_name, vertical, pounds) => {
    expect(Math.abs(fromSI(valueOf(liftingLimit(tray(vertical))), 'lb') - pounds)).toBeLessThan(0.1);
  });

  // source: the same, its worksheet, in two decimals (p. 29); 0.80, the grip and the limits read, the others memory · 0.005
  test.each([
    ['origin', 44, { horizontal: 0.5, vertical: 0.9, distance: 0.87, asymmetry: 0.9, frequency: 0.8, coupling: 1 }, 14.4],
    ['destination', 7, { horizontal: 0.5, vertical: 0.83, distance: 0.87, asymmetry: 0.9, frequency: 0.8, coupling: 1 }, 13.3],
  ])('%s: %d in, its multipliers', (_name, vertical, printed, pounds) => {
    const multipliers = liftingMultipliers(tray(vertical));
    const apart = (name: keyof typeof printed) => Math.abs(multipliers[name] - printed[name]);
    expect(Object.keys(multipliers)).toEqual(Object.keys(printed));
    expect(Math.max(...(Object.keys(printed) as (keyof typeof printed)[]).map(apart))).toBeLessThan(0.005 + 1e-9);
    const rounded = Object.values(printed).reduce((product, one) => product * one, fromSI(liftingLoad('us'), 'lb'));
    expect(Math.round(rounded * 10) / 10).toBe(pounds);
  });

  test('its frequency multiplier is 0.80', () => expect(tray(44).frequency).toBeCloseTo(0.8, 12));

  // regression: 20 lb over the limits above · computed · 0.01
  test.each([
    [44, 1.39],
    [7, 1.51],
  ])('at %d in a tray of 20 lb has an index of %d', (vertical, index) => {
    const limitKg = valueOf(liftingLimit(tray(vertical)));
    expect(valueOf(liftingIndex({ loadKg: toSI(20, 'lb'), limitKg }))).toBeCloseTo(index, 2);
  });
});

// source: DHHS/NIOSH 94-110, constants and multipliers · read · exact
describe('multipliers', () => {
  const ideal: LiftInputs = { horizontalM: 0.25, verticalM: 0.75, travelM: 0.25, angleDeg: 0, frequency: 1, coupling: 1, form: 'metric' };
  const idealUs: LiftInputs = { ...ideal, horizontalM: 10 * INCH, verticalM: 30 * INCH, travelM: 10 * INCH, form: 'us' };

  test('the load constant is 23 kg and 51 lb', () => {
    expect(valueOf(liftingLimit(ideal))).toBeCloseTo(23, 9);
    expect(fromSI(valueOf(liftingLimit(idealUs)), 'lb')).toBeCloseTo(51, 9);
  });

  test.each([
    ['H 10 in', { horizontalM: 10 * INCH }, 'horizontal', 1],
    ['H 5 in', { horizontalM: 5 * INCH }, 'horizontal', 1],
    ['H 20 in', { horizontalM: 20 * INCH }, 'horizontal', 0.5],
    ['H 25 in', { horizontalM: 25 * INCH }, 'horizontal', 0.4],
    ['H 25.1 in', { horizontalM: 25.1 * INCH }, 'horizontal', 0],
    ['V 30 in', { verticalM: 30 * INCH }, 'vertical', 1],
    ['V 70 in', { verticalM: 70 * INCH }, 'vertical', 0.7],
    ['V 0', { verticalM: 0 }, 'vertical', 0.775],
    ['V 70.1 in', { verticalM: 70.1 * INCH }, 'vertical', 0],
    ['D 10 in', { travelM: 10 * INCH }, 'distance', 1],
    ['D 0', { travelM: 0 }, 'distance', 1],
    ['D 70.1 in', { travelM: 70.1 * INCH }, 'distance', 0],
    ['A 30°', { angleDeg: 30 }, 'asymmetry', 0.904],
    ['A 135°', { angleDeg: 135 }, 'asymmetry', 0.568],
    ['A 135.1°', { angleDeg: 135.1 }, 'asymmetry', 0],
  ] as const)('%s', (_name, change, part, expected) => {
    expect(liftingMultipliers({ ...idealUs, ...change })[part]).toBeCloseTo(expected, 12);
  });

  test.each([
    ['H 63 cm', { horizontalM: 0.63 }, 'horizontal', 25 / 63],
    ['H 63.1 cm', { horizontalM: 0.631 }, 'horizontal', 0],
    ['V 175 cm', { verticalM: 1.75 }, 'vertical', 0.7],
    ['V 175.1 cm', { verticalM: 1.751 }, 'vertical', 0],
    ['D 100 cm', { travelM: 1 }, 'distance', 0.865],
  ] as const)('metric, %s', (_name, change, part, expected) => {
    expect(liftingMultipliers({ ...ideal, ...change })[part]).toBeCloseTo(expected, 12);
  });
});

// source: DHHS/NIOSH 94-110, Table 5, as restated in public files · secondary · exact
describe('Table 5, frequency multiplier: to 1 h, to 2 h, to 8 h', () => {
  test.each([
    [0.2, 1, 0.95, 0.85],
    [0.5, 0.97, 0.92, 0.81],
    [1, 0.94, 0.88, 0.75],
    [2, 0.91, 0.84, 0.65],
    [3, 0.88, 0.79, 0.55],
    [4, 0.84, 0.72, 0.45],
    [5, 0.8, 0.6, 0.35],
    [6, 0.75, 0.5, 0.27],
    [7, 0.7, 0.42, 0.22],
    [8, 0.6, 0.35, 0.18],
    [9, 0.52, 0.3, 0.15],
    [10, 0.45, 0.26, 0.13],
    [11, 0.41, 0.23, 0],
    [12, 0.37, 0.21, 0],
    [13, 0.34, 0, 0],
    [14, 0.31, 0, 0],
    [15, 0.28, 0, 0],
    [16, 0, 0, 0],
  ])('%d a minute, from 30 in', (perMinute, ...expected) => {
    const row = (['short', 'moderate', 'long'] as const).map((duration) =>
      valueOf(frequencyMultiplier({ liftsPerH: perMinute * 60, duration, verticalM: 0.8 })),
    );
    row.forEach((value, i) => expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 12));
  });

  test.each([
    [9, 'long'],
    [10, 'long'],
    [11, 'moderate'],
    [12, 'moderate'],
    [13, 'short'],
    [14, 'short'],
    [15, 'short'],
  ] as const)('%d a minute, %s, below 30 in: 0', (perMinute, duration) => {
    expect(valueOf(frequencyMultiplier({ liftsPerH: perMinute * 60, duration, verticalM: 0.7 }))).toBe(0);
  });
});

// source: DHHS/NIOSH 94-110, Table 7: fair · read · exact
test.each([
  [29, 0.95],
  [30, 1],
])('a fair grip at %d in: %d', (vertical, expected) => {
  expect(valueOf(gripMultiplier({ grip: 'fair', verticalM: vertical * INCH }))).toBe(expected);
});

// memory: DHHS/NIOSH 94-110, Table 7: good and poor, unchecked · memory · exact
test.each([
  ['good', 0.5, 1],
  ['good', 1, 1],
  ['poor', 0.5, 0.9],
  ['poor', 1, 0.9],
] as const)('a %s grip at %d m: %d', (grip, verticalM, expected) => expect(valueOf(gripMultiplier({ grip, verticalM }))).toBe(expected));

// regression: from DHHS/NIOSH 94-110, H = 8 + W/2, 10 + W/2 below 10 in (read), for a rack of 20 in · computed · exact
test.each([
  [10, 18],
  [9.9, 20],
])('hands at %d in with a rack of 20 in: %d in before the ankles', (vertical, expected) => {
  expect(valueOf(handsBeforeAnkles({ containerM: 20 * INCH, verticalM: vertical * INCH })) / INCH).toBeCloseTo(expected, 9);
});

// source: DHHS/NIOSH 94-110: 66-79 °F, 35-50 % · read · exact
describe('the room it holds for', () => {
  const [temperature, humidity] = LIFTING_CLIMATE;
  test.each([
    [temperature, toSI(66, 'F'), 'pass'],
    [temperature, toSI(79, 'F'), 'pass'],
    [temperature, toSI(80, 'F'), 'high'],
    [humidity, 0.5, 'pass'],
    [humidity, 0.65, 'high'],
    [humidity, 0.3, 'low'],
  ] as const)('case %#', (limit, value, expected) => expect(limit && judge(limit, value)).toBe(expected));
});

// source: DHHS/NIOSH 94-110: optimal container at most 16 in in front and 12 in high; a rack of 20 in exceeds it · read · exact
describe('what is best to hold', () => {
  const [length, height] = LIFTING_CONTAINER;
  test.each([
    [length, 16, 'pass'],
    [length, 20, 'high'],
    [height, 12, 'pass'],
    [height, 12.1, 'high'],
  ] as const)('case %#', (limit, inches, expected) => expect(limit && judge(limit, inches * INCH)).toBe(expected));
});

// source: DHHS/NIOSH 94-110, rev. 9/2021, duration categories · read · exact
test.each([
  [60, 60, 'short'],
  [60, 59, 'moderate'],
  [61, 61, 'moderate'],
  [120, 36, 'moderate'],
  [120, 35, 'long'],
  [121, 600, 'long'],
  [480, 0, 'long'],
  [481, 600, null],
])('%d min of lifting, %d min of rest: %s', (work, rest, kind) => expect(liftingDuration(work * 60, rest * 60)).toBe(kind));

// source: the same, Table 5: the height at the origin of the lift picks the column · read; the values secondary · exact
test('9 lifts a minute to 8 h from a deck of 34 in, whatever the shelf', () =>
  expect(valueOf(frequencyMultiplier({ liftsPerH: 540, duration: 'long', verticalM: 34 * INCH }))).toBeCloseTo(0.15, 12));
