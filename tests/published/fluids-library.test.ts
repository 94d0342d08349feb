import { describe, expect, test } from 'vitest';
import {
  altshulTsal,
  churchill,
  colebrook,
  DUCT_ENTRIES,
  frictionLoss,
  haaland,
  laminar,
  mitredBend,
  type RoundedBendInputs,
  reynolds,
  roundedBend,
  swameeJain,
  weatherCap,
} from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// Open library `fluids` (MIT), what its tests and docstrings assert.

const flow = { reynolds: 1e5, relativeRoughness: 1e-4 };

describe('friction factors', () => {
  // source: fluids library, test_friction.py · read · 1e-9
  test.each([
    ['Colebrook', colebrook(flow), 0.018513866077471],
    ['Haaland', haaland(flow), 0.018265053014793857],
    ['Altshul and Tsal', altshulTsal(flow), 0.018382997825686878],
    ['Altshul and Tsal below 0.018', altshulTsal({ ...flow, reynolds: 1e8 }), 0.012165854627780102],
    ['Churchill', churchill(flow), 0.018462624566280075],
    ['Colebrook, smooth', colebrook({ reynolds: 1e5, relativeRoughness: 0 }), 0.01798977308427384],
    ['laminar', laminar({ reynolds: 128 }), 0.5],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, 1e-9 * printed));

  // source: fluids library, test_friction.py; its constant 6.97^0.9 is 5.74 rounded · read · 2e-6
  test.each([['Swamee and Jain', swameeJain(flow), 0.018452424431901808]])('%s', (_name, computed, printed) =>
    expectNear(computed, printed, 2e-6 * printed),
  );
});

describe('flow in a pipe', () => {
  // source: fluids library, core.py docstring · read · 1e-9
  test.each([
    ['Reynolds number', reynolds({ velocityMs: 2.5, diameterM: 0.25, densityKgM3: 1.1613, viscosityPas: 1.9e-5 }), 38200.65789473684],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, 1e-9 * printed));

  // source: fluids library, test_one_phase_dP: 10 kg/s, smooth, D 0.1 m, L 1 m · read · 1e-6
  test('pressure drop of 63.434 Pa', () => {
    const pipe = { velocityMs: 0.01 / ((Math.PI / 4) * 0.1 ** 2), diameterM: 0.1, densityKgM3: 1000 };
    const number = valueOf(reynolds({ ...pipe, viscosityPas: 1e-5 }));
    const frictionFactor = valueOf(colebrook({ reynolds: number, relativeRoughness: 0 }));
    expectNear(frictionLoss({ ...pipe, frictionFactor, lengthM: 1 }), 63.43447321097365, 63.4e-6);
  });
});

describe('bends', () => {
  // source: fluids library, test_fittings.py, mitred bends after Rennels and Hudson · read · 1e-8
  test.each([
    [150, 2.71281477],
    [120, 2.02649944],
    [90, 1.20208153],
    [75, 0.83321884],
    [60, 0.53],
    [45, 0.30419633],
    [30, 0.15308823],
    [15, 0.06051389],
  ])('a mitre of %d° has K %d', (angleDeg, printed) => expectNear(mitredBend({ angleDeg }), printed, 1e-8));

  const bend: Omit<RoundedBendInputs, 'angleDeg'> = { radiusRatio: 20 / 4.02, frictionFactor: 0.0163, length: 'with-length' };

  // source: fluids library, test_fittings.py, rounded bends of diameter 4.020, radius 20.0, f 0.0163 · read · 1e-9
  test.each([
    [15, 0.0703821263],
    [30, 0.1068019634],
    [45, 0.1385820497],
    [60, 0.1697719137],
    [75, 0.2011494156],
    [90, 0.2324838287],
  ])('a bend of %d° has K %d', (angleDeg, printed) => expectNear(roundedBend({ ...bend, angleDeg }), printed, 1e-9));

  // source: fluids library, test_fittings.py, radius of five diameters · read · 1e-12
  test('five diameters', () => expectNear(roundedBend({ ...bend, radiusRatio: 5, angleDeg: 30 }), 0.106920213333191, 1e-12));
});

describe('entries and exits', () => {
  // source: fluids library, test_entrance_sharp and exit_normal · read · exact
  test.each([
    ['flush and sharp', DUCT_ENTRIES['flush-sharp'].coefficient, 0.5],
    ['flush and sharp after Rennels', DUCT_ENTRIES['flush-sharp-stricter'].coefficient, 0.57],
    ['exit', weatherCap({ cap: 'none' }), 1],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, 0));
});

// The explicit forms stand beside the iterated one: Haaland within about 2 %.
test('the explicit forms agree with Colebrook', () => {
  for (const form of [haaland, swameeJain, churchill]) {
    expect(Math.abs(valueOf(form(flow)) / valueOf(colebrook(flow)) - 1)).toBeLessThan(0.02);
  }
});
