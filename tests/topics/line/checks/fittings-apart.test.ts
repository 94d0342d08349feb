import { expect, test } from 'vitest';
import { createPlan, type Fitting, type Plan, UNKNOWN_TROUGH, validatePlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/fittings-apart';
import { describeCheck, type ExpectedFinding, findingsOf } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

/** The soiled table of the line is 2900 long: landing to 1530, pre-rinse to 2040, scrap to 2240, drop-off to its end. */
const moved = (places: Record<string, number>, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    for (const fitting of tableOf(plan, 'soiled').fittings) fitting.at = places[fitting.id] ?? fitting.at;
    change(plan);
  });

/** The soiled table with these fittings alone. */
const tableWith = (...fittings: Fitting[]) => linePlan({}, (plan) => void (tableOf(plan, 'soiled').fittings = fittings));

const sink = (id: string, at: number): Fitting => ({
  id,
  kind: 'sink',
  at,
  length: 500,
  width: 500,
  bowlDepth: 200,
  spray: false,
  rackSlide: null,
  waste: null,
});
const landing = (id: string, at: number, length: number): Fitting => ({ id, kind: 'landing', at, length });
const dropOff = (id: string, at: number, length = 600): Fitting => ({ id, kind: 'drop-off', at, length });
const shelf = (id: string, at: number, height: number): Fitting => ({ id, kind: 'overshelf', at, length: 1000, depth: 300, height });

const clear: ExpectedFinding = { verdict: 'clear', subjects: ['soiled-table'], measured: 0, limit: 1 };
const stop = (one: string, other: string, measured: number, repairs: readonly string[] = []): ExpectedFinding => ({
  verdict: 'stop',
  subjects: [one, other, 'soiled-table'],
  measured,
  limit: 1,
  repairs,
});

describeCheck(check, [
  {
    name: 'a whole line: one after the other, touching',
    plan: linePlan(),
    expect: [{ ...clear, says: 'The four fittings of the soiled table lie clear of each other.' }],
  },
  { name: 'an empty room has no fittings', plan: createPlan(), expect: [] },
  { name: 'one fitting has nothing to meet', plan: tableWith(sink('sink', 1000)), expect: [] },
  { name: 'the 1 mm left to drawing', plan: moved({ 'pre-rinse': 1786 }), expect: [clear] },
  {
    name: 'a little more than that',
    plan: moved({ 'pre-rinse': 1786.1 }),
    expect: [stop('pre-rinse', 'scrap', 1.1, ['move-pre-rinse'])],
  },
  {
    name: 'the pre-rinse over the scrap opening, and into the drop-off',
    plan: moved({ 'pre-rinse': 2200 }),
    expect: [
      {
        ...stop('pre-rinse', 'scrap', 200, ['move-pre-rinse', 'move-scrap']),
        says: 'The pre-rinse and the scrap opening of the soiled table take the same 7 ⅞″ of it. Move one of them.',
      },
      stop('pre-rinse', 'drop-off', 215, ['move-pre-rinse']),
    ],
  },
  {
    name: 'the pre-rinse under the landing: the free stretches between the others are too short for it',
    plan: moved({ 'pre-rinse': 1275, scrap: 1640, 'drop-off': 2100 }),
    expect: [stop('soiled-landing', 'pre-rinse', 510)],
  },
  {
    name: 'the drop-off over the scrap opening goes out; the opening does not go beyond it',
    plan: moved({ 'drop-off': 2370 }),
    expect: [stop('scrap', 'drop-off', 200, ['move-drop-off'])],
  },
  {
    name: 'two landings over each other: racks counted twice',
    plan: tableWith(landing('near', 500, 1000), landing('far', 1200, 1000)),
    expect: [
      {
        ...stop('near', 'far', 300, ['move-near', 'move-far']),
        says: 'The rack landing and another of the soiled table take the same 11 ¹³⁄₁₆″ of it. Move one of them.',
      },
    ],
  },
  {
    name: 'a landing that is wholly over an opening',
    plan: tableWith(landing('landing', 1450, 2900), sink('sink', 1000)),
    expect: [stop('landing', 'sink', 500)],
  },
  {
    name: 'a drop-off reaches over the landing: people can take turns',
    plan: tableWith(landing('landing', 500, 1000), dropOff('drop-off', 1200)),
    expect: [{ ...stop('landing', 'drop-off', 100, ['move-drop-off']), verdict: 'watch' }],
  },
  {
    name: 'two drop-offs over each other: neither goes to the place of the racks',
    plan: tableWith(dropOff('one', 1900), dropOff('two', 2000)),
    expect: [{ ...stop('one', 'two', 500, ['move-one', 'move-two']), verdict: 'watch' }],
  },
  {
    name: 'an overshelf over sink and landing',
    plan: tableWith(landing('landing', 500, 1000), sink('sink', 1250), shelf('shelf', 1000, 1500)),
    expect: [{ ...clear, says: 'The three fittings of the soiled table lie clear of each other.' }],
  },
  {
    name: 'two overshelves, the racks on one 50 mm in the other',
    plan: tableWith(shelf('low', 1000, 1400), shelf('high', 1500, 1700)),
    expect: [stop('low', 'high', 500, ['move-low', 'move-high'])],
  },
  {
    name: 'two overshelves, one clear above the other',
    plan: tableWith(shelf('low', 1000, 1400), shelf('high', 1500, 1750)),
    expect: [clear],
  },
  {
    name: 'across a turn of the table',
    plan: linePlan({}, (plan) => {
      const table = tableOf(plan, 'soiled');
      Object.assign(table, {
        legs: [
          { length: 1500, turnDeg: 0 },
          { length: 1500, turnDeg: 90 },
        ],
        fittings: [sink('one', 1400), sink('two', 1700)],
      });
    }),
    expect: [stop('one', 'two', 200, ['move-one', 'move-two'])],
  },
]);

test('the place is the part that both take, on the plan and along the table', () => {
  const [finding] = findingsOf(
    check,
    tableWith(sink('one', 1000), { id: 'scrap', kind: 'scrap', at: 1300, length: 200, width: 300, ...UNKNOWN_TROUGH }),
  );
  expect(finding?.elevation).toEqual({ table: 'soiled-table', from: 1200, to: 1250 });
  const [polygon = []] = finding?.place.kind === 'area' ? finding.place.polygons : [];
  const [xs, ys] = [polygon.map(({ x }) => x), polygon.map(({ y }) => y)];
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(50, 6);
  expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(300, 6);
});

test('a fitting that runs past the end of its table is no plan at all', () => {
  expect(validatePlan(tableWith(sink('one', 1000), sink('two', 2700)))?.code).toBe('fitting-off-table');
  expect(validatePlan(tableWith(sink('one', 200), sink('two', 2650)))?.code).toBe('fitting-off-table');
});
