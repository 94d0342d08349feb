import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import {
  fixtureUnitsOfFlow,
  INDIRECT_WASTE_LENGTH,
  judgeUntrappedWaste,
  leastSlope,
  UNDERGROUND_BRANCH_SIZE,
  WARE_SINK_DRAIN_DISTANCE,
  wasteAirGap,
} from '../../src/topics/drain';
import { manifoldLimit } from '../../src/topics/heat';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: Chicago Plumbing Code 18-29-709.3, amended 2021, 2022 · read · exact
test.each([
  [1, 1],
  [20, 20],
])('%d gpm is %d DFU', (gpm, units) => {
  expect(valueOf(fixtureUnitsOfFlow({ flowM3S: toSI(gpm, 'gpm'), rule: 'chicago' }))).toBeCloseTo(units, 9);
});

// source: Chicago Table 18-29-704.1 · read · exact
describe('least slope', () => {
  test.each([
    [1.5, 0.25],
    [2.5, 0.25],
    [3, 0.125],
    [6, 0.125],
    [8, 0.0625],
    [10, 0.0625],
  ])('%d in: %d in/ft', (size, fall) => expect(valueOf(leastSlope({ sizeM: size * INCH }))).toBeCloseTo(fall / 12, 12));
});

// source: Chicago plumbing code, 0-0-0-2692176: underground branch from a floor drain · read · exact
test.each([
  [2, 'pass'],
  [1.5, 'low'],
] as const)('an underground branch of %d in: %s', (size, expected) => expect(judge(UNDERGROUND_BRANCH_SIZE, size * INCH)).toBe(expected));

// source: Chicago plumbing code, 0-0-0-2692339 · read · exact
test.each([
  [1, 2],
  [2, 4],
])('a waste of %d in: air gap of %d in', (pipe, gap) => {
  expect(valueOf(wasteAirGap({ pipeM: pipe * INCH })) / INCH).toBeCloseTo(gap, 12);
});

// source: Chicago plumbing code, 0-0-0-2692350 · read · exact
describe('indirect waste', () => {
  test.each([
    [30, 54, true],
    [30.1, 40, false],
    [20, 54.1, false],
  ])('%d in on the level, %d in in all, without a trap: %s', (level, total, pass) => {
    expect(judgeUntrappedWaste(level * INCH, total * INCH).pass).toBe(pass);
  });

  test.each([
    [15, 'pass'],
    [15.1, 'high'],
  ] as const)('%d ft: %s', (feet, expected) => expect(judge(INDIRECT_WASTE_LENGTH, feet * 0.3048)).toBe(expected));

  // source: the same section: ware sinks within 4 ft of a floor drain · read · exact
  test.each([
    [4, 'pass'],
    [4.1, 'high'],
  ] as const)('a ware sink %d ft from the drain: %s', (feet, expected) =>
    expect(judge(WARE_SINK_DRAIN_DISTANCE, feet * 0.3048)).toBe(expected),
  );
});

// source: Chicago 18-29-409.2.2, earlier edition: rinse water of a commercial dish machine · read · exact
test.each([
  ['stationary-single', 165],
  ['stationary-dual', 180],
  ['conveyor-multi-tank', 180],
] as const)('%s: %d °F', (machine, f) => expect(fromSI(manifoldLimit(machine).min ?? 0, 'F')).toBeCloseTo(f, 9));
