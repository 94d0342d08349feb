import { check } from '../../../../src/topics/line/checks/order-fits-machine';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const vent = { verdict: 'clear', part: 'vent', subjects, measured: 'hood' } satisfies ExpectedFinding;
const opening = { verdict: 'clear', part: 'clear-opening', subjects, measured: 0, limit: 6.35 } satisfies ExpectedFinding;
const inch = 25.4;

describeCheck(check, [
  {
    name: 'a quote that agrees',
    plan: linePlan(),
    expect: [
      { ...vent, says: 'Order and machine agree on the vapour: a hood over it.' },
      { ...opening, says: 'Order and machine agree: 1′ 5″ of clear door opening.' },
    ],
  },
  {
    name: 'direct vent ordered, a machine under a hood drawn',
    plan: linePlan({}, ({ order }) => void (order.vent = 'direct')),
    expect: [
      {
        ...vent,
        verdict: 'stop',
        measured: 'direct',
        limit: 'hood',
        repairs: ['correct-order-vent'],
        says: 'The order says its own fan and run; the machine drawn has a hood over it. The machine that comes would need a run to the open air.',
      },
      opening,
    ],
  },
  {
    name: 'a hood ordered, heat recovery drawn',
    plan: linePlan({ family: 'heat-recovery' }, ({ order }) => void (order.vent = 'hood')),
    expect: [{ ...vent, verdict: 'stop', limit: 'recovery', repairs: ['correct-order-vent'] }, opening],
  },
  {
    name: 'heat recovery ordered, direct vent drawn',
    plan: linePlan({ family: 'direct-vent' }, ({ order }) => void (order.vent = 'recovery')),
    expect: [{ ...vent, verdict: 'stop', measured: 'recovery', limit: 'direct', repairs: ['correct-order-vent'] }, opening],
  },
  {
    // Common practice: about 27 in of opening lets an 18 × 26 in sheet pan pass on edge; a standard door has 17 in.
    name: 'tall door drawn, the standard one ordered',
    plan: linePlan({ family: 'tall-door' }, ({ order }) => void (order.clearOpening = 17 * inch)),
    expect: [
      {
        ...opening,
        verdict: 'stop',
        measured: 10 * inch,
        repairs: ['correct-order-clear-opening'],
        says: 'The order gives 1′ 5″ of clear door opening; the machine drawn has 2′ 3″. Tall ware would not pass the machine that comes.',
      },
      vent,
    ],
  },
  {
    name: 'tall door ordered, the standard one drawn',
    plan: linePlan({}, ({ order }) => void (order.clearOpening = 27 * inch)),
    expect: [
      {
        ...opening,
        verdict: 'stop',
        measured: 10 * inch,
        repairs: ['correct-order-clear-opening'],
        says: 'The order gives 2′ 3″ of clear door opening; the machine drawn has 1′ 5″. The machine that comes stands taller than drawn.',
      },
      vent,
    ],
  },
  {
    name: 'rounded to a quarter inch: still the same door',
    plan: linePlan({}, ({ order }) => void (order.clearOpening = 17.25 * inch)),
    expect: [vent, { ...opening, measured: 0.25 * inch }],
  },
  {
    name: 'off by three eighths: another door',
    plan: linePlan({}, ({ order }) => void (order.clearOpening = 16.625 * inch)),
    expect: [{ ...opening, verdict: 'stop', measured: 0.375 * inch, repairs: ['correct-order-clear-opening'] }, vent],
  },
  {
    name: 'silent on both',
    plan: linePlan({}, ({ order }) => Object.assign(order, { vent: null, clearOpening: null })),
    expect: [
      { verdict: 'ask', part: 'vent', subjects, measured: null, limit: 'hood', asks: 'order.vent' },
      {
        verdict: 'ask',
        part: 'clear-opening',
        subjects,
        measured: null,
        asks: 'order.clearOpening',
        says: 'The order does not give the clear door opening; the machine drawn has 1′ 5″.',
      },
    ],
  },
  {
    name: 'no quote at all is asked for elsewhere',
    plan: linePlan({}, ({ order }) =>
      Object.assign(order, { reference: '', configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null }),
    ),
    expect: [],
  },
]);
