import { describe, expect, test } from 'vitest';
import { PIPE_SMOOTHNESS, pipeLoss, pipeSpeed, pressureLeft } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: a calculator page: v = 0.4085 q / d² · secondary · 0.02 %
test.each([
  [1, 1, 0.4085],
  [10, 0.5, 16.34],
])('%d gpm in %d in: %d ft/s', (gpm, bore, expected) => {
  const speed = fromSI(valueOf(pipeSpeed({ flowM3S: toSI(gpm, 'gpm'), boreM: bore * INCH })), 'ft/s');
  expect(Math.abs(speed / expected - 1)).toBeLessThan(2e-4);
});

// source: a calculator page: C 150 copper and plastic, 140 new steel, 120 old · secondary · exact
test.each([
  ['copper', 150],
  ['plastic', 150],
  ['new-steel', 140],
  ['old-steel', 120],
] as const)('C of %s: %d', (material, expected) => expect(PIPE_SMOOTHNESS[material]).toBe(expected));

// source: a reference page: 1 psi is 2.31 ft of water · secondary · 0.1 %
test('11.55 ft of height take 5 psi', () => {
  const left = valueOf(pressureLeft({ supplyPa: toSI(30, 'psi'), lossPa: 0, riseM: 11.55 * 0.3048 }));
  expect(Math.abs(fromSI(left, 'psi') - 25)).toBeLessThan(0.01);
});

// regression: p = 4.52 q^1.85 / (C^1.85 d^4.87), psi in 100 ft, C 150, 140, 130 · computed · 0.1 %, 0.01 ft/s
describe('copper of type L', () => {
  test.each([
    ['row 1', 5, 0.545, [16.08, 18.27, 20.95], 6.88],
    ['row 2', 8, 0.785, [6.49, 7.37, 8.45], 5.3],
    ['row 3', 10, 0.785, [9.8, 11.14, 12.77], 6.63],
    ['row 4', 10, 1.025, [2.67, 3.04, 3.48], 3.89],
    ['row 5', 20, 1.025, [9.64, 10.95, 12.56], 7.78],
  ])('%s: %d gpm in %d in', (_row, gpm, bore, expected, speed) => {
    const pipe = { flowM3S: toSI(gpm, 'gpm'), boreM: bore * INCH };
    [150, 140, 130].forEach((smoothness, i) => {
      const loss = valueOf(pipeLoss({ ...pipe, smoothness, lengthM: 30.48, form: 'psi' }));
      expect(Math.abs(fromSI(loss, 'psi') - (expected[i] ?? Number.NaN))).toBeLessThan(0.011);
    });
    expect(Math.abs(fromSI(valueOf(pipeSpeed(pipe)), 'ft/s') - speed)).toBeLessThan(0.01);
  });
});
