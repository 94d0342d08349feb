import { describe, expect, test } from 'vitest';
import { heatUnitRate, heatUnits } from '../../src/topics/heat';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const steady = (f: number, seconds: number) => valueOf(heatUnits({ tempsC: [toSI(f, 'F'), toSI(f, 'F')], stepS: seconds }));

// source: “Sanitation History”, slides of 14 Dec 2009, after Fuchs 1951 · read · 0.5 HUE
test.each([
  [143, 1800],
  [161, 15],
])('%d °F for %d s: 1800 HUE', (f, seconds) => expect(Math.abs(steady(f, seconds) - 1800)).toBeLessThan(0.5));

// source: the same slides, at the cap of 165 °F · read · 0.5 %
test.each([
  [165, 30, 10_404],
  [180, 30, 10_404],
  [165, 120, 41_616],
])('%d °F for %d s: %d HUE', (f, seconds, printed) => expect(Math.abs(steady(f, seconds) / printed - 1)).toBeLessThan(0.005));

// regression: rate and time to 3600 HUE by the formula of the slides · computed · four figures, 0.5 %
describe('at temperatures that stand still', () => {
  test.each([
    [143, 1.0001, 3600],
    [150, 6.436, 559],
    [155, 24.33, 148],
    [160, 91.98, 39.1],
    [161, 120, 30],
    [163, 204.3, 17.6],
    [165, 347.7, 10.4],
  ])('%d °F: %d HUE/s, %d s to 3600', (f, rate, seconds) => {
    const found = heatUnitRate(toSI(f, 'F'));
    expect(Math.abs(found / rate - 1)).toBeLessThan(5e-4);
    expect(Math.abs(3600 / found / seconds - 1)).toBeLessThan(0.005);
  });
});
