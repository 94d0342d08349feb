import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/room/checks/inside-room';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addColumn, addThing, addThingBetween, clearAway, runOf, setWalls } from '../../../support/roomPlan';

const clear: ExpectedFinding = { verdict: 'clear', subjects: [], measured: 0, limit: 1 };
const stop = { verdict: 'stop', limit: 1 } as const;

const cartAt = (left: number) => linePlan({}, (plan) => addThingBetween(plan, 'cart', [left, 2000], [left + 500, 2400]));

const withRun = (points: [number, number, number][]) =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    runOf(plan).points = points.map(([x, y, z]) => ({ x, y, z }));
  });

describeCheck(check, [
  { name: 'a whole line', plan: linePlan(), expect: [{ ...clear, says: 'Everything stands inside the walls and under the ceiling.' }] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
  { name: 'a cart against the wall', plan: cartAt(0), expect: [clear] },
  { name: 'a cart in the wall by the 1 mm left to drawing', plan: cartAt(-1), expect: [clear] },
  {
    name: 'a cart in the wall by a little more',
    plan: cartAt(-1.1),
    expect: [{ ...stop, subjects: ['cart'], measured: 1.1, repairs: ['move-cart'] }],
  },
  {
    name: 'a cart 60 mm in the wall',
    plan: cartAt(-60),
    expect: [
      { ...stop, subjects: ['cart'], measured: 60, repairs: ['move-cart'], says: 'The cart reaches 2 ⅜″ out of the room. Move it in.' },
    ],
  },
  {
    name: 'turned 45°, only a corner of 100 mm square reaches out: half its diagonal less the distance of its centre',
    plan: linePlan({}, (plan) => addThing(plan, 'cart', 50, 2000, 100, 100, { rotationDeg: 45 })),
    expect: [{ ...stop, subjects: ['cart'], measured: Math.SQRT2 * 50 - 50, repairs: ['move-cart'] }],
  },
  {
    name: 'around the inner corner of an L, 200 by 250 mm',
    plan: linePlan({}, (plan) => {
      const corners = [
        [0, 0],
        [4812.5, 0],
        [4812.5, 4049.5],
        [1500, 4049.5],
        [1500, 3000],
        [0, 3000],
      ] as const;
      setWalls(plan, corners, { wall: 'wall-2', from: 500 });
      addThingBetween(plan, 'cart', [1300, 2850], [1700, 3250]);
    }),
    expect: [{ ...stop, subjects: ['cart'], measured: 200, repairs: ['move-cart'] }],
  },
  {
    name: 'between the wall and a column there is no room for it: no repair',
    plan: linePlan({}, (plan) => {
      addThingBetween(plan, 'cart', [-60, 2000], [440, 2400]);
      addColumn(plan, 'column', 560, 2200);
    }),
    expect: [{ ...stop, subjects: ['cart'], measured: 60 }],
  },
  {
    name: 'a table 300 mm into the wall stays joined: no repair',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      const corners = [
        [1350, 0],
        [4812.5, 0],
        [4812.5, 4049.5],
        [1350, 4049.5],
      ] as const;
      setWalls(plan, corners, { wall: 'wall-2', from: 500 });
    }),
    expect: [{ ...stop, subjects: ['soiled-table'], measured: 300 }],
  },
  {
    name: 'a hood, its top at 2513.6, under a ceiling of that height',
    plan: linePlan({}, (plan) => {
      plan.room.ceilingHeight = 2513.6;
    }),
    expect: [clear],
  },
  {
    name: 'a hood 63.6 mm above the ceiling',
    plan: linePlan({}, (plan) => {
      plan.room.ceilingHeight = 2450;
    }),
    expect: [
      {
        ...stop,
        part: 'ceiling',
        subjects: ['hood'],
        measured: 63.6,
        says: 'The hood reaches 2 ½″ above the ceiling. Lower it, or make it lower.',
      },
    ],
  },
  {
    name: 'a ceiling that is not known',
    plan: linePlan({}, (plan) => {
      plan.room.ceilingHeight = null;
    }),
    expect: [{ ...clear, says: 'Everything stands inside the walls.' }],
  },
  { name: 'a column may stand in a wall', plan: linePlan({}, (plan) => addColumn(plan, 'column', 0, 3000)), expect: [clear] },
  { name: 'a run leaves the room at its outlet', plan: linePlan({ family: 'direct-vent' }), expect: [clear] },
  {
    name: 'a run turns up outside',
    plan: withRun([
      [4318.5, 288.5, 2600],
      [4318.5, -300, 2600],
      [4318.5, -300, 4000],
    ]),
    expect: [clear],
  },
  {
    name: 'a run, 178 mm across, that goes 300 mm beyond the wall and comes back',
    plan: withRun([
      [4318.5, 288.5, 2600],
      [4318.5, 2000, 2600],
      [-300, 2000, 2600],
      [-300, 3000, 2600],
      [800, 3000, 2600],
      [800, 4500, 2600],
    ]),
    expect: [{ ...stop, subjects: ['run'], measured: 388.9 }],
  },
]);
