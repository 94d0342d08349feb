import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule, rule as runLossFigure } from '../../../../src/topics/duct/figures/run-loss';
import { describeFigure, type FigureCase } from '../../../support/figureCases';
import { densityBy, lossBy, runPlan } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 10_000]] as const;
const TURNS = [
  [0, 0, 1000],
  [0, -2000, 0],
  [0, 0, 1000],
] as const;

const AREA = Math.PI * 0.0889 ** 2;
const VP = (densityBy(35, 0.7, 100) * (0.2 / AREA) ** 2) / 2;
/** Entry 0.57 (Rennels, read); open end 1.0 (read) and 0.25 of a cap (secondary). */
const [ENTRY, OPEN, CAPPED] = [0.57, 1, 1.25];
/** A low cone: 1.0 on top of the open end (secondary). */
const LOW_CONE = 2;
/** Mitred bend of 90°: 1.20208153 (read). */
const MITRED = 1.20208153;

const straight = (length: number) => lossBy({ airflow: 0.2, diameter: 0.1778, length, coefficients: 0 });
const parts = (length: number, bends: number, exit: number, notes = 'by its angle') => [
  { part: 'whole', subjects, value: straight(length) + (bends + ENTRY + exit) * VP, within: 0.05 },
  { part: 'straight', subjects, value: straight(length), within: 0.05 },
  { part: 'bends', subjects, value: bends * VP, within: 0.01, notes },
  { part: 'entry', subjects, value: ENTRY * VP, within: 0.01, notes: 'flush' },
  { part: 'exit', subjects, value: exit * VP, within: 0.01 },
];

/** One smooth bend by hand: (0.10 + 2.4 f) sin 45° + 6.6 f (√sin 45° + sin 45°) / (r/D)². */
const HALF = Math.SQRT1_2;
const roundedBy = (ratio: number, f: number) => (0.1 + 2.4 * f) * HALF + (6.6 * f * (Math.sqrt(HALF) + HALF)) / ratio ** 2;
const ROUNDED = roundedBy(1.5, 0.020_2);

describeFigure(rule, [
  { name: '10 m straight up, capped', plan: runPlan(UP), expect: parts(10, 0, CAPPED) },
  { name: '10 m straight up, open', plan: runPlan(UP, { cap: 'none' }), expect: parts(10, 0, OPEN) },
  { name: '10 m straight up under a low cone', plan: runPlan(UP, { cap: 'low-cone' }), expect: parts(10, 0, LOW_CONE) },
  { name: '10 m straight up asks for no radius', plan: runPlan(UP, { bendRadius: null }), expect: parts(10, 0, CAPPED) },
  {
    name: 'two mitred bends',
    plan: runPlan(TURNS, { bendRadius: 0 }),
    expect: parts(4, 2 * MITRED, CAPPED, 'Below a Reynolds number of 140,000'),
  },
  // Bends of straight pieces: 0.34, 0.27 and 0.24 at r/D 1.5 (secondary).
  { name: 'two bends of 3 pieces', plan: runPlan(TURNS, { bendMake: '3-piece' }), expect: parts(4, 0.68, CAPPED) },
  { name: 'two bends of 4 pieces', plan: runPlan(TURNS, { bendMake: '4-piece' }), expect: parts(4, 0.54, CAPPED) },
  { name: 'two bends of 5 pieces', plan: runPlan(TURNS, { bendMake: '5-piece' }), expect: parts(4, 0.48, CAPPED) },
  {
    name: 'pieces about another radius',
    plan: runPlan(TURNS, { bendMake: '5-piece', bendRadius: 1 }),
    expect: [{ part: 'whole', subjects, value: null, refuses: 'a radius of 1.5 diameters only' }],
  },
  {
    name: 'pieces of a rectangular duct',
    plan: runPlan(TURNS, { bendMake: '5-piece', sides: { width: 160, height: 160 } }),
    expect: [{ part: 'whole', subjects, value: null, refuses: 'round ducts' }],
  },
  {
    name: 'how the bends are made is not known: smooth',
    plan: runPlan(TURNS, { bendMake: null }),
    expect: parts(4, 2 * ROUNDED, CAPPED, 'they count as smooth').map((row) => ({ ...row, within: 0.05 })),
  },
  {
    name: 'two smooth bends',
    plan: runPlan(TURNS),
    expect: parts(4, 2 * ROUNDED, CAPPED).map((row) => ({ ...row, within: 0.05 })),
  },
  // Square, 0.16 m: 0.17, 1.18 and 0.15 at r/W 1.5, 0.5 and 2 (secondary), mitred 1.2 (secondary).
  square('r/W 1.5', { bendRadius: 1.5 }, 0.17),
  square('r/W 0.5', { bendRadius: 0.5 }, 1.18),
  square('r/W 2', { bendRadius: 2 }, 0.15),
  square('mitred', { bendRadius: 0 }, 1.2),
  {
    name: 'twice as wide as high, mitred: the worse way about, 1.3',
    plan: runPlan(TURNS, { bendRadius: 0, sides: { width: 240, height: 120 } }),
    expect: rectangularParts(0.24, 0.12, 1.3, 'by its angle'),
  },
  {
    name: 'half as wide again as high, r/W 1: no value is held, round',
    plan: runPlan(TURNS, { bendRadius: 1, sides: { width: 240, height: 160 } }),
    expect: rectangularParts(0.24, 0.16, roundedBy(1, 0.0208), 'counts as a round one').map((row) => ({ ...row, within: 0.1 })),
  },
  {
    name: 'radius of the bends not known',
    plan: runPlan(TURNS, { bendRadius: null }),
    expect: [{ part: 'whole', subjects, value: null, asks: 'runs.0.duct.bendRadius' }],
  },
  {
    name: 'cap not known',
    plan: runPlan(UP, { cap: null }),
    expect: [{ part: 'whole', subjects, value: null, asks: 'runs.0.duct.cap' }],
  },
  {
    name: 'a bend of a radius between mitred and half a diameter',
    plan: runPlan(TURNS, { bendRadius: 0.3 }),
    expect: [{ part: 'whole', subjects, value: null, refuses: 'radiusRatio is 0.3' }],
  },
]);

