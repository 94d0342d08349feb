import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingsOf } from '../../src/figures';
import { rule } from '../../src/figures/rules/duct-wall-temperature';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';
import { runOf } from '../support/roomPlan';
import { runPlan } from '../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;
const F = (fahrenheit: number) => toSI(fahrenheit, 'F');
const attic = (insulation: number | null, change: (plan: Plan) => void = () => {}) =>
  runPlan(UP, { exhaustC: F(110), exhaustHumidity: 0.8, insulation }, (plan) => {
    plan.air.ductAirC = F(40);
    change(plan);
  });

/** Film of 0.2 h·ft²·°F/Btu in m²·K/W (A-K9, from memory). */
const FILM = 0.2 * 0.1761102;

describeFigure(rule, [
  // Resistances in a row (A-K6, computed): bare wall 94.09 °F.
  { name: 'bare', plan: attic(0), expect: [{ subjects, value: F(94.09), within: 0.006, notes: 'memory' }] },
  {
    // 12 in duct under 1.5 in: 34.62 W/m by the ht library (A-K13, computed), through the film inside.
    name: '12 in under an inch and a half',
    plan: attic(38.1, (plan) => void (runOf(plan).diameter = 304.8)),
    expect: [{ subjects, value: F(110) - (34.62 * FILM) / (Math.PI * 0.3048), within: 0.001 }],
  },
  { name: 'insulation not known', plan: attic(null), expect: [{ subjects, value: null, asks: 'runs.0.duct.insulation' }] },
  {
    name: 'air around it not known',
    plan: attic(0, ({ air }) => void (air.ductAirC = null)),
    expect: [{ subjects, value: null, asks: 'air.ductAirC' }],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);

describe('the wall of a duct', () => {
  const wallOf = (plan: Plan) => readingsOf(deriveScene(plan), 'duct-wall-temperature')[0]?.value ?? Number.NaN;

  it('is warmer under more insulation and in warmer surroundings, and between both airs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 150 }), fc.integer({ min: -30, max: 30 }), (insulation, around) => {
        const at = (thickness: number, ductAirC: number) => wallOf(attic(thickness, ({ air }) => void (air.ductAirC = ductAirC)));
        const wall = at(insulation, around);
        expect(at(insulation + 5, around)).toBeGreaterThan(wall);
        expect(at(insulation, around + 2)).toBeGreaterThan(wall);
        expect(wall > around && wall < F(110)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
});
