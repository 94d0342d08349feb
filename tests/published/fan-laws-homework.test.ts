import { describe, test } from 'vitest';
import { fanAirflow, fanPowerAtSpeed, fanPressure, fanShaftPower } from '../../src/engineering';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

/** A fan at another speed, in the units of the print. */
function change(cfm: number, inches: number, watts: number, speedRatio: number) {
  return {
    cfm: fromSI(valueOf(fanAirflow({ airflowM3s: toSI(cfm, 'cfm'), speedRatio })), 'cfm'),
    inches: fromSI(valueOf(fanPressure({ pressurePa: toSI(inches, 'inH2O'), speedRatio, densityRatio: 1 })), 'inH2O'),
    watts: valueOf(fanPowerAtSpeed({ powerW: watts, speedRatio, densityRatio: 1 })),
  };
}

describe('fan laws', () => {
  const slower = change(6000, 4, toSI(6, 'hp'), 1500 / 2000);

  // source: A-N1, A-N2 · Course homework 6 on fans, 2000 to 1500 rpm · read · 0.01
  test.each([
    ['cfm', slower.cfm, 4500],
    ['in. wg', slower.inches, 2.25],
    ['hp', fromSI(slower.watts, 'hp'), 2.53],
  ])('slower: %s', (_name, computed, printed) => expectNear(computed, printed, 0.01));

  const faster = change(2000, 3, 1000, 1500 / 1300);

  // source: A-N3 · Course homework 6 on fans, 1300 to 1500 · read · half of the last figure
  test.each([
    ['cfm', faster.cfm, 2308, 0.5],
    ['in. wg', faster.inches, 3.99, 0.005],
    ['kW', faster.watts / 1000, 1.54, 0.005],
  ])('faster: %s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));

  // regression: A-N3 · efficiency of fan and motor, 0.704 to 0.705 · computed · 0.3 %
  test('power of the first state', () => {
    const point = { airflowM3s: toSI(2000, 'cfm'), pressurePa: toSI(3, 'inH2O'), efficiency: 0.7045 };
    expectNear(fanShaftPower(point), 1000, '0.3 %');
  });
});

// memory: A-N6 · fan power by the constant 6356, 33,000 over 5.192 · memory · 0.3 %
test('6356 cfm at 1 in. wg take one horsepower', () => {
  const point = { airflowM3s: toSI(6356, 'cfm'), pressurePa: toSI(1, 'inH2O'), efficiency: 1 };
  expectNear(fromSI(valueOf(fanShaftPower(point)), 'hp'), 1, '0.3 %');
});