function square(name: string, duct: { bendRadius: number }, bend: number): FigureCase {
  const sides = { width: 160, height: 160 };
  return {
    name: `a square duct, ${name}`,
    plan: runPlan(TURNS, { ...duct, sides }),
    expect: rectangularParts(0.16, 0.16, bend, 'by its angle'),
  };
}

function rectangularParts(width: number, height: number, bend: number, notes: string) {
  const velocityPressure = (densityBy(35, 0.7, 100) * (0.2 / (width * height)) ** 2) / 2;
  // Huebscher: 1.30 (ab)^0.625 / (a + b)^0.25.
  const equal = (1.3 * (width * height) ** 0.625) / (width + height) ** 0.25;
  const rubbing = lossBy({ airflow: 0.2, diameter: equal, length: 4, coefficients: 0 });
  const row = (part: string, value: number) => ({ part, subjects, value, within: 0.05 });
  return [
    row('whole', rubbing + (2 * bend + ENTRY + CAPPED) * velocityPressure),
    row('straight', rubbing),
    { ...row('bends', 2 * bend * velocityPressure), notes },
    row('entry', ENTRY * velocityPressure),
    row('exit', CAPPED * velocityPressure),
  ];
}

describe('the loss of a run', () => {
  const wholeOf = (plan: Plan) => readFigure(runLossFigure, deriveScene(plan))[0]?.value ?? Number.NaN;
  const more = (a: Plan, b: Plan) => expect(wholeOf(b)).toBeGreaterThan(wholeOf(a));

  it('grows with length, airflow and sharper bends, and falls with warmer air', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 20_000 }), fc.double({ min: 0.2, max: 0.8, noNaN: true }), (rise, airflow) => {
        const run = [
          [0, 0, rise],
          [0, -2000, 0],
        ] as const;
        more(
          runPlan(run, { airflow }),
          runPlan(
            [
              [0, 0, rise + 100],
              [0, -2000, 0],
            ],
            { airflow },
          ),
        );
        more(runPlan(run, { airflow }), runPlan(run, { airflow: airflow * 1.05 }));
        more(runPlan(run, { airflow, bendRadius: 2 }), runPlan(run, { airflow, bendRadius: 1 }));
        more(runPlan(run, { airflow, exhaustC: 50 }), runPlan(run, { airflow, exhaustC: 20 }));
      }),
      { numRuns: 25 },
    );
  });
});
