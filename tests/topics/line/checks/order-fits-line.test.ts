import { check } from '../../../../src/topics/line/checks/order-fits-line';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';

const subjects = ['machine'];
const configuration = { verdict: 'clear', part: 'configuration', subjects, measured: 'corner', limit: 'corner' } satisfies ExpectedFinding;
const hand = { verdict: 'clear', part: 'hand', subjects, measured: 'left-to-right' } satisfies ExpectedFinding;

/** Conversions of different lengths, to tell them apart. */
const STEPS = { toCorner: ['Lift.', 'Turn.', 'Set.'], toStraight: ['Turn back.'] };

describeCheck(check, [
  {
    name: 'a quote that agrees',
    plan: linePlan(),
    expect: [
      { ...configuration, says: 'Order and drawing agree: a corner.' },
      { ...hand, says: 'Order and drawing agree: left to right.' },
    ],
  },
  {
    name: 'straight ordered, a corner drawn: the machine is turned on site in eight steps',
    plan: linePlan({}, ({ order }) => void (order.configuration = 'straight')),
    expect: [
      {
        ...configuration,
        verdict: 'stop',
        measured: 'straight',
        repairs: ['correct-order-configuration'],
        says: 'The order says straight through; the drawing is a corner. Correct the order, or convert the machine on site: 8 steps.',
      },
      hand,
    ],
  },
  {
    name: 'a corner ordered, straight drawn, on a family without the link: seven steps',
    plan: linePlan({ configuration: 'straight', family: 'fresh-water-hot-water' }, ({ order }) => void (order.configuration = 'corner')),
    expect: [
      {
        ...configuration,
        verdict: 'stop',
        limit: 'straight',
        repairs: ['correct-order-configuration'],
        says: 'The order says a corner; the drawing is straight through. Correct the order, or convert the machine on site: 7 steps.',
      },
      hand,
    ],
  },
  ...(['straight', 'left-front'] as const).map((drawn) => ({
    name: `${drawn} drawn: the steps are those of the way from the order to the drawing`,
    plan: linePlan({ configuration: drawn, family: ownDataSheet({ conversion: STEPS }) }, ({ order }) => {
      order.configuration = drawn === 'straight' ? 'corner' : 'straight';
    }),
    expect: [
      {
        ...configuration,
        verdict: 'stop' as const,
        measured: drawn === 'straight' ? 'corner' : 'straight',
        limit: drawn === 'straight' ? 'straight' : 'corner',
        repairs: ['correct-order-configuration'],
        says:
          drawn === 'straight'
            ? 'The order says a corner; the drawing is straight through. Correct the order, or convert the machine on site: 1 step.'
            : 'The order says straight through; the drawing is a corner. Correct the order, or convert the machine on site: 3 steps.',
      },
      hand,
    ],
  })),
  {
    name: 'the other hand ordered, no room to turn the line',
    plan: linePlan({}, ({ order }) => void (order.hand = 'right-to-left')),
    expect: [
      {
        ...hand,
        verdict: 'stop',
        measured: 'right-to-left',
        repairs: ['correct-order-hand'],
        says: 'The order says right to left; the line runs left to right. Tables built to the order would not fit their sides.',
      },
      configuration,
    ],
  },
  {
    name: 'the other hand ordered, tables that can change places',
    plan: linePlan({ hand: 'right-to-left' }, (plan) => {
      plan.order.hand = 'left-to-right';
      for (const corner of plan.room.outline) {
        if (corner.x < 500) corner.x -= 2500;
        if (corner.y > 500) corner.y += 2500;
      }
      plan.things = [];
    }),
    expect: [
      {
        verdict: 'stop',
        part: 'hand',
        subjects,
        measured: 'left-to-right',
        limit: 'right-to-left',
        repairs: ['correct-order-hand', 'reverse-hand'],
      },
      configuration,
    ],
  },
  {
    name: 'a quote that names neither',
    plan: linePlan({}, ({ order }) => Object.assign(order, { configuration: null, hand: null })),
    expect: [
      {
        verdict: 'ask',
        part: 'configuration',
        subjects,
        measured: null,
        limit: 'corner',
        asks: 'order.configuration',
        says: 'The order does not give the configuration; the drawing has a corner. Have it written into the quote.',
      },
      { verdict: 'ask', part: 'hand', subjects, measured: null, asks: 'order.hand' },
    ],
  },
  {
    name: 'no quote at all: one question',
    plan: linePlan({}, ({ order }) =>
      Object.assign(order, { reference: ' ', configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null }),
    ),
    expect: [
      {
        verdict: 'ask',
        part: 'order',
        subjects,
        measured: null,
        asks: 'order',
        says: 'There is no order to compare with the drawing. Type in what the quote says.',
      },
    ],
  },
  {
    name: 'a quote with a number and nothing else',
    plan: linePlan({}, ({ order }) =>
      Object.assign(order, {
        reference: 'Q-1',
        configuration: null,
        hand: null,
        voltage: null,
        phase: null,
        vent: null,
        clearOpening: null,
      }),
    ),
    expect: [
      { verdict: 'ask', part: 'configuration', subjects, measured: null, asks: 'order.configuration' },
      { verdict: 'ask', part: 'hand', subjects, measured: null, asks: 'order.hand' },
    ],
  },
  {
    name: 'no configuration drawn: nothing to compare',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [],
  },
]);
