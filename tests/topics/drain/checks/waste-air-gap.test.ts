import { check } from '../../../../src/topics/drain/checks/waste-air-gap';
import { describeCheck } from '../../../support/cases';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
const found = (verdict: 'clear' | 'stop', measured: number) => ({ verdict, subjects, measured, limit: 0.1016 });
const drain = (id: string, inches: number) => ({ id, kind: 'drain', x: 110, y: 60, z: 190, size: inches * 25.4, note: '' }) as const;

/** Twice the waste pipe of 2 in (Chicago, read; UFC 4-722-01), and an inch at least. */
describeCheck(check, [
  {
    name: '4 in below 2 in',
    plan: hookedPlan({ airGap: 101.6 }),
    expect: [{ ...found('clear', 0.1016), says: 'The waste of the machine ends 4″ above the rim; the air gap must be 4″.' }],
  },
  {
    name: '3 in below 2 in',
    plan: hookedPlan({ airGap: 76.2 }),
    expect: [
      {
        ...found('stop', 0.0762),
        repairs: ['widen-air-gap'],
        says: 'The waste of the machine ends 3″ above the rim; the air gap must be 4″. Cut the pipe 1″ shorter.',
      },
    ],
  },
  {
    name: '4 in below a waste pipe of 3 in, wider than the outlet',
    plan: hookedPlan({ airGap: 101.6, drainBore: 76.2 }),
    expect: [{ verdict: 'stop', subjects, measured: 0.1016, limit: 0.1524, repairs: ['widen-air-gap'] }],
  },
  {
    name: 'a waste pipe thinner than the outlet: by the outlet',
    plan: hookedPlan({ airGap: 101.6, drainBore: 38.1 }),
    expect: [found('clear', 0.1016)],
  },
  { name: 'none', plan: hookedPlan({ airGap: 0 }), expect: [{ ...found('stop', 0), repairs: ['widen-air-gap'] }] },
  {
    name: 'an inch at least, below ⅜ in',
    plan: hookedSheetPlan({ connections: [drain('drain', 0.375)] }, { airGap: 25.4, drainBore: null }),
    expect: [{ verdict: 'clear', subjects, measured: 0.0254, limit: 0.0254 }],
  },
  {
    name: 'two drains, one wider',
    plan: hookedSheetPlan({ connections: [drain('tank', 1.5), drain('scrap', 3)] }, { airGap: 101.6, drainBore: null }),
    expect: [
      { verdict: 'stop', part: 'scrap', subjects, measured: 0.1016, limit: 0.1524, repairs: ['widen-air-gap'] },
      { verdict: 'clear', part: 'tank', subjects, measured: 0.1016, limit: 0.0762 },
    ],
  },
  {
    name: 'the gap is not known',
    plan: hookedPlan({ airGap: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.airGap' }],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.waste' }],
  },
  { name: 'connected directly', plan: hookedPlan({ waste: 'direct' }), expect: [] },
]);
