import type { Vent } from '../../../catalog';
import type { Order } from '../../../plan';
import {
  askOrder,
  type Check,
  correctOrder,
  correctOrderId,
  createMessages,
  holdsAtMost as isAtMost,
  isOrderEmpty,
  type Measurement,
  machinePlace,
} from '../../../rules';
import type { Line } from '../../../scene';

/** Quotes give the opening in whole inches or centimetres: a difference up to ¼ in (6.35 mm) is rounding. */
const OPENING_ROUNDING = 6.35;

export const check: Check = {
  id: 'order-fits-machine',
  order: 30,
  title: 'The order fits the machine drawn',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'data-sheet', text: 'Vent type and clear door opening on the data sheet of the machine drawn.' },
  why: 'Vent type and door height cannot be changed on site. A difference means another machine.',
  measure: ({ plan, lines }) => {
    if (isOrderEmpty(plan.order)) return [];
    return lines.flatMap((line) => [measureVent(line, plan.order.vent), measureOpening(line, plan.order.clearOpening)]);
  },
};

/** What is said of the order beside the machine drawn. */
export interface OrderFitsMachineMessages {
  'order-fits-machine/same-vent': { vent: Vent['kind'] };
  'order-fits-machine/other-vent': { ordered: Vent['kind']; drawn: Vent['kind'] };
  'order-fits-machine/opening-not-given': { drawn: number };
  'order-fits-machine/same-opening': { opening: number };
  'order-fits-machine/other-opening': { ordered: number; drawn: number };
  /** What the drawing has, within a sentence. */
  'order-fits-machine/drawn-vent': { vent: Vent['kind'] };
  'order-fits-machine/drawn-opening': { opening: number };
}

const say = createMessages<OrderFitsMachineMessages>();

function measureVent(line: Line, ordered: Order['vent']): Measurement {
  const drawn = line.machine.sheet.vent.kind;
  const drawnVent = say('order-fits-machine/drawn-vent', { vent: drawn });
  if (ordered === null) return askOrder(line, 'vent', 'vent', drawn, drawnVent);
  const isSame = ordered === drawn;
  return {
    value: ordered,
    limit: drawn,
    message: isSame ? say('order-fits-machine/same-vent', { vent: drawn }) : say('order-fits-machine/other-vent', { ordered, drawn }),
    ...(isSame ? {} : { repairs: { ids: [correctOrderId('vent')], find: () => [correctOrder('vent', drawn, drawnVent)] } }),
    ...about(line, 'vent'),
  };
}

function measureOpening(line: Line, ordered: number | null): Measurement {
  const drawn = line.machine.sheet.clearOpening;
  const common = { unit: 'mm', relation: 'at-most', limit: OPENING_ROUNDING, ...about(line, 'clear-opening') } as const;
  const drawnOpening = say('order-fits-machine/drawn-opening', { opening: drawn });
  if (ordered === null) {
    const message = say('order-fits-machine/opening-not-given', { drawn });
    return { ...askOrder(line, 'clear-opening', 'clearOpening', drawn, drawnOpening), ...common, message };
  }
  const difference = Math.abs(ordered - drawn);
  const isSame = isAtMost(difference, OPENING_ROUNDING);
  return {
    value: difference,
    message: isSame
      ? say('order-fits-machine/same-opening', { opening: drawn })
      : say('order-fits-machine/other-opening', { ordered, drawn }),
    ...(isSame
      ? {}
      : { repairs: { ids: [correctOrderId('clearOpening')], find: () => [correctOrder('clearOpening', drawn, drawnOpening)] } }),
    ...common,
  };
}

const about = (line: Line, part: string) => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
});
