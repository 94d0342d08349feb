import type { Order, Plan } from '../../plan';
import type { Line } from '../../scene';
import type { Formatter } from '../../units';
import type { MeasuredValue, Measurement, Repair } from '../check';
import { createMessages, type Message } from '../message';
import { machinePlace } from './places';

export type OrderField = Exclude<keyof Order, 'reference'>;

/** What is said of the order, whatever its field. `drawn` and `to`: what the drawing has. */
export interface OrderMessages {
  'order/ask': { field: OrderField };
  'order/silent': { field: OrderField; drawn: Message | string };
  'repair/correct-order': { to: Message };
}

const message = createMessages<OrderMessages>();

/** The order says nothing at all, not even its number: one question is enough. */
export const isOrderEmpty = (order: Order) => order.reference.trim() === '' && FIELDS.every((field) => order[field] === null);

const PARTS: Readonly<Record<OrderField, string>> = {
  configuration: 'configuration',
  hand: 'hand',
  voltage: 'voltage',
  phase: 'phase',
  vent: 'vent',
  clearOpening: 'clear-opening',
};
const FIELDS = Object.keys(PARTS) as OrderField[];

/** The question for a field on which the order is silent, beside what the drawing has. */
export const askOrder = (line: Line, part: string, field: OrderField, drawn: MeasuredValue, drawnAs: Message | string): Measurement => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
  value: null,
  limit: drawn,
  ask: { input: message('order/ask', { field }), path: ['order', field] },
  message: message('order/silent', { field, drawn: drawnAs }),
});

/** Writes what the drawing has into the order. */
export const correctOrder = <F extends OrderField>(
  field: F,
  value: Plan['order'][F],
  to: Message | ((f: Formatter) => string),
): Repair => ({
  id: correctOrderId(field),
  label: typeof to === 'function' ? (f) => `Correct the order to ${to(f)}` : message('repair/correct-order', { to }),
  edit: (draft) => {
    draft.order[field] = value;
  },
});

export const correctOrderId = (field: OrderField) => `correct-order-${PARTS[field]}`;
