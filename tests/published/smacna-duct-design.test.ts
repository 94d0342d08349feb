import { describe, test } from 'vitest';
import { STANDARD_DENSITY } from '../../src/topics/air';
import { airViscosity, mitredBend, reynolds, roundedBend, segmentedBend } from '../../src/topics/duct';
import { toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// Single check values only. The formulas of Rennels and Hudson stand where the tables do not: they are to agree within 0.04.

describe('bends of 90°', () => {
  const bend = { angleDeg: 90, frictionFactor: 0.015, length: 'without-length' } as const;

  // source: SMACNA HVAC Systems Duct Design, 4th ed., Table A-7A, as restated in a public copy · secondary · 0.04
  test.each([
    [0.5, 0.71],
    [1, 0.22],
    [1.5, 0.15],
  ])('smooth, r/D %d: %d', (radiusRatio, printed) => expectNear(roundedBend({ ...bend, radiusRatio }), printed, 0.04));

  // source: SMACNA HVAC Systems Duct Design, 4th ed., Table A-7B, as restated in a public copy · secondary · exact
  test.each([
    ['5', 0.24],
    ['4', 0.27],
    ['3', 0.34],
  ] as const)('%s pieces, r/D 1.5: %d', (pieces, printed) => expectNear(segmentedBend({ pieces, angleDeg: 90 }), printed, 0));
});

// source: SMACNA HVAC Systems Duct Design, 4th ed., Table A-7C, one mitre, as restated in a public copy · secondary · 0.04
test.each([
  [45, 0.34],
  [90, 1.2],
])('a mitre of %d°: %d', (angleDeg, printed) => expectNear(mitredBend({ angleDeg }), printed, 0.04));

const standard = { densityKgM3: STANDARD_DENSITY, viscosityPas: valueOf(airViscosity({ temperatureC: toSI(70, 'F') })) };

// source: SMACNA HVAC Systems Duct Design, 4th ed., Table 14-10 and Table A-7, Reynolds number of standard air · read · 1 %
test.each([
  ['8.56 D V, in and fpm', reynolds({ velocityMs: toSI(1000, 'fpm'), diameterM: 10 * 0.0254, ...standard }), 8.56 * 10 * 1000],
  ['66.4 D V, mm and m/s', reynolds({ velocityMs: 5, diameterM: 0.25, ...standard }), 66.4 * 250 * 5],
])('%s', (_name, computed, printed) => expectNear(computed, printed, '1 %'));
