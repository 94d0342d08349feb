import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/room/checks/service-clearances';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';
import { addColumn, addThing, addThingBetween, setWalls } from '../../../support/roomPlan';

/** Of the family: 100 at the right and the back, 610 before the front. The corner's right side is 4687, its back 138.5 from the wall. */
const right = { part: 'right', limit: 100 } as const;
const back: ExpectedFinding = { part: 'back', verdict: 'clear', subjects: ['machine'], measured: 138.5, limit: 100 };

function setRightWall(plan: Plan, x: number): void {
  setWalls(
    plan,
    [
      [0, 0],
      [x, 0],
      [x, 4049.5],
      [0, 4049.5],
    ],
    { wall: 'wall-2', from: 500 },
  );
}

const wallAt = (x: number) => linePlan({}, (plan) => setRightWall(plan, x));

/** More room at the right, and a bin so far from the machine. */
const binAt = (distance: number, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    setRightWall(plan, 5600);
    addThingBetween(plan, 'bin', [4687 + distance, 300], [4987 + distance, 600], { kind: 'bin' });
    change(plan);
  });

describeCheck(check, [
  {
    name: 'a corner: only the sides without a table',
    plan: linePlan(),
    expect: [
      {
        ...right,
        verdict: 'clear',
        subjects: ['machine'],
        measured: 125.5,
        says: '4 ¹⁵⁄₁₆″ is free before the machine at its right side; service needs 3 ¹⁵⁄₁₆″.',
      },
      back,
    ],
  },
  { name: 'a wall at the limit', plan: wallAt(4787), expect: [{ ...right, verdict: 'clear', subjects: ['machine'], measured: 100 }, back] },
  {
    name: 'a wall nearer',
    plan: wallAt(4777),
    expect: [
      {
        ...right,
        verdict: 'stop',
        subjects: ['machine'],
        measured: 90,
        says: 'The wall leaves 3 ⁹⁄₁₆″ before the machine at its right side; service needs 3 ¹⁵⁄₁₆″. Make ⅜″ more room.',
      },
      back,
    ],
  },
  {
    name: 'a bin at the limit',
    plan: binAt(100),
    expect: [{ ...right, verdict: 'clear', subjects: ['machine'], measured: 100 }, back],
  },
  {
    name: 'a bin 60 mm from the machine can be moved',
    plan: binAt(60),
    expect: [{ ...right, verdict: 'stop', subjects: ['machine', 'bin'], measured: 60, repairs: ['move-bin'] }, back],
  },
  {
    name: 'a bin with a column behind it goes out another way, or stays',
    plan: binAt(60, (plan) => addColumn(plan, 'column', 5140, 450)),
    expect: [{ ...right, verdict: 'stop', subjects: ['machine', 'bin'], measured: 60 }, back],
  },
  {
    name: 'what stands in the machine leaves nothing before it',
    plan: linePlan({}, (plan) => {
      setRightWall(plan, 5600);
      addColumn(plan, 'column', 4687, 450);
    }),
    expect: [{ ...right, verdict: 'stop', subjects: ['machine', 'column'], measured: 0 }, back],
  },
  {
    name: 'what stands beside the strip before the side does not count',
    plan: linePlan({}, (plan) => {
      setRightWall(plan, 5600);
      addThing(plan, 'bin', 5000, 2900, 300, 300);
    }),
    expect: [{ ...right, verdict: 'clear', subjects: ['machine'], measured: 913 }, back],
  },
  {
    name: 'straight through: a cart 500 mm before the front',
    plan: linePlan({ configuration: 'straight' }, (plan) => addThingBetween(plan, 'cart', [4000, 1349.5], [4600, 1849.5])),
    expect: [
      {
        part: 'front',
        verdict: 'stop',
        subjects: ['machine', 'cart'],
        measured: 500,
        limit: 610,
        repairs: ['move-cart'],
        says: 'The cart leaves 1′ 7 ¹¹⁄₁₆″ before the machine at its front; service needs 2′ 0″. Make 4 ⁵⁄₁₆″ more room.',
      },
      back,
    ],
  },
  {
    name: 'a machine that needs no room has nothing to measure',
    plan: linePlan({ family: ownDataSheet({ clearances: { left: 0, right: 0, front: 0, back: 0, above: 0 } }) }),
    expect: [],
  },
]);
