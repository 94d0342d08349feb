import { distance } from '../../../../src/geometry';
import type { Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { rule } from '../../../../src/topics/people/figures/hand-sink-distance';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThing, clearAway } from '../../../support/roomPlan';

const sinkAt = (x: number, y: number) => (plan: Plan) => {
  clearAway(plan);
  addThing(plan, 'sink', x, y, 400, 400, { kind: 'hand-sink' });
};

const stand = deriveScene(linePlan()).lines[0]?.stand?.centre ?? { x: Number.NaN, y: Number.NaN };
const FEET = 304.8;
const subjects = ['machine', 'sink'];

/** WAC 246-215-09225: 25 ft (read). The standing place is found to a millimetre or two. */
describeFigure(rule, [
  { name: 'none drawn', plan: linePlan({}, clearAway), expect: [{ subjects: ['machine'], value: null, asks: 'things' }] },
  {
    name: 'in the far corner of the room',
    plan: linePlan({}, sinkAt(300, 3000)),
    expect: [{ subjects, value: distance(stand, { x: 300, y: 3000 }) / 1000, within: 0.005, notes: /^Straight; on foot/ }],
  },
  {
    name: 'in the next room, 26 ft off',
    plan: linePlan({}, sinkAt(stand.x - 26 * FEET, stand.y)),
    expect: [{ subjects, value: 26 * 0.3048, within: 0.005, notes: /more than the 25 ft/ }],
  },
  {
    name: 'no place to stand',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: [],
  },
]);
