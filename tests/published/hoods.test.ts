import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/plan';
import { type Finding, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { check as height } from '../../src/topics/hood/checks/hood-height';
import { check as overhang } from '../../src/topics/hood/checks/hood-overhang';
import { check as needed } from '../../src/topics/hood/checks/hood-where-needed';
import { linePlan, ownDataSheet } from '../support/linePlan';

const INCH = 25.4;

/** A machine of 26 × 26 in far from every wall, under a square hood about it. */
function island(hoodInches: number, lipHeight: number): Plan {
  const size = 26 * INCH;
  const sheet = ownDataSheet({ width: size, depth: size, rackLine: { left: size / 2, right: size / 2, front: size / 2 } });
  return linePlan({ family: sheet, at: { x: 0, y: 0 } }, (plan) => {
    const half = 5000;
    const corners = [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ] as const;
    plan.room.outline = corners.map(([x, y], i) => ({ id: `wall-${i}`, x, y }));
    plan.room.openings = [];
    plan.tables = [];
    plan.things = [];
    plan.hoods = [
      {
        id: 'hood',
        x: 0,
        y: 0,
        rotationDeg: 0,
        width: hoodInches * INCH,
        depth: hoodInches * INCH,
        lipHeight,
        height: 600,
        exhaust: null,
        cavityAir: null,
      },
    ];
  });
}

const verdicts = (findings: readonly Finding[]) => findings.map(({ part, verdict }) => `${part} ${verdict}`);

// source: IMC 507.1.6 (507.4.1 in 2015-2021), canopy size, as restated in a code summary · secondary · exact
describe('inside lower edge at least 6 in beyond the appliance on all open sides', () => {
  // source: arithmetic: a machine of 26 in square, four open sides, needs a hood of 38 in · secondary · exact
  test('26 in of machine need 38 in of hood', () => {
    expect(verdicts(runChecks(deriveScene(island(38, 2050)), [overhang]))).toEqual([
      'left clear',
      'right clear',
      'front clear',
      'back clear',
    ]);
  });

  test.each([37.9, 32, 26, 20])('%s in are too few on every side', (inches) => {
    const findings = runChecks(deriveScene(island(inches, 2050)), [overhang]);
    expect(verdicts(findings)).toEqual(['left stop', 'right stop', 'front stop', 'back stop']);
    for (const finding of findings) expect(finding.measured).toBeCloseTo(((inches - 26) / 2) * INCH, 6);
  });

  test('the limit is 152.4 mm, and the finding says where it comes from', () => {
    const [finding] = runChecks(deriveScene(island(38, 2050)), [overhang]);
    expect(finding?.limit).toBeCloseTo(6 * INCH, 9);
    expect(finding?.source).toMatchObject({ kind: 'published', document: 'International Mechanical Code', confidence: 'secondary' });
  });
});

// source: IMC 2003 507.12, the same rule under 507.1.6: front lower lip at most 4 ft above the surface · secondary · exact
describe('lip at most 4 ft above the surface, taken as the deck at 34 in', () => {
  test.each([
    { inches: 48, verdict: 'clear' },
    { inches: 48.05, verdict: 'stop' },
    { inches: 54, verdict: 'stop' },
    { inches: 47, verdict: 'clear' },
  ])('$inches in above it: $verdict', ({ inches, verdict }) => {
    const [finding] = runChecks(deriveScene(island(38, (34 + inches) * INCH)), [height]);
    expect([finding?.part, finding?.verdict]).toEqual(['lip', verdict]);
    expect(finding?.measured).toBeCloseTo(inches * INCH, 6);
  });
});

// source: 29 CFR 1910.36(g)(1), a projection leaves 6 ft 8 in · secondary · exact
describe('a lip over the operator leaves 6 ft 8 in', () => {
  test.each([
    { inches: 80, verdict: 'clear' },
    { inches: 79.9, verdict: 'watch' },
  ])('$inches in: $verdict', ({ inches, verdict }) => {
    const plan = linePlan({}, (draft) => {
      for (const hood of draft.hoods) hood.lipHeight = inches * INCH;
    });
    expect(runChecks(deriveScene(plan), [height]).find(({ part }) => part === 'head')?.verdict).toBe(verdict);
  });
});

// source: IMC 507.3 (2015-2021), a Type II hood above dishwashers unless the load goes another way · secondary
describe('a Type II hood above a dishwasher', () => {
  const withoutHoods = (family: string) =>
    linePlan({ family }, (plan) => {
      plan.hoods = [];
    });

  test.each(['recirculating-hot-water', 'fresh-water-hot-water', 'chemical-sanitising', 'tall-door'])('%s needs one', (family) => {
    expect(runChecks(deriveScene(withoutHoods(family)), [needed])[0]?.verdict).toBe('stop');
  });

  // source: IMC 507.1 exceptions, self-contained condensing, separate removal system · secondary
  test.each(['heat-recovery', 'direct-vent'])('%s takes its vapour another way', (family) => {
    expect(runChecks(deriveScene(withoutHoods(family)), [needed])[0]?.verdict).toBe('clear');
  });
});
