import { check } from '../../../../src/topics/power/checks/power-agrees';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const voltage = { verdict: 'clear', part: 'voltage', subjects, measured: '208 V', limit: '208 V' } satisfies ExpectedFinding;
const phase = { verdict: 'clear', part: 'phase', subjects, measured: 'three-phase' } satisfies ExpectedFinding;
const supply = { verdict: 'clear', part: 'supply', subjects, measured: '208 V three-phase' } satisfies ExpectedFinding;
const silent = { reference: '', configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null };

describeCheck(check, [
  {
    name: 'order, machine and supply agree',
    plan: linePlan(),
    expect: [
      { ...voltage, says: 'Order and machine agree: 208 V.' },
      { ...phase, says: 'Order and machine agree: three-phase.' },
      { ...supply, says: 'Supply and machine agree: 208 V three-phase.' },
    ],
  },
  {
    name: 'another voltage ordered than drawn and supplied',
    plan: linePlan({}, ({ order }) => void (order.voltage = 240)),
    expect: [
      {
        ...voltage,
        verdict: 'stop',
        measured: '240 V',
        repairs: ['correct-order-voltage'],
        says: 'The order says 240 V; the machine drawn is 208 V. It cannot be changed on site: settle it with a licensed electrician before ordering.',
      },
      phase,
      supply,
    ],
  },
  {
    name: 'single-phase ordered and supplied, three-phase drawn: draw the other version',
    plan: linePlan({}, (plan) => {
      plan.order.phase = 1;
      plan.supply.phase = 1;
    }),
    expect: [
      { ...phase, verdict: 'stop', measured: 'single-phase', limit: 'three-phase', repairs: ['correct-order-phase', 'choose-v208-1ph'] },
      {
        ...supply,
        verdict: 'stop',
        measured: '208 V single-phase',
        limit: '208 V three-phase',
        repairs: ['choose-v208-1ph'],
        says: 'The building supplies 208 V single-phase; the machine drawn needs 208 V three-phase. Choose another version, or have a licensed electrician bring that supply.',
      },
      voltage,
    ],
  },
  {
    name: '208 V drawn, 480 V in the building, and an order that says nothing of power',
    plan: linePlan({}, ({ order, supply: building }) => {
      Object.assign(order, { voltage: null, phase: null });
      building.voltage = 480;
    }),
    expect: [
      { ...supply, verdict: 'stop', measured: '480 V three-phase', repairs: ['choose-v480-3ph'] },
      { verdict: 'ask', part: 'voltage', subjects, measured: null, asks: 'order.voltage' },
      { verdict: 'ask', part: 'phase', subjects, measured: null, limit: 'three-phase', asks: 'order.phase' },
    ],
  },
  {
    name: '230 V in the building is 240 V by another name, for the plate to decide',
    plan: linePlan({}, (plan) => {
      plan.machines[0]!.electrical = 'v240-3ph';
      plan.order.voltage = 240;
      plan.supply.voltage = 230;
    }),
    expect: [
      {
        ...supply,
        verdict: 'watch',
        measured: '230 V three-phase',
        limit: '240 V three-phase',
        says: 'The building supplies 230 V three-phase; the machine drawn needs 240 V three-phase. See that its plate lists that voltage.',
      },
      { ...voltage, measured: '240 V', limit: '240 V' },
      phase,
    ],
  },
  {
    name: '208 V is not 240 V',
    plan: linePlan({}, (plan) => void (plan.supply.voltage = 240)),
    expect: [{ ...supply, verdict: 'stop', measured: '240 V three-phase' }, voltage, phase],
  },
  {
    name: 'the supply is not known',
    plan: linePlan({}, (plan) => Object.assign(plan.supply, { voltage: null, phase: null })),
    expect: [
      {
        verdict: 'ask',
        part: 'supply',
        subjects,
        measured: null,
        limit: '208 V three-phase',
        asks: 'supply.voltage',
        says: 'The voltage in the building is not known; the machine drawn needs 208 V three-phase.',
      },
      voltage,
      phase,
    ],
  },
  {
    name: 'only the phase of the supply is not known',
    plan: linePlan({}, (plan) => void (plan.supply.phase = null)),
    expect: [{ verdict: 'ask', part: 'supply', subjects, measured: null, asks: 'supply.phase' }, voltage, phase],
  },
  {
    name: 'no version chosen: the one ordered and supplied is offered',
    plan: linePlan({}, (plan) => void (plan.machines[0]!.electrical = null)),
    expect: [
      {
        verdict: 'ask',
        part: 'order',
        subjects,
        measured: null,
        asks: 'machines.0.electrical',
        repairs: ['choose-v208-3ph'],
        says: 'No electrical version is chosen. The machine is made for 208 V three-phase, 208 V single-phase, 240 V three-phase or 480 V three-phase.',
      },
    ],
  },
  {
    name: 'no version chosen and nothing known: none is offered',
    plan: linePlan({}, (plan) => {
      plan.machines[0]!.electrical = null;
      Object.assign(plan.order, silent);
      Object.assign(plan.supply, { voltage: null, phase: null });
    }),
    expect: [{ verdict: 'ask', part: 'order', subjects, measured: null, asks: 'machines.0.electrical' }],
  },
  {
    name: 'no version chosen, and one ordered that is not made',
    plan: linePlan({ family: 'tall-door' }, (plan) => {
      plan.machines[0]!.electrical = null;
      plan.order.phase = 1;
    }),
    expect: [
      {
        verdict: 'stop',
        part: 'order',
        subjects,
        measured: '208 V single-phase',
        limit: '208 V three-phase, 240 V three-phase or 480 V three-phase',
        says: 'The order says 208 V single-phase; the machine is made for 208 V three-phase, 240 V three-phase or 480 V three-phase. Change the order.',
      },
    ],
  },
]);
