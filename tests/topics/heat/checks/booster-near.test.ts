import { createPlan, type Machine } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/booster-near';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const apart = (change: Partial<Machine['hookUp']>) =>
  hookedPlan({ boosterPlace: 'apart', boosterWay: 1524, boosterBelow: 152.4, boosterOffWall: true, ...change });
const of = (
  part: string,
  verdict: ExpectedFinding['verdict'],
  measured: number | boolean | null,
  limit: number | boolean,
): ExpectedFinding => ({ part, verdict, subjects: ['machine'], measured, limit });
const way = of('way', 'clear', 1524, 1524);
const floor = of('floor', 'clear', 152.4, 152.4);
const wall = of('wall', 'clear', true, true);

/** Usually within 5 ft (read); 6 in above the floor and off the wall (secondary). No more than a watch: usage, and a restatement. */
describeCheck(check, [
  {
    name: 'apart, 5 ft away, 6 in above the floor, off the wall',
    plan: apart({}),
    expect: [
      { ...way, says: 'The pipe from the booster of the machine is 5′ 0″ long; 5′ 0″ is usual at most.' },
      { ...floor, says: 'Under the booster of the machine 6″ is free; 6″ is wanted to clean there.' },
      { ...wall, says: 'A hand comes behind the booster of the machine: it is held off the wall.' },
    ],
  },
  {
    name: '5 ft 1 in away',
    plan: apart({ boosterWay: 1549.4 }),
    expect: [
      {
        ...of('way', 'watch', 1549.4, 1524),
        says: 'The pipe from the booster of the machine is 5′ 1″ long; usually it is 5′ 0″ at most. Set the booster nearer: what cools in the pipe goes into the rinse.',
      },
      floor,
      wall,
    ],
  },
  {
    name: '5 in above the floor',
    plan: apart({ boosterBelow: 127 }),
    expect: [
      {
        ...of('floor', 'watch', 127, 152.4),
        says: 'Under the booster of the machine 5″ is free, 1″ less than is wanted to clean there. Hang it higher, or give it legs.',
      },
      way,
      wall,
    ],
  },
  {
    name: 'against the wall',
    plan: apart({ boosterOffWall: false }),
    expect: [
      { ...of('wall', 'watch', false, true), says: 'No hand comes behind the booster of the machine: hold it off the wall.' },
      way,
      floor,
    ],
  },
  {
    name: 'apart, and no more is known',
    plan: apart({ boosterWay: null, boosterBelow: null, boosterOffWall: null }),
    expect: [
      { ...of('way', 'ask', null, 1524), asks: 'machines.0.hookUp.boosterWay' },
      { ...of('floor', 'ask', null, 152.4), asks: 'machines.0.hookUp.boosterBelow' },
      { ...of('wall', 'ask', null, true), asks: 'machines.0.hookUp.boosterOffWall' },
    ],
  },
  {
    name: 'not known where it stands',
    plan: apart({ boosterPlace: null }),
    expect: [
      {
        ...of('way', 'ask', null, 1524),
        asks: 'machines.0.hookUp.boosterPlace',
        says: 'Say whether the booster of the machine is in it or stands apart.',
      },
    ],
  },
  { name: 'in the machine', plan: apart({ boosterPlace: 'inside', boosterWay: null }), expect: [] },
  { name: 'no booster', plan: hookedSheetPlan({ booster: null }, { boosterPlace: null }), expect: [] },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
