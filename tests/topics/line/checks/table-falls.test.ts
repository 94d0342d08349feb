import type { Plan, Table } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/table-falls';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const inch = 25.4;
/** ⅛ and ¼ in per ft: 1/96 and 1/48 exactly. */
const EIGHTH = 1 / 96;
const QUARTER = 1 / 48;

const soiled = { verdict: 'clear', subjects: ['soiled-table'], measured: QUARTER } satisfies ExpectedFinding;
const clean = { verdict: 'clear', subjects: ['clean-table'], measured: QUARTER, limit: 0 } satisfies ExpectedFinding;
const bad = { ...clean, verdict: 'stop', repairs: ['raise-deck'] } satisfies ExpectedFinding;

/** The line with a clean table of 60 in whose deck is so, without the shelving beyond it. */
function withDeck(
  deck: Table['deck'],
  legs: Table['legs'] = [{ length: 60 * inch, turnDeg: 0 }],
  change: (table: Table) => void = () => {},
): Plan {
  return linePlan({}, (plan) => {
    const table = tableOf(plan, 'clean');
    plan.things = [];
    Object.assign(table, { deck, legs, fittings: [] });
    change(table);
  });
}

const fall = (ratio: number): Table['deck'] => ({ kind: 'fall', jointHeight: 863.6, fall: ratio });
const heights = (...values: (number | null)[]): Table['deck'] => ({
  kind: 'heights',
  heights: values.map((z) => (z === null ? z : 863.6 + z)),
});
/** Two legs of 30 in with a turn between them. */
const TURNED: Table['legs'] = [
  { length: 30 * inch, turnDeg: 0 },
  { length: 30 * inch, turnDeg: 0 },
];

describeCheck(check, [
  {
    // source: 60 in at ¼ in/ft → 1.25 in · computed · exact
    name: 'a quarter inch per foot',
    plan: withDeck(fall(QUARTER)),
    expect: [soiled, { ...clean, says: 'The clean table falls 1 ¼″ toward the machine, nowhere less than ¼″ per ft.' }],
  },
  {
    name: 'an eighth of an inch per foot is enough',
    plan: withDeck(fall(EIGHTH)),
    expect: [soiled, { ...clean, measured: EIGHTH, says: 'The clean table falls ⅝″ toward the machine, nowhere less than ⅛″ per ft.' }],
  },
  {
    name: 'a sixteenth per foot drains, but only just',
    plan: withDeck(fall(EIGHTH / 2)),
    expect: [
      {
        ...bad,
        verdict: 'watch',
        measured: EIGHTH / 2,
        says: 'The clean table falls only ¹⁄₁₆″ per ft; ⅛″ per ft drains well. Raise the far end ¹⁵⁄₁₆″.',
      },
      soiled,
    ],
  },
  {
    name: 'level: water stands on it',
    plan: withDeck(fall(0)),
    expect: [{ ...bad, measured: 0, says: 'The clean table is level; water stands on it. Raise the far end 1 ¼″.' }, soiled],
  },
  {
    // 3/8 in over 60 in, the other way; with 1 ¼ in the right way the far end comes up 1 ⅝ in.
    name: 'away from the machine',
    plan: withDeck(fall(-0.375 / 60)),
    expect: [
      {
        ...bad,
        measured: -0.375 / 60,
        says: 'The clean table falls ⅜″ away from the machine; water stands at the far end. Raise the far end 1 ⅝″.',
      },
      soiled,
    ],
  },
  {
    name: 'surveyed, with a low spot at the turn',
    plan: withDeck(heights(0, -5, 20), TURNED),
    expect: [
      {
        ...bad,
        measured: -5 / 762,
        says: 'Water stands ³⁄₁₆″ deep on the clean table at the turn. Raise the far end ⁷⁄₁₆″ and the turn ¹³⁄₁₆″.',
      },
      soiled,
    ],
  },
  {
    name: 'surveyed, one leg level',
    plan: withDeck(heights(0, 16, 16), TURNED),
    expect: [{ ...bad, measured: 0, says: 'Water stands on the clean table 3′ 9″ from the machine. Raise the far end ⅝″.' }, soiled],
  },
  {
    name: 'surveyed, falling all the way',
    plan: withDeck(heights(0, 16, 32), TURNED),
    expect: [soiled, { ...clean, measured: 16 / 762 }],
  },
  {
    name: 'both ways into a sink: it drains',
    plan: withDeck(heights(0, -16, 0), TURNED, ({ fittings }) => {
      fittings.push({
        id: 'sink',
        kind: 'sink',
        at: 762,
        length: 400,
        width: 400,
        bowlDepth: 200,
        spray: false,
        rackSlide: null,
        waste: null,
      });
    }),
    expect: [soiled, { ...clean, measured: 16 / 762, says: 'The clean table drains into its sinks, nowhere less than ¼″ per ft.' }],
  },
  {
    name: 'the fall is not known',
    plan: withDeck({ kind: 'fall', jointHeight: 863.6, fall: null }),
    expect: [
      {
        verdict: 'ask',
        subjects: ['clean-table'],
        measured: null,
        asks: 'tables.1.deck.fall',
        says: 'The fall of the clean table is not known, so its fall is not checked. Measure it.',
      },
      soiled,
    ],
  },
  {
    name: 'one height of a survey is missing',
    plan: withDeck(heights(0, null, 32), TURNED),
    expect: [
      {
        verdict: 'ask',
        subjects: ['clean-table'],
        measured: null,
        asks: 'tables.1.deck.heights.1',
        says: 'The deck height at the turn of the clean table is not known, so its fall is not checked. Measure it.',
      },
      soiled,
    ],
  },
  {
    name: 'a free table has no machine to fall toward',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [soiled],
  },
]);
