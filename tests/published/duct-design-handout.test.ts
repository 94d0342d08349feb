import { describe, test } from 'vitest';
import { STANDARD_DENSITY } from '../../src/topics/air';
import { airViscosity, fittingLoss } from '../../src/topics/duct';
import { fromSI, toSI } from '../../src/units';
import { ductLoss, type RunLoss } from '../support/ductLoss';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;
const FOOT = 0.3048;

/** One run of the handout with its fittings, at the roughness of the chart that it reads. */
function run(cfm: number, feet: number, inches: number, coefficients: number[]): RunLoss {
  const loss = ductLoss({
    airflowM3s: toSI(cfm, 'cfm'),
    densityKgM3: STANDARD_DENSITY,
    viscosityPas: valueOf(airViscosity({ temperatureC: toSI(70, 'F') })),
    method: 'colebrook',
    sections: [{ shape: { kind: 'round', diameterM: inches * INCH }, lengthM: feet * FOOT, roughnessM: 0.0005 * FOOT, coefficients }],
  });
  return valueOf(loss);
}

const main = run(400, 50, 10, [0.85]);
const through = run(280, 50, 9, []);
const branch = run(120, 40, 6, [0.37, 0.37]);
const upstreamPa = main.sections[0]?.velocityPressurePa ?? Number.NaN;
const takeOff = valueOf(fittingLoss({ coefficient: 0.48, velocityPressurePa: upstreamPa }));
const inches = (pascals: number) => fromSI(pascals, 'inH2O');

describe('a complete branch system', () => {
  // source: Course handout on duct design, velocities · read · 0.1 %
  test.each([
    ['1-a', main, 733.385],
    ['a-2', through, 633.79],
    ['a-3', branch, 611.154],
  ])('%s', (_name, { sections }, printed) => expectNear(fromSI(sections[0]?.velocityMs ?? 0, 'fpm'), printed, '0.1 %'));

  // source: Course handout on duct design, straight duct off a chart · read · 8 %
  test.each([
    ['1-a', main, 0.045],
    ['a-2', through, 0.04],
    ['a-3', branch, 0.048],
  ])('straight %s', (_name, { straightPa }, printed) => expectNear(inches(straightPa), printed, '8 %'));

  // source: Course handout on duct design, fittings with VP = (V/4000)² · read · 3 %
  test.each([
    ['plenum', main.fittingsPa, 0.0285],
    ['take-off, on the velocity before it', takeOff, 0.0161],
    ['one elbow of two', branch.fittingsPa / 2, 0.0086],
  ])('%s', (_name, pascals, printed) => expectNear(inches(pascals), printed, '3 %'));

  // The handout adds 0.002 in. wg for the air that goes straight on.
  const throughLoss = toSI(0.002, 'inH2O');

  // source: Course handout on duct design, sums · read · 3 %, straight on 8 % off the chart
  test.each([
    ['1-a', main.totalPa, 0.0735, '3 %'],
    ['a-2', through.totalPa + throughLoss, 0.042, '8 %'],
    ['a-3', branch.totalPa + takeOff, 0.0813, '3 %'],
    ['1 to 2', main.totalPa + through.totalPa + throughLoss, 0.1155, '3 %'],
    ['1 to 3', main.totalPa + branch.totalPa + takeOff, 0.1548, '3 %'],
  ] as const)('total %s', (_name, pascals, printed, tolerance) => expectNear(inches(pascals), printed, tolerance));

  // source: Course handout on duct design, 1 to 3 in pascals · read · 3 %
  test('38.54 Pa', () => expectNear(main.totalPa + branch.totalPa + takeOff, 38.54, '3 %'));
});
