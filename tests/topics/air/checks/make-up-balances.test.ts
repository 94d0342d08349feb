import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/air/checks/make-up-balances';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

/** A hood that draws 1 m³/s, with so much make-up air and general exhaust. */
const room = (makeUp: number | null, roomExhaust: number | null = 0, hood: number | null = 1) =>
  linePlan({}, (plan) => {
    hoodOf(plan).exhaust = hood;
    Object.assign(plan.air, { makeUp, roomExhaust });
  });
const found = (verdict: ExpectedFinding['verdict'], part: string, measured: number, limit: number): ExpectedFinding => ({
  verdict,
  part,
  subjects: ['machine'],
  measured,
  limit,
});
const interlock: ExpectedFinding = { verdict: 'clear', part: 'interlock', subjects: ['machine'], measured: true, limit: true };
/** A tenth less comes in, and it starts with the exhaust or not. */
const locked = (interlocked: boolean | null) =>
  linePlan({}, (plan) => {
    hoodOf(plan).exhaust = 1;
    Object.assign(plan.air, { makeUp: 0.9, roomExhaust: 0, interlocked });
  });
const asks = (path: string): ExpectedFinding => ({ verdict: 'ask', part: 'negative', subjects: ['machine'], measured: null, asks: path });

// VA manual 3.12.6: the dish room below the rest; IMC 2006 508.1: about equal; plan reviewers: up to 20 % missing; UFC 3-410-01FA: about 75 %.
describeCheck(check, [
  {
    name: 'a tenth less comes in',
    plan: room(0.9),
    expect: [found('clear', 'negative', 0.1, 0), found('clear', 'make-up', 0.9, 0.8), interlock, found('clear', 'at-machines', 1, 0.75)],
  },
  {
    name: 'a fifth less is the most',
    plan: room(0.8),
    expect: [found('clear', 'negative', 0.2, 0), found('clear', 'make-up', 0.8, 0.8), interlock, found('clear', 'at-machines', 1, 0.75)],
  },
  {
    name: 'a fourth less',
    plan: room(0.75),
    expect: [
      {
        ...found('watch', 'make-up', 0.75, 0.8),
        says: '1589 cfm of make-up air stand against 2119 cfm of exhaust, and about 1695 cfm are looked for: bring in 106 cfm more.',
      },
      found('clear', 'negative', 0.25, 0),
      interlock,
      found('clear', 'at-machines', 1, 0.75),
    ],
  },
  {
    name: 'as much comes in as goes out',
    plan: room(1),
    expect: [found('stop', 'negative', 0, 0), found('clear', 'make-up', 1, 0.8), interlock, found('clear', 'at-machines', 1, 0.75)],
  },
  {
    name: 'more comes in',
    plan: room(1.1),
    expect: [
      {
        ...found('stop', 'negative', -0.1, 0),
        says: 'The dish room blows 212 cfm out into the rooms about it, so its vapour goes into the next rooms. Blow in less make-up air, or draw out more.',
      },
      found('clear', 'make-up', 1.1, 0.8),
      interlock,
      found('clear', 'at-machines', 1, 0.75),
    ],
  },
  {
    name: 'more at the ceiling than at the machine',
    plan: room(1.8, 1.2),
    expect: [
      {
        ...found('watch', 'at-machines', 1 / 2.2, 0.75),
        says: '45 % of the exhaust is drawn at the machines, the rest at the ceiling; about 75 % is looked for. Draw more at the machine and less at the ceiling.',
      },
      found('clear', 'negative', 0.4, 0),
      found('clear', 'make-up', 1.8, 1.76),
      interlock,
    ],
  },
  {
    name: 'a run draws as its sheet needs',
    plan: linePlan({ family: 'direct-vent' }, ({ air }) => Object.assign(air, { makeUp: 0.17, roomExhaust: 0.05 })),
    expect: [
      found('watch', 'make-up', 0.17, 0.2),
      found('clear', 'negative', 0.08, 0),
      interlock,
      found('clear', 'at-machines', 0.8, 0.75),
    ],
  },
  {
    name: 'neither hood nor run: the ceiling alone',
    plan: linePlan({ family: 'heat-recovery' }, ({ air }) => Object.assign(air, { makeUp: 0.2, roomExhaust: 0.25 })),
    expect: [found('clear', 'negative', 0.05, 0), found('clear', 'make-up', 0.2, 0.2), interlock],
  },
  { name: 'the make-up air is not known', plan: room(null), expect: [asks('air.makeUp'), found('clear', 'at-machines', 1, 0.75)] },
  { name: 'the exhaust of the hood is not known', plan: room(0.9, 0, null), expect: [asks('hoods.0.exhaust'), interlock] },
  { name: 'the general exhaust is not known', plan: room(0.9, null), expect: [asks('air.roomExhaust'), interlock] },
  // NYC Mechanical Code 508.1 and Minn. R. 1346.0508: interlocked with the exhaust.
  {
    name: 'it does not start with the exhaust',
    plan: locked(false),
    expect: [
      {
        ...interlock,
        verdict: 'stop',
        measured: false,
        repairs: ['interlock-make-up'],
        says: 'The make-up air does not start with the exhaust: one without the other blows vapour into the next rooms or starves the hood. Interlock the two.',
      },
      found('clear', 'negative', 0.1, 0),
      found('clear', 'make-up', 0.9, 0.8),
      found('clear', 'at-machines', 1, 0.75),
    ],
  },
  {
    name: 'nobody knows whether it does',
    plan: locked(null),
    expect: [
      { verdict: 'ask', part: 'interlock', subjects: ['machine'], measured: null, asks: 'air.interlocked' },
      found('clear', 'negative', 0.1, 0),
      found('clear', 'make-up', 0.9, 0.8),
      found('clear', 'at-machines', 1, 0.75),
    ],
  },
  {
    name: 'no make-up air: nothing to interlock',
    plan: room(0),
    expect: [found('watch', 'make-up', 0, 0.8), found('clear', 'negative', 1, 0), found('clear', 'at-machines', 1, 0.75)],
  },
  { name: 'no machine', plan: linePlan({}, (plan: Plan) => void (plan.machines = [])), expect: [] },
]);
