import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import {
  ampacity,
  BRANCH_DROP,
  boundAmpacity,
  breakerSize,
  chooseConductor,
  judgeAmpacityTable,
  loadCurrent,
  SMALL_WIRE_BREAKERS,
  STANDARD_BREAKERS,
  TOTAL_DROP,
  terminalOf,
  wireResistance,
} from '../../src/topics/power';
import { valueOf } from '../support/valueOf';

// source: NEC 240.6(A), 2020 and 2023, two independent listings · secondary · exact
describe('240.6(A) standard ratings', () => {
  test('to 100 A', () => expect(STANDARD_BREAKERS).toEqual([15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100]));

  test.each([
    [50.1, 60],
    [60.1, 70],
    [70.1, 80],
    [80.1, 90],
  ])('no step between: %d A takes %d A', (currentA, size) => {
    expect(valueOf(breakerSize({ currentA, load: 'not-continuous' }))).toBe(size);
  });
});

// source: NEC 210.20(A), 125 % of a continuous load, scope notes in public files · secondary · exact
test.each([
  [16, 20],
  [16.1, 25],
  [24, 30],
  [80, 100],
])('%d A continuous: %d A', (currentA, size) => expect(valueOf(breakerSize({ currentA, load: 'continuous' }))).toBe(size));

// regression: current, times 1.25, next size; inputs as restated · computed · 0.01 A
describe('from power to breaker', () => {
  test.each([
    ['row 1', 10, 240, 'single', 0.9, 46.3, 57.87, 60],
    ['row 2', 12, 240, 'single', 1, 50, 62.5, 70],
    ['row 3', 9, 208, 'three', 1, 24.98, 31.23, 35],
    ['row 4', 12, 208, 'three', 1, 33.31, 41.64, 45],
    ['row 5', 14.5, 208, 'three', 1, 40.25, 50.31, 60],
    ['row 6', 24, 208, 'three', 1, 66.62, 83.27, 90],
    ['row 7', 24, 480, 'three', 1, 28.87, 36.08, 40],
  ] as const)('%s: %d kW, %d V, %s', (_row, kW, voltageV, phases, powerFactor, amperes, times, size) => {
    const currentA = valueOf(loadCurrent({ powerW: kW * 1000, voltageV, phases, powerFactor }));
    expect(Math.abs(currentA - amperes)).toBeLessThan(0.01);
    expect(Math.abs(1.25 * currentA - times)).toBeLessThan(0.01);
    expect(valueOf(breakerSize({ currentA, load: 'continuous' }))).toBe(size);
  });
});

// source: NEC Table 310.16, single values, three public files agreeing · secondary · exact
describe('310.16 copper, single values', () => {
  test.each([
    ['14', '60C', 15],
    ['14', '75C', 20],
    ['12', '60C', 20],
    ['12', '75C', 25],
    ['10', '60C', 30],
    ['10', '75C', 35],
    ['8', '60C', 40],
    ['8', '75C', 50],
    ['6', '60C', 55],
    ['6', '75C', 65],
    ['3', '75C', 100],
    ['4/0', '60C', 195],
    ['4/0', '75C', 230],
  ] as const)('%s AWG at %s: %d A', (size, terminal, amperes) => expect(valueOf(ampacity({ size, terminal }))).toBe(amperes));

  test.each([
    ['3', '60C'],
    ['4', '75C'],
    ['1/0', '60C'],
  ] as const)('%s AWG at %s is for the code itself', (size, terminal) => {
    expect(ampacity({ size, terminal })).toMatchObject({ ok: false, refusal: { code: 'ampacity-not-held', params: { size, terminal } } });
  });
});

// source: NEC Table 310.16, single values: what they bound between them · secondary · exact
test.each([
  ['6', '60C', 55, 55],
  ['4', '60C', 55, 195],
  ['4', '75C', 65, 100],
  ['2', '75C', 100, 230],
  ['1/0', '60C', 55, 195],
  ['3', '60C', 55, 195],
] as const)('%s AWG at %s carries %d to %d A', (size, terminal, least, most) =>
  expect(boundAmpacity(size, terminal)).toEqual({ least, most }),
);

