import type { Run } from '../../../../src/plan';
import { check } from '../../../../src/topics/duct/checks/run-reaches-outside';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';

/** The collar is at 4318.5, 288.5, 1930; the wall behind it at y 0, the ceiling at 3000. */
const run = { subjects: ['run', 'machine'], limit: true } as const;

const endingAt = (y: number, z: number, outlet: Run['outlet'], ceilingHeight: number | null = 3000) =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    plan.room.ceilingHeight = ceilingHeight;
    Object.assign(runOf(plan), { outlet, points: [{ x: 4318.5, y: 288.5, z }, ...(y === 288.5 ? [] : [{ x: 4318.5, y, z }])] });
  });

describeCheck(check, [
  {
    name: 'out through the wall',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [{ ...run, verdict: 'clear', measured: true, says: 'The run ends in the open air.' }],
  },
  { name: 'at the face of the wall', plan: endingAt(0, 2600, 'wall'), expect: [{ ...run, verdict: 'clear', measured: true }] },
  { name: '1 mm short of it is drawing', plan: endingAt(1, 2600, 'wall'), expect: [{ ...run, verdict: 'clear', measured: true }] },
  {
    name: '50 mm short of it',
    plan: endingAt(50, 2600, 'wall'),
    expect: [
      {
        ...run,
        verdict: 'stop',
        measured: false,
        says: 'The run ends in the room, not outside the wall. Draw it on to the open air.',
      },
    ],
  },
  { name: 'up through the roof', plan: endingAt(288.5, 4000, 'roof'), expect: [{ ...run, verdict: 'clear', measured: true }] },
  {
    name: 'under the ceiling, for the roof',
    plan: endingAt(288.5, 2900, 'roof'),
    expect: [
      { ...run, verdict: 'stop', measured: false, says: 'The run ends in the room, not above the ceiling. Draw it on to the open air.' },
    ],
  },
  {
    name: 'for the roof, and the ceiling is not known',
    plan: endingAt(288.5, 4000, 'roof', null),
    expect: [{ ...run, verdict: 'ask', measured: null, asks: 'room.ceilingHeight' }],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
