import { check } from '../../../../src/topics/people/checks/controls-reachable';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, joinBy, linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';

const subjects = ['machine'];
const free = { verdict: 'clear', part: 'cover', subjects, measured: 0, limit: 0 } satisfies ExpectedFinding;
/**
 * Nearest free place of a person 28 in wide: 355.6 from the front table's edge at 95.5 and from the left table's at
 * 628.5, so at (−260.1, 984.1); the controls are at (47.5, 711). √(307.6² + 273.1²) = 411.34.
 */
const stand = { verdict: 'clear', part: 'stand', subjects, measured: 411.34, within: 0.01, limit: 677 } satisfies ExpectedFinding;

/** The top of a post at 800, above the fingertips of a tall man at 724. */
const height = { verdict: 'clear', part: 'height', subjects, measured: 800, limit: 724 } satisfies ExpectedFinding;
/** Eye-level controls begin at 1450; a shoulder at 1230 and a reach of 677 mm over 411.34 mm reach 537.7 higher. */
const high = { ...height, measured: 1450 };
const highest = (away: number) => 1230 + Math.sqrt(677 ** 2 - away ** 2);
const between = (zFrom: number, zTo: number) =>
  linePlan({ family: ownDataSheet({ controls: ownDataSheet({}).controls.map((position) => ({ ...position, zFrom, zTo })) }) });

describeCheck(check, [
  {
    name: 'on the inside of the turn: a strip of 95 mm is left beside the table',
    plan: linePlan(),
    expect: [
      { ...free, says: 'No table lies before the controls.' },
      { ...stand, says: 'The controls are 1′ 4 ³⁄₁₆″ from where the operator stands; a short person reaches 2′ 2 ⅝″.' },
      { ...height, says: 'The controls are reached 2′ 7 ½″ above the floor, without stooping or climbing.' },
    ],
  },
  {
    // Common practice: turned the other way the controls end up under the table and behind.
    name: 'on the outside of the turn: under the table, and nobody gets near',
    plan: linePlan({}, (plan) => void (plan.machines[0]!.controls = 'front-right')),
    expect: [
      {
        ...free,
        verdict: 'stop',
        measured: 85,
        repairs: ['controls-front-left'],
        says: 'The clean table lies over the controls; nobody can work them there. Move the controls.',
      },
    ],
  },
  {
    // (−260.1, 984.1) to (689.5, 711): √(949.6² + 273.1²) = 988.09.
    name: 'above the deck on the outside of the turn: free, but out of reach',
    plan: linePlan({ family: 'direct-vent' }, (plan) => void (plan.machines[0]!.controls = 'front-right')),
    expect: [
      {
        ...stand,
        verdict: 'stop',
        measured: 988.09,
        repairs: ['controls-front-left'],
        says: 'The controls are 3′ 2 ⅞″ from where the operator can stand; a short person reaches 2′ 2 ⅝″. Clear a place nearer to them.',
      },
      free,
    ],
  },
  {
    name: 'above the deck no table covers them',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [free, stand, { ...high, limit: highest(Math.hypot(307.6, 273.1)) }],
  },
  {
    // The front table's operator edge is 273 mm from the rack line at 368.5; 15 mm farther leaves 80.5 of 5…90 mm.
    name: 'a front table 15 mm out of line covers a strip: look at it',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { offset: 15 })),
    expect: [
      {
        ...free,
        verdict: 'watch',
        measured: 9.5,
        says: 'The clean table lies over ⅜″ of the controls’ 3 ⅜″. Move the table or the controls.',
      },
      { ...stand, measured: 422.68 },
      height,
    ],
  },
  {
    // At 35.5 mm of 5…90 mm: 54.5 are covered, more than half.
    name: 'a front table 60 mm out of line covers most of them',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { offset: 60 })),
    expect: [{ ...free, verdict: 'stop', measured: 54.5 }],
  },
  {
    name: 'controls at the floor',
    plan: between(200, 700),
    expect: [
      {
        ...height,
        verdict: 'watch',
        measured: 700,
        says: 'The controls end 2′ 3 ⁹⁄₁₆″ above the floor; the fingers of a tall person hang at 2′ 4 ½″, so they are worked stooping. Have them fitted higher.',
      },
      free,
      stand,
    ],
  },
  { name: 'just at the fingertips of a tall person', plan: between(200, 724), expect: [free, stand, { ...height, measured: 724 }] },
  {
    name: 'controls under the ceiling',
    plan: between(1770, 2000),
    expect: [
      {
        ...high,
        verdict: 'watch',
        measured: 1770,
        limit: highest(Math.hypot(307.6, 273.1)),
        says: 'The controls begin 5′ 9 ¹¹⁄₁₆″ above the floor; from where the operator stands a short person reaches up to 5′ 9 ⅝″. Have them fitted lower, or give a sound step.',
      },
      free,
      stand,
    ],
  },
  {
    name: 'a hair lower',
    plan: between(1767, 2000),
    expect: [free, stand, { ...high, measured: 1767 }].map(({ limit: _limit, ...rest }) => rest),
  },
  {
    name: 'the inside of the turn is filled with crates',
    plan: linePlan({}, (plan) => {
      const { x, y } = plan.machines[0]!;
      const crates = {
        id: 'crates',
        kind: 'other',
        name: 'Crates',
        rotationDeg: 0,
        width: 2000,
        depth: 2000,
        height: 900,
        ware: 'none',
        clearBelow: null,
        sealed: null,
        basins: null,
      } as const;
      plan.things.push({ ...crates, x: x - 368.5 - 915, y: y + 355.5 + 1010 });
    }),
    expect: [
      {
        verdict: 'stop',
        part: 'stand',
        subjects,
        measured: false,
        limit: true,
        says: 'There is no free place to stand inside the turn near the controls. Clear the floor before them.',
      },
      free,
    ],
  },
  {
    name: 'no configuration, no turn',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [],
  },
  {
    name: 'an unknown position is asked for elsewhere',
    plan: linePlan({}, (plan) => void (plan.machines[0]!.controls = 'on-the-roof')),
    expect: [],
  },
  {
    name: 'straight through, nothing stands before the front',
    plan: linePlan({ configuration: 'straight' }),
    expect: [free, { verdict: 'clear', part: 'stand', subjects, measured: 355.6, within: 0.01 }, height],
  },
]);