// source: wrong tables that are common in public files · secondary · exact
describe('a table that a user enters', () => {
  test.each([
    ['an old edition at 60 °C, 14 AWG', { '14': { '60C': 20 } }],
    ['an old edition at 60 °C, 12 AWG', { '12': { '60C': 25 } }],
    ['2 AWG printed for 3 AWG', { '3': { '75C': 115 } }],
    ['breaker limits passed off as 75 °C', { '14': { '75C': 15 }, '12': { '75C': 20 }, '10': { '75C': 30 } }],
    ['thinner than a wire that carries more', { '4': { '60C': 50 } }],
    ['hotter and carries less', { '2': { '60C': 120, '75C': 115 } }],
    ['no number', { '4': { '60C': Number.NaN } }],
  ] as const)('is refused: %s', (_name, table) => expect(judgeAmpacityTable(table).pass).toBe(false));

  test('is taken when it agrees and grows', () => {
    expect(judgeAmpacityTable({ '14': { '60C': 15 }, '4': { '60C': 70 } })).toEqual({ pass: true });
    expect(judgeAmpacityTable({})).toEqual({ pass: true });
  });
});

// source: NEC 240.4(D) and 110.14(C), public files · secondary · exact; the exception for marked equipment from memory
describe('conductor for a breaker', () => {
  test('small wire: 14, 12 and 10 AWG on 15, 20 and 30 A', () => expect(SMALL_WIRE_BREAKERS).toEqual({ '14': 15, '12': 20, '10': 30 }));

  test.each([
    [100, false, '60C'],
    [110, false, '75C'],
    [60, true, '75C'],
  ] as const)('%d A, marked %s: %s', (amperes, marked, terminal) => expect(terminalOf(amperes, marked)).toBe(terminal));

  test.each([
    [15, '60C', '14'],
    [20, '75C', '12'],
    [30, '75C', '10'],
    [35, '75C', '8'],
    [40, '60C', '8'],
    [50, '60C', '6'],
  ] as const)('%d A at %s: %s AWG', (amperes, terminal, size) => expect(valueOf(chooseConductor(amperes, terminal))).toBe(size));

  test('where a size between is not held it asks for the code instead of a thick wire', () => {
    expect(chooseConductor(60, '60C')).toMatchObject({
      ok: false,
      refusal: { code: 'wire-not-held', params: { size: '4', terminal: '60C' } },
    });
    expect(valueOf(chooseConductor(60, '60C', { '4': { '60C': 70 } }))).toBe('4');
  });

  test.each([0, Number.NaN])('%s A is no breaker', (amperes) => expect(chooseConductor(amperes, '60C').ok).toBe(false));

  test('a wrong table is refused here too', () => expect(chooseConductor(15, '60C', { '14': { '60C': 20 } }).ok).toBe(false));
});

// source: NEC 210.19(A) and 215.2, informational notes, public files · secondary · exact
test.each([
  [BRANCH_DROP, 0.03, 'pass'],
  [BRANCH_DROP, 0.031, 'high'],
  [TOTAL_DROP, 0.05, 'pass'],
  [TOTAL_DROP, 0.051, 'high'],
] as const)('voltage drop %#', (limit, share, expected) => expect(judge(limit, share)).toBe(expected));

// memory: 12.9 × 1000 / circular mils at 75 °C; the constant from memory, areas read · memory · three figures
describe('ohm in 1000 ft', () => {
  test.each([
    ['14', 3.139],
    ['12', 1.975],
    ['10', 1.243],
    ['8', 0.781],
    ['6', 0.491],
    ['4', 0.309],
    ['3', 0.245],
    ['2', 0.194],
    ['1', 0.154],
    ['1/0', 0.122],
    ['4/0', 0.061],
  ] as const)('%s AWG: %d', (size, ohm) => expect(Math.abs(valueOf(wireResistance({ size })) * 304.8 - ohm)).toBeLessThan(0.0006));

  // memory: NEC Chapter 9, Table 8, unchecked · memory · 0.5 %
  test.each([
    ['6', 0.491],
    ['4', 0.308],
    ['4/0', 0.0608],
  ] as const)('%s AWG of the code: %d', (size, ohm) =>
    expect(Math.abs((valueOf(wireResistance({ size })) * 304.8) / ohm - 1)).toBeLessThan(0.005),
  );
});
