import type { Opening, Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/room/checks/door-swing-free';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addColumn, addThingBetween } from '../../../support/roomPlan';

/** The door takes 914 of the lower wall (y 4049.5), from x 1164 at its start to 250; its leaf sweeps up to y 3135.5. */
const door = (change: Partial<Opening>, more: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    for (const opening of plan.room.openings) Object.assign(opening, { swing: 'in', hinge: 'start', ...change });
    more(plan);
  });

/** A bin that reaches 1164 − x into the sweep of a leaf hung at 1164. */
const binFrom =
  (x: number, height = 900) =>
  (plan: Plan) =>
    addThingBetween(plan, 'bin', [x, 3200], [x + 300, 3400], { kind: 'bin', height });

const clear = { verdict: 'clear', subjects: ['door'], measured: 0, limit: 1 } as const;

describeCheck(check, [
  { name: 'a leaf that opens outward sweeps no floor', plan: door({ swing: 'out' }, binFrom(1000)), expect: [] },
  { name: 'a cased opening has no leaf', plan: door({ kind: 'cased-opening', swing: 'none' }, binFrom(1000)), expect: [] },
  { name: 'nothing in the swing', plan: door({}), expect: [{ ...clear, subjects: ['door'], says: 'The door swings free.' }] },
  { name: 'a bin that touches the swing', plan: door({}, binFrom(1164)), expect: [{ ...clear, subjects: ['door'] }] },
  { name: 'a bin 1 mm in the swing', plan: door({}, binFrom(1163)), expect: [{ ...clear, subjects: ['door'] }] },
  {
    name: 'a bin 100 mm in the swing',
    plan: door({}, binFrom(1064)),
    expect: [
      {
        verdict: 'stop',
        subjects: ['door', 'bin'],
        measured: 100,
        limit: 1,
        repairs: ['move-bin'],
        says: 'Bin 9 stands 3 ¹⁵⁄₁₆″ in the swing of the door. Move it, or hang the door the other way.',
      },
    ],
  },
  {
    name: 'hung at the other edge the leaf goes clear of the bin',
    plan: door({ hinge: 'end' }, binFrom(1064)),
    expect: [{ ...clear, subjects: ['door'] }],
  },
  {
    name: 'a column in the swing stays',
    plan: door({}, (plan) => addColumn(plan, 'column', 1164, 3600)),
    expect: [{ verdict: 'stop', subjects: ['door', 'column'], measured: 100, limit: 1 }],
  },
  {
    name: 'two leaves of half the width sweep half as far',
    plan: door({ kind: 'double-door' }, binFrom(700)),
    expect: [{ ...clear, subjects: ['door'] }],
  },
]);
