import { describe, test } from 'vitest';
import { colebrook, frictionLoss, reynolds } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const AIRFLOW = 0.35;
const DENSITY = 1.145;
const air = { densityKgM3: DENSITY, viscosityPas: 1.655e-5 * DENSITY };

/** What a smooth duct of 150 m does at a diameter. */
function measure(diameterM: number) {
  const velocityMs = AIRFLOW / ((Math.PI / 4) * diameterM ** 2);
  const number = valueOf(reynolds({ velocityMs, diameterM, ...air }));
  const factor = valueOf(colebrook({ reynolds: number, relativeRoughness: 0 }));
  const loss = valueOf(frictionLoss({ frictionFactor: factor, lengthM: 150, diameterM, densityKgM3: DENSITY, velocityMs }));
  return { velocityMs, number, factor, headM: loss / (DENSITY * 9.80665) };
}

/** The diameter whose loss is 20 m of air, by halving. */
function solve(): number {
  let [narrow, wide] = [0.1, 0.5];
  for (let i = 0; i < 60; i += 1) {
    const middle = (narrow + wide) / 2;
    if (measure(middle).headM > 20) narrow = middle;
    else wide = middle;
  }
  return wide;
}

describe('heated air, 0.35 m³/s through 150 m of smooth duct with a head loss of 20 m', () => {
  const diameter = solve();
  const { factor, velocityMs, number } = measure(diameter);

  // The viscosity of air at 35 °C is from memory.
  // source: Fluid-mechanics textbook, ch. 8, p. 345, reprint · read · D 0.002 m, f 0.0002, V 1 %, Re 1 %
  test.each([
    ['D', diameter, 0.267, 0.002],
    ['f', factor, 0.018, 0.0002],
    ['V', velocityMs, 6.24, 0.06],
    ['Re', number, 100_800, 1000],
  ])('%s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));
});
