import { describe, test } from 'vitest';
import { scaleFanCurve } from '../../src/topics/duct';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';

/** A fan at another speed, in the units of the print. */
function change(cfm: number, inches: number, speedRatio: number) {
  const [point] = scaleFanCurve([{ airflowM3s: toSI(cfm, 'cfm'), pressurePa: toSI(inches, 'inH2O') }], { speedRatio, densityRatio: 1 });
  return { cfm: fromSI(point?.airflowM3s ?? 0, 'cfm'), inches: fromSI(point?.pressurePa ?? 0, 'inH2O') };
}

describe('fan laws', () => {
  const slower = change(6000, 4, 1500 / 2000);

  // source: Course homework 6 on fans, 2000 to 1500 rpm · read · 0.01
  test.each([
    ['cfm', slower.cfm, 4500],
    ['in. wg', slower.inches, 2.25],
  ])('slower: %s', (_name, computed, printed) => expectNear(computed, printed, 0.01));

  const faster = change(2000, 3, 1500 / 1300);

  // source: Course homework 6 on fans, 1300 to 1500 · read · half of the last figure
  test.each([
    ['cfm', faster.cfm, 2308, 0.5],
    ['in. wg', faster.inches, 3.99, 0.005],
  ])('faster: %s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));
});
