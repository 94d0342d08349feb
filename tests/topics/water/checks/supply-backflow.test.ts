import { createPlan, type Machine } from '../../../../src/plan';
import { check } from '../../../../src/topics/water/checks/supply-backflow';
import { describeCheck } from '../../../support/cases';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
/** Nobody has measured an air gap. */
const kept = (backflow: Machine['hookUp']['backflow']) => hookedPlan({ backflow, supplyGap: null });
/** Measured, water by ¾ in. */
const measured = (supplyGap: number) => hookedPlan({ backflow: 'air-gap', supplyGap });
const device = { verdict: 'clear', subjects, measured: true, limit: true } as const;
const gap = (verdict: 'stop' | 'watch' | 'clear', value: number) =>
  ({ part: 'gap', verdict, subjects, measured: value, limit: 25.4 }) as const;
const inlet = (inches: number) => ({ id: 'water', kind: 'cold-water', x: 110, y: 60, z: 320, size: inches * 25.4, note: '' }) as const;

/** An integral air gap or a backflow preventer (Chicago, read); the gap from the figure: 1½ in over ¾ in, never less than 1 in (read). */
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
    plan: hookedSheetPlan({ connections: [inlet(1)] }, { backflow: 'air-gap', supplyGap: null }),
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
    plan: hookedSheetPlan({ connections: [inlet(0)] }, { backflow: 'air-gap', supplyGap: null }),
    expect: [{ verdict: 'clear', subjects, measured: true, says: 'An air gap keeps the water of the machine out of the building’s.' }],
  },
  {
    name: 'a gap of 1½ in, measured',
    plan: measured(38.1),
    expect: [
      { ...device, says: 'An air gap keeps the water of the machine out of the building’s.' },
      {
        ...gap('clear', 38.1),
        says: 'The water of the machine comes out 1 ½″ above the rim where it would flood; 1 ½″ is needed.',
      },
    ],
  },
  {
    name: 'a gap of 1¼ in, which a narrower outlet may do with',
    plan: measured(31.75),
    expect: [
      {
        ...gap('watch', 31.75),
        says: 'The water of the machine comes out 1 ¼″ above the rim where it would flood; an outlet as wide as its pipe needs 1 ½″. See how wide the outlet is: a narrower one needs less.',
      },
      device,
    ],
  },
  {
    name: 'a gap of ¾ in',
    plan: measured(19.05),
    expect: [
      {
        ...gap('stop', 19.05),
        says: 'The water of the machine comes out ¾″ above the rim where it would flood; never is less than 1″ enough. Have a licensed plumber see to it.',
      },
      device,
    ],
  },
  {
    name: 'a gap of 1 in, on a sheet that gives its water no size',
    plan: hookedSheetPlan({ connections: [inlet(0)] }, { backflow: 'air-gap', supplyGap: 25.4 }),
    expect: [device, gap('clear', 25.4)],
  },
  {
    name: 'a preventer, and a gap besides',
    plan: hookedPlan({ backflow: 'preventer', supplyGap: 10 }),
    expect: [device],
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
