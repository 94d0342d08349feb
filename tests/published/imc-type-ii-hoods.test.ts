import { describe, expect, test } from 'vitest';
import { needsHood } from '../../src/catalog';
import { judge, type Limit } from '../../src/rules';
import { makeUpAir } from '../../src/topics/air';
import { OUTLET_GRADE, OUTLET_INTAKE, OUTLET_OPENING, OUTLET_PROPERTY, OUTLET_ROOF, OUTLET_WALL } from '../../src/topics/duct';
import { exhaustByLength, NONCANOPY_HEIGHT, NONCANOPY_SETBACK, netExhaust, waivedHoodExhaust } from '../../src/topics/hood';
import { RULES } from '../../src/topics/registry';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// The code's own text is held only as others restate it.

const BOX = { x: 0, y: 0, width: 500, depth: 300, zFrom: 1500, zTo: 1900 };
const RECOVERY = { kind: 'recovery', recovered: null, sensible: null, latent: null, box: BOX } as const;
const FOOT = 0.3048;
const INCH = 0.0254;
const cfm = (outcome: Parameters<typeof valueOf<number>>[0]) => fromSI(valueOf(outcome), 'cfm');

describe('where a hood is needed', () => {
  // source: IMC 507.3 and 507.1 exceptions: dishwashers, but electric ones listed to UL 921 with condensing of their own · secondary · exact
  test.each([
    ['gives its vapour to the room', { kind: 'hood' }, true],
    ['listed as condensing', { ...RECOVERY, listedCondensing: true }, false],
    ['not listed', { ...RECOVERY, listedCondensing: false }, true],
    ['its listing not known', { ...RECOVERY, listedCondensing: null }, null],
  ] as const)('%s', (_, vent, isNeeded) => expect(needsHood({ vent })).toBe(isNeeded));
});

describe('exhaust over a dishwasher', () => {
  // source: IMC 507.3.4.2 (507.5.5 in 2015-2021), 100 cfm to a foot of hood, as restated in a code summary · secondary · exact
  test.each([
    [1, 100],
    [4, 400],
    [7.5, 750],
  ])('%d ft: %d cfm', (feet, printed) => expectNear(cfm(exhaustByLength({ lengthM: feet * FOOT })), printed, 1e-9));

  // memory: IMC 507.5.5, 155 L/s to a metre, three figures · memory · 0.2 %
  test('155 L/s to a metre', () => expectNear(fromSI(valueOf(exhaustByLength({ lengthM: 1 })), 'L/s'), 155, '0.2 %'));

  // source: IMC 507.3.4, net exhaust is the total less what is supplied into the cavity, as restated in a code summary · secondary · exact
  test('400 less 40 cfm', () => {
    expectNear(cfm(netExhaust({ totalM3s: toSI(400, 'cfm'), intoCavityM3s: toSI(40, 'cfm') })), 360, 1e-9);
  });
});

describe('a hood waived', () => {
  // source: IMC 507.3 and 507.1, 0.70 cfm/ft² and at least 100 ft² an appliance, as restated · secondary · exact
  test.each([
    [80, 1, 70],
    [100, 1, 70],
    [150, 2, 140],
    [300, 2, 210],
  ])('%d ft², %d appliances: %d cfm', (feet, appliances, printed) => {
    expectNear(cfm(waivedHoodExhaust({ floorM2: toSI(feet, 'ft2'), appliances })), printed, 1e-9);
  });

  // source: IMC 507.3, the printed 0.00033 m³/s stands to a square foot: 0.0036 to a square metre · secondary · two figures
  test('0.0036 m³/s to a square metre', () => expectNear(waivedHoodExhaust({ floorM2: 1, appliances: 0 }), 0.0036, 0.00005));
});

describe('where the outlet may be', () => {
  // source: IMC 506.4.2, termination of Type II exhaust, as restated in a code summary · secondary · exact
  test.each([
    ['an opening', OUTLET_OPENING, 3 * FOOT],
    ['the property line, or another building on the lot', OUTLET_PROPERTY, 10 * FOOT],
    ['an intake', OUTLET_INTAKE, 10 * FOOT],
    ['the ground', OUTLET_GRADE, 10 * FOOT],
    ['the roof', OUTLET_ROOF, 30 * INCH],
    ['a wall', OUTLET_WALL, 30 * INCH],
  ])('from %s', (_name, limit, metres) => expectEdge(limit, metres, 'low'));
});

// source: IMC 2018 (Maryland), 507.4.2, hood without a canopy, as restated · secondary · exact
test.each([
  ['3 ft above the surface', NONCANOPY_HEIGHT, 3 * FOOT],
  ['1 ft behind the edge', NONCANOPY_SETBACK, FOOT],
])('%s', (_name, limit, metres) => expectEdge(limit, metres, 'high'));

// source: IMC 507.3.1, sheet of a Type II hood, as restated in a code summary · secondary · exact
test.each(['0.0296 in (22 gauge)', '0.0220 in (24 gauge)'])('sheet of %s', (sheet) =>
  expect(RULES.find(({ id }) => id === 'hood-seams')?.rule).toContain(sheet),
);

// source: IMC 2006, 508.1, make-up air approximately equal to the exhaust, as quoted · secondary · exact
test('make-up of 400 cfm', () => expectNear(cfm(makeUpAir({ exhaustM3s: toSI(400, 'cfm'), deficitShare: 0 })), 400, 1e-9));

// source: Plan reviewers on the make-up deficit, up to about 20 %, an opinion · secondary · exact
test('a deficit of 20 % stands, one of more is refused', () => {
  expectNear(cfm(makeUpAir({ exhaustM3s: toSI(400, 'cfm'), deficitShare: 0.2 })), 320, 1e-9);
  expect(makeUpAir({ exhaustM3s: 1, deficitShare: 0.21 }).ok).toBe(false);
});

/** The bound itself passes, a millimetre beyond it does not. */
function expectEdge(limit: Limit, metres: number, beyond: 'low' | 'high'): void {
  expect(judge(limit, metres)).toBe('pass');
  expect(judge(limit, metres + (beyond === 'low' ? -0.001 : 0.001))).toBe(beyond);
}
