import type { Order, Plan } from '../../plan';
import type { Line } from '../../scene';
import type { Formatter } from '../../units';
import type { MeasuredValue, Measurement, Repair } from '../check';
import { machinePlace } from './places';

type Field = Exclude<keyof Order, 'reference'>;

/** The order says nothing at all, not even its number: one question is enough. */
export const isOrderEmpty = (order: Order) => order.reference.trim() === '' && FIELDS.every((field) => order[field] === null);

const FIELD_NAMES: Record<Field, string> = {
  configuration: 'configuration',
  hand: 'hand',
  voltage: 'voltage',
  phase: 'phase',
  vent: 'vent type',
  clearOpening: 'clear door opening',
};
const FIELDS = Object.keys(FIELD_NAMES) as Field[];

/** The question for a field on which the order is silent, beside what the drawing has. */
export function askOrder(line: Line, part: string, field: Field, drawn: MeasuredValue, drawnWords: string): Measurement {
  const name = FIELD_NAMES[field];
  return {
    part,
    subjects: [line.machine.machine.id],
    place: machinePlace(line.machine),
    value: null,
    limit: drawn,
    ask: { input: `${name} on the order`, path: ['order', field] },
    say: () => `The order does not give the ${name}; the drawing has ${drawnWords}. Have it written into the quote.`,
  };
}

/** Writes what the drawing has into the order. */
export function correctOrder<F extends Field>(field: F, value: Plan['order'][F], words: (f: Formatter) => string): Repair {
  return {
    id: `correct-order-${part(field)}`,
    label: (f) => `Correct the order to ${words(f)}`,
    edit: (draft) => {
      draft.order[field] = value;
    },
  };
}

const part = (field: Field) => (field === 'clearOpening' ? 'clear-opening' : field);
