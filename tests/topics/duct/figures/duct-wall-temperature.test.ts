import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule as ductWallTemperatureFigure, rule } from '../../../../src/topics/duct/figures/duct-wall-temperature';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';
import { runPlan } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;
const F = (fahrenheit: number) => toSI(fahrenheit, 'F');
const attic = (insulation: number | null, change: (plan: Plan) => void = () => {}) =>
  runPlan(UP, { exhaustC: F(110), exhaustHumidity: 0.8, insulation }, (plan) => {
    plan.air.ductAirC = F(40);
    change(plan);
  });

/** Film of 0.2 h·ft²·°F/Btu in m²·K/W (from memory). */
const FILM = 0.2 * 0.1761102;

/** Up, then out through the wall behind the machine. */
const OUT = [
  [0, 0, 670],
  [0, -900, 20],
] as const;
const outside = (steps: Parameters<typeof runPlan>[0], change: (plan: Plan) => void = () => {}) =>
  runPlan(steps, { exhaustC: F(110), exhaustHumidity: 0.8, insulation: 0 }, (plan) => {
    plan.air.ductAirC = F(40);
    plan.air.outdoorC = F(40);
    change(plan);
  });

/** Wall in °F of the 7 in run with air of 110 °F in 40 °F, of resistances in h·ft²·°F/Btu: inside 0.2, so much insulation, outside so much. */
function wallBy(thickness: number, conductivity: number, outsideR: number): number {
  const [inner, outer] = [0.1778, 0.1778 + (2 * thickness) / 1000];
  const film = 0.2 / inner;
  const shell = Math.log(outer / inner) / (2 * conductivity) / 0.1761102;
  return 110 - (70 * film) / (film + shell + outsideR / outer);
}

describeFigure(rule, [
  // Resistances in a row (computed): bare wall 94.09 °F.
  {
    name: 'bare',
    plan: attic(0),
    expect: [{ part: 'indoors', subjects, value: F(94.09), within: 0.006, notes: /^The usual films .* memory\.$/ }],
  },
  {
    // 12 in duct under 1.5 in: 34.62 W/m by the ht library (computed), through the film inside.
    name: '12 in under an inch and a half',
    plan: attic(38.1, (plan) => void (runOf(plan).diameter = 304.8)),
    expect: [{ part: 'indoors', subjects, value: F(110) - (34.62 * FILM) / (Math.PI * 0.3048), within: 0.001 }],
  },
  { name: 'insulation not known', plan: attic(null), expect: [{ subjects, value: null, asks: 'runs.0.duct.insulation' }] },
  {
    name: 'air around it not known',
    plan: attic(0, ({ air }) => void (air.ductAirC = null)),
    expect: [{ part: 'indoors', subjects, value: null, asks: 'air.ductAirC' }],
  },
  // k of foam 0.05, of cellular glass 0.048 (read); resistances about a cylinder by hand.
  {
    name: 'an inch of cellular glass',
    plan: attic(25.4, (plan) => void (runOf(plan).duct.insulationKind = 'cellular-glass')),
    expect: [{ part: 'indoors', subjects, value: F(wallBy(25.4, 0.048, 0.68)), within: 0.001 }],
  },
  {
    name: 'a kind that is not known counts as foam, which keeps least',
    plan: attic(25.4, (plan) => void (runOf(plan).duct.insulationKind = null)),
    expect: [
      {
        part: 'indoors',
        subjects,
        value: F(wallBy(25.4, 0.05, 0.68)),
        within: 0.001,
        notes: /flexible elastomeric foam, which keeps least/,
      },
    ],
  },
  {
    name: 'bare, the kind of what is not there does not matter',
    plan: attic(0, (plan) => void (runOf(plan).duct.insulationKind = null)),
    expect: [{ part: 'indoors', subjects, value: F(94.09), within: 0.006, notes: /^The usual films/ }],
  },
  {
    // With wind the film is 0.17 (from memory): 110 − 70 × 0.2 / 0.37 = 72.16 °F.
    name: 'out through the wall',
    plan: outside(OUT),
    expect: [
      { part: 'indoors', subjects, value: F(94.09), within: 0.006 },
      { part: 'outdoors', subjects, value: F(110 - (70 * 0.2) / 0.37), within: 0.001, notes: /wind of 15 mph.*It governs/ },
    ],
  },
  {
    name: 'warmer outside than in the attic: the part indoors governs',
    plan: outside(OUT, ({ air }) => void (air.outdoorC = F(100))),
    expect: [
      { part: 'indoors', subjects, value: F(94.09), within: 0.006, notes: /It governs/ },
      { part: 'outdoors', subjects, value: F(110 - (10 * 0.2) / 0.37), within: 0.001 },
    ],
  },
  {
    name: 'it ends within the wall',
    plan: outside([
      [0, 0, 670],
      [0, -388.5, 20],
    ]),
    expect: [{ part: 'indoors', subjects, value: F(94.09), within: 0.006 }],
  },
  {
    name: 'out through the roof',
    plan: outside(UP, (plan) => void (runOf(plan).outlet = 'roof')),
    expect: [
      { part: 'indoors', subjects, value: F(94.09), within: 0.006 },
      { part: 'outdoors', subjects, value: F(110 - (70 * 0.2) / 0.37), within: 0.001 },
    ],
  },
  {
    name: 'an outlet level with the roof',
    plan: outside(UP, (plan) => {
      runOf(plan).outlet = 'roof';
      runOf(plan).duct.aboveRoof = 0;
    }),
    expect: [{ part: 'indoors', subjects, value: F(94.09), within: 0.006 }],
  },
  {
    name: 'how cold it is outside is not known',
    plan: outside(OUT, ({ air }) => void (air.outdoorC = null)),
    expect: [
      { part: 'indoors', subjects, value: F(94.09), within: 0.006 },
      { part: 'outdoors', subjects, value: null, asks: 'air.outdoorC' },
    ],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);

describe('the wall of a duct', () => {
  const wallOf = (plan: Plan) => readFigure(ductWallTemperatureFigure, deriveScene(plan))[0]?.value ?? Number.NaN;

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
