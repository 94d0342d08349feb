import { createPlan, type Machine } from '../../src/plan';
import { check } from '../../src/services/rules/supply-backflow';
import { describeCheck } from '../support/cases';
import { hookedPlan, hookedSheetPlan } from '../support/hookUpPlans';

const subjects = ['machine'];
const kept = (backflow: Machine['hookUp']['backflow']) => hookedPlan({ backflow });
const inlet = (inches: number) => ({ id: 'water', kind: 'cold-water', x: 110, y: 60, z: 320, size: inches * 25.4, note: '' }) as const;

/** An integral air gap or a backflow preventer (Chicago, read, W-AG7); the gap from the figure: 1½ in over ¾ in (read, W-F18, W-AG1). */
describeCheck(check, [
  {
    name: 'an air gap, water by ¾ in',
    plan: kept('air-gap'),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: true,
        limit: true,
        says: 'An air gap keeps the water of the machine out of the building’s; over the rim where it would flood and away from walls it needs 1 ½″ at least.',
      },
    ],
  },
  {
    name: 'an air gap, cold water by 1 in',
    plan: hookedSheetPlan({ connections: [inlet(1)] }, { backflow: 'air-gap' }),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: true,
        says: 'An air gap keeps the water of the machine out of the building’s; over the rim where it would flood and away from walls it needs 2″ at least.',
      },
    ],
  },
  {
    name: 'an air gap on a sheet that gives its water no size',
    plan: hookedSheetPlan({ connections: [inlet(0)] }, { backflow: 'air-gap' }),
    expect: [{ verdict: 'clear', subjects, measured: true, says: 'An air gap keeps the water of the machine out of the building’s.' }],
  },
  {
    name: 'a preventer',
    plan: kept('preventer'),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: true,
        says: 'A backflow preventer keeps the water of the machine out of the building’s. Have it tested as local code says.',
      },
    ],
  },
  {
    name: 'none',
    plan: kept('none'),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: false,
        limit: true,
        says: 'Nothing keeps the water of the machine out of the building’s. It needs an air gap of its own or a backflow preventer, fitted by a licensed plumber.',
      },
    ],
  },
  {
    name: 'not known',
    plan: kept(null),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        limit: true,
        asks: 'machines.0.hookUp.backflow',
        says: 'Say what keeps the water of the machine out of the building’s: an air gap or a preventer.',
      },
    ],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
