import { createPlan, type Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/cleanliness/checks/hand-sink-near';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThing, addThingBetween, clearAway } from '../../../support/roomPlan';

const FEET = 304.8;
const stand = deriveScene(linePlan()).lines[0]?.stand?.centre ?? { x: Number.NaN, y: Number.NaN };

/** A room long enough, with a sink so far to the left of the operator, straight. */
const sinkAt = (away: number, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    clearAway(plan);
    for (const corner of plan.room.outline) if (corner.x < 1) corner.x -= 10_000;
    for (const opening of plan.room.openings) opening.from = 500;
    addThing(plan, 'sink', stand.x - away, stand.y + 300, 400, 400, { kind: 'hand-sink', rotationDeg: 90 });
    change(plan);
  });
const straight = (away: number) => Math.hypot(away, 300);
const count = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'count',
  verdict,
  subjects: [],
  measured,
  limit: 1,
});
const far = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'distance',
  verdict,
  subjects: ['machine', 'sink'],
  measured,
  within: 5,
  limit: 25 * FEET,
});

/** At least one: FDA Food Code 5-203.11 (read). 25 ft: WAC 246-215-05255, NYC §81.21, NAC 446.581 (secondary). */
describeCheck(check, [
  { name: '24 ft off, nothing between', plan: sinkAt(24 * FEET), expect: [count('clear', 1), far('clear', straight(24 * FEET))] },
  { name: '26 ft off', plan: sinkAt(26 * FEET), expect: [far('stop', straight(26 * FEET)), count('clear', 1)] },
  {
    name: '26 ft off, by the Food Code',
    plan: sinkAt(26 * FEET, ({ codes }) => void (codes.handSink = 'food-code')),
    expect: [count('clear', 1)],
  },
  {
    name: '26 ft off, by the law that sets a distance',
    plan: sinkAt(26 * FEET, ({ codes }) => void (codes.handSink = 'within-25-ft')),
    expect: [far('stop', straight(26 * FEET)), count('clear', 1)],
  },
  {
    name: '20 ft off behind a bench: on foot it may be more',
    plan: sinkAt(20 * FEET, (plan) => addThingBetween(plan, 'bench', [1000, 900], [1400, 3000], { kind: 'work-table' })),
    expect: [far('watch', straight(20 * FEET)), count('clear', 1)],
  },
  {
    name: '15 ft off behind a bench: round it less than 25 ft',
    plan: sinkAt(15 * FEET, (plan) => addThingBetween(plan, 'bench', [1000, 900], [1400, 3000], { kind: 'work-table' })),
    expect: [count('clear', 1), far('clear', straight(15 * FEET))],
  },
  {
    name: 'none',
    plan: linePlan({}, clearAway),
    expect: [
      {
        ...count('stop', 0),
        says: 'No hand sink is drawn. Give the room one that is convenient to whoever handles clean ware; a sink for ware does not count.',
      },
    ],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
