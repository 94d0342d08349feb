import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/accessible-approach';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThingBetween, clearAway } from '../../../support/roomPlan';

const fixed = (isFixed: boolean | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    plan.finish.fixedWalls = isFixed;
    change(plan);
  });

/** The lower wall moved down until the room has so many square feet; it is 4812.5 wide. */
const ofArea = (squareFeet: number) => (plan: Plan) => {
  for (const corner of plan.room.outline) if (corner.y > 1000) corner.y = (toSI(squareFeet, 'ft2') * 1e6) / 4812.5;
};

/** A bench from the left wall that leaves a way of so many millimetres before the clean table, whose edge is at 4045.5. */
const wayOf = (gap: number) => (plan: Plan) => {
  clearAway(plan);
  addThingBetween(plan, 'bench', [0, 2150], [4045.5 - gap, 2440], { kind: 'work-table' });
};

const exempt = { verdict: 'clear', subjects: [], measured: true, limit: true } as const;
/** A wheelchair turns in the corner of the turn. */
const turns = {
  part: 'space',
  subjects: ['machine'],
  limit: true,
  verdict: 'clear',
  measured: true,
} as const;
/** Two carts before the machine: a way of 36 in along the soiled table, and one between them. */
const carts = (between: number) =>
  linePlan({}, (plan) => {
    addThingBetween(plan, 'cart', [700, 767 + 914.4], [2300, 2600]);
    addThingBetween(plan, 'other-cart', [2300 + between, 767 + 914.4], [4045.5, 2600]);
  });
/** Before the machine a floor of so much by 48 in, and no more: benches all around but for the way of the operator. */
const nook = (width: number) =>
  linePlan({}, (plan) => {
    clearAway(plan);
    addThingBetween(plan, 'bench', [1000, 767 + width], [4045.5, 2600], { kind: 'work-table' });
  });

const held = { subjects: [], limit: 914.4 } as const;

/** ADA Standards 206.2.8, exception 1, and 403.5.1 (read). */
describeCheck(check, [
  {
    name: 'a small room within fixed walls',
    plan: linePlan(),
    expect: [
      exempt,
      { ...turns, says: 'A wheelchair stands on 2′ 6″ by 4′ 0″ within 5′ 0″ of the operator’s place, and turns in a circle of 60 in.' },
    ],
  },
  { name: '999 ft², fixed', plan: fixed(true, ofArea(999)), expect: [exempt, turns] },
  {
    name: '1000 ft², fixed: not exempt, its ways wide',
    plan: fixed(true, ofArea(1000)),
    expect: [{ ...held, verdict: 'clear', measured: 914.4 }, turns],
  },
  {
    name: '1000 ft² is not exempt, whatever bounds it',
    plan: fixed(null, ofArea(1000)),
    expect: [
      {
        ...held,
        verdict: 'clear',
        measured: 914.4,
        says: 'The room is not exempt: it has 1000 ft². Its ways are 3′ 0″ wide or wider.',
      },
      turns,
    ],
  },
  { name: 'bounds that can be moved', plan: fixed(false), expect: [{ ...held, verdict: 'clear', measured: 914.4 }, turns] },
  {
    name: 'bounds that can be moved, a way of 34 in',
    plan: fixed(false, wayOf(863.6)),
    expect: [{ ...held, verdict: 'watch', measured: 863.6 }, turns],
  },
  {
    name: 'bounds that can be moved, a way of 31 in',
    plan: fixed(false, wayOf(787.4)),
    expect: [{ ...held, verdict: 'stop', measured: 787.4 }, turns],
  },
  { name: 'not known', plan: fixed(null), expect: [{ ...held, verdict: 'ask', measured: null, asks: 'finish.fixedWalls' }, turns] },
  {
    name: 'not exempt, and no door',
    plan: fixed(false, ({ room }) => void (room.openings = [])),
    expect: [{ ...held, verdict: 'ask', measured: null, asks: 'room.openings' }, turns],
  },
  {
    name: 'room for a T alone',
    plan: carts(914.4),
    expect: [
      exempt,
      {
        ...turns,
        says: 'A wheelchair stands on 2′ 6″ by 4′ 0″ within 5′ 0″ of the operator’s place, and turns in a T of arms 36 in wide.',
      },
    ],
  },
  {
    name: 'room to stand, none to turn',
    plan: nook(762),
    expect: [
      exempt,
      {
        ...turns,
        says: 'A wheelchair stands on 2′ 6″ by 4′ 0″ within 5′ 0″ of the operator’s place, and no circle or T to turn in is free there, which a work room need not have.',
      },
    ],
  },
  {
    name: 'a hair less: no room to stand',
    plan: nook(761.9),
    expect: [
      {
        ...turns,
        verdict: 'watch',
        measured: false,
        says: 'No free floor of 2′ 6″ by 4′ 0″, which a wheelchair takes, is left within 5′ 0″ of the operator’s place. Clear a place: a work area must have one.',
      },
      exempt,
    ],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
