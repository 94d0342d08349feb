import { test } from 'vitest';
import { bendFactor, mitredBend, rectangularBend, rectangularMitre, roundedBend, segmentedBend } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';

// Single check values only; the editions' tables are not reproduced.

const smooth = { frictionFactor: 0.015, length: 'without-length', radiusRatio: 1.5 } as const;

// source: ASHRAE Handbook 2009 Fundamentals, ch. 21, CD3-1 and CD3-3, as restated in a public copy · secondary · 0.06
test.each([
  ['90°, 150 mm', roundedBend({ ...smooth, angleDeg: 90 }), 0.14],
  ['90°, 200 to 250 mm', roundedBend({ ...smooth, angleDeg: 90 }), 0.11],
  ['45°, 180 mm and more', roundedBend({ ...smooth, angleDeg: 45 }), 0.07],
])('die-stamped, %s', (_name, computed, printed) => expectNear(computed, printed, 0.06));

// source: ASHRAE Handbook 2009 Fundamentals, ch. 21, CD3-9 at 150 mm and CD3-12, as restated in a public copy · secondary · 0.05
test.each([
  ['5', 0.28],
  ['3', 0.34],
] as const)('%s gores, r/D 1.5', (pieces, printed) => expectNear(segmentedBend({ pieces, angleDeg: 90 }), printed, 0.05));

// source: ASHRAE Handbook 2005 Fundamentals, p. 35.52, CR3-1, as restated in a public copy · secondary · exact
test.each([
  [1.5, 0.25, 0.22],
  [1.5, 1, 0.17],
  [1.5, 2, 0.14],
  [0.5, 1, 1.18],
  [0.5, 2, 1],
  [2, 1, 0.15],
])('rectangular, r/W %d, H/W %d', (radiusRatio, heightRatio, printed) =>
  expectNear(rectangularBend({ radiusRatio, heightRatio, angleDeg: 90 }), printed, 1e-12),
);

// source: ASHRAE Handbook 2005 Fundamentals, p. 35.52, CR3-1 angle factors, as restated in a public copy · secondary · exact
test.each([
  [30, 0.45],
  [45, 0.6],
  [60, 0.78],
  [90, 1],
  [180, 1.4],
])('factor of %d°', (angleDeg, printed) => expectNear(bendFactor({ angleDeg, rule: 'k-table' }), printed, 1e-12));

// source: ASHRAE 1989 Fundamentals, mitred rectangular bend, as reprinted in a textbook companion · secondary · exact
test.each([
  [0.25, 1.3],
  [0.5, 1.3],
  [0.75, 1.2],
  [1, 1.2],
  [8, 0.83],
])('rectangular mitre, H/W %d', (heightRatio, printed) => expectNear(rectangularMitre({ heightRatio }), printed, 1e-12));

// source: the same, beside the formula of a mitre · secondary · 0.01
test('a square mitre', () => expectNear(mitredBend({ angleDeg: 90 }), 1.2, 0.01));
