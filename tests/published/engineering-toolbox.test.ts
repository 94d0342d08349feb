import { describe, expect, test } from 'vitest';
import { pipeLoss, pipeSpeed } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const pipe = { flowM3S: toSI(200, 'gpm'), boreM: 3.048 * 0.0254, smoothness: 140 };
const feetOfWater = (lengthFt: number) => fromSI(valueOf(pipeLoss({ ...pipe, lengthM: lengthFt * 0.3048, form: 'head' })), 'ftH2O');

// source: Engineering ToolBox, Hazen-Williams for water, 200 gpm in 3.048 in, C 140 · read · 1 %
describe('Hazen-Williams, head form', () => {
  test.each([
    [100, 9, 9.007],
    [30, 2.7, 2.702],
  ])('%d ft: %d ft of water', (feet, printed, exact) => {
    expect(Math.abs(feetOfWater(feet) / printed - 1)).toBeLessThan(0.01);
    // regression: the same to four figures · computed · 0.02 %
    expect(Math.abs(feetOfWater(feet) / exact - 1)).toBeLessThan(2e-4);
  });

  // regression: speed in that pipe · computed · 0.01 ft/s
  test('8.79 ft/s', () => expect(fromSI(valueOf(pipeSpeed(pipe)), 'ft/s')).toBeCloseTo(8.79, 2));
});

// regression: the psi form in feet of water at 2.31 ft a psi · computed · 0.02 %
test('the psi form gives 8.875 ft, 1.5 % less', () => {
  const psi = fromSI(valueOf(pipeLoss({ ...pipe, lengthM: 30.48, form: 'psi' })), 'psi');
  expect(Math.abs((psi * 2.31) / 8.875 - 1)).toBeLessThan(2e-4);
});
