import type { Plan } from '../../src/plan';
import { createPlan } from '../../src/plan';
import { check } from '../../src/services/rules/accessible-approach';
import { toSI } from '../../src/units';
import { describeCheck } from '../support/cases';
import { linePlan } from '../support/linePlan';
import { addThingBetween, clearAway } from '../support/roomPlan';

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
const held = { subjects: [], limit: 914.4 } as const;

/** ADA Standards 206.2.8, exception 1, and 403.5.1 (L-A02, L-A05, L-AT1, L-AT2; read). */
describeCheck(check, [
  { name: 'a small room within fixed walls', plan: linePlan(), expect: [exempt] },
  { name: '999 ft², fixed', plan: fixed(true, ofArea(999)), expect: [exempt] },
  {
    name: '1000 ft², fixed: not exempt, its ways wide',
    plan: fixed(true, ofArea(1000)),
    expect: [{ ...held, verdict: 'clear', measured: 914.4 }],
  },
  {
    name: '1000 ft² is not exempt, whatever bounds it',
    plan: fixed(null, ofArea(1000)),
    expect: [{ ...held, verdict: 'clear', measured: 914.4 }],
  },
  { name: 'bounds that can be moved', plan: fixed(false), expect: [{ ...held, verdict: 'clear', measured: 914.4 }] },
  {
    name: 'bounds that can be moved, a way of 34 in',
    plan: fixed(false, wayOf(863.6)),
    expect: [{ ...held, verdict: 'watch', measured: 863.6 }],
  },
  {
    name: 'bounds that can be moved, a way of 31 in',
    plan: fixed(false, wayOf(787.4)),
    expect: [{ ...held, verdict: 'stop', measured: 787.4 }],
  },
  { name: 'not known', plan: fixed(null), expect: [{ ...held, verdict: 'ask', measured: null, asks: 'finish.fixedWalls' }] },
  {
    name: 'not exempt, and no door',
    plan: fixed(false, ({ room }) => void (room.openings = [])),
    expect: [{ ...held, verdict: 'ask', measured: null, asks: 'room.openings' }],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
