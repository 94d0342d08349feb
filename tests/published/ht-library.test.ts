import { describe, test } from 'vitest';
import { cylinderHeat, cylinderSurfaces, INSULATIONS, shellResistance } from '../../src/engineering';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// Open library `ht` (MIT).

const pipe = {
  insideC: 453.15 - 273.15,
  outsideC: 301.15 - 273.15,
  insideFilmWm2K: 1e12,
  outsideFilmWm2K: 22.697193,
  innerDiameterM: 0.0779272,
  thicknessesM: [0.0054864, 0.05],
  conductivitiesWmK: [56.045, 0.0598535265],
};
const surfaces = valueOf(cylinderSurfaces(pipe)).map((celsius) => celsius + 273.15);

describe('a pipe in its insulation', () => {
  // source: A-K10 · ht library, cylindrical_heat_transfer docstring · read · the figures printed
  test.each([
    ['heat', cylinderHeat(pipe), 73.12000884, 1e-7],
    ['UA', valueOf(cylinderHeat(pipe)) / 152, 0.48105269, 1e-8],
    ['inner surface', surfaces[0] ?? 0, 453.15, 1e-6],
    ['under the insulation', surfaces[1] ?? 0, 453.12265, 1e-5],
    ['outer surface', surfaces[2] ?? 0, 306.57853, 1e-5],
  ])('%s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));

  // source: A-K11 · ht library, R_cylinder docstring, 10 m of shell · read · 1e-12
  test('shell', () => {
    const shell = { innerDiameterM: 0.9, outerDiameterM: 1, conductivityWmK: 20 };
    expectNear(valueOf(shellResistance(shell)) / 10, 8.38432343682705e-5, 1e-16);
  });
});

// source: A-K12 · ht library, insulation.py, conductivities · read · exact
test.each([
  ['mineral-fiber', 0.036],
  ['glass-fiber-board', 0.036],
  ['cellular-glass', 0.048],
  ['elastomeric-foam', 0.05],
])('%s: %d W/(m·K)', (id, printed) => expectNear(INSULATIONS.find((one) => one.id === id)?.conductivityWmK ?? 0, printed, 0));
