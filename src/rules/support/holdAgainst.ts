import type { Measurement } from '../check';
import type { FigureReading } from '../figure';
import { createMessages, type Message } from '../message';
import type { HoldingMessages } from './holdReading';

const message = createMessages<HoldingMessages>();

/** What the plan says, and where it would be said. */
export interface Said {
  value: number | null;
  input: Message;
  path: (string | number)[];
}

/** What a check adds when a figure is its limit. */
export interface Bound extends Omit<Measurement, 'subjects' | 'value' | 'limit' | 'ask' | 'message'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the limit is called in a sentence: `the breaker that it needs`. */
  what: Message;
  /** What is said when both are known. */
  message: (value: number, limit: number) => Message;
}

type Read = Pick<FigureReading, 'subjects' | 'value' | 'ask' | 'refusal'>;

/** Holds what the plan says against a figure. What the figure waits for is asked for first; then what the plan does not say. */
export function holdAgainst({ value, input, path }: Said, reading: Read, { what, message: known, ...bound }: Bound): Measurement {
  const { value: limit } = reading;
  const ask = reading.ask ?? (limit !== null && value === null ? { input, path } : undefined);
  return {
    ...bound,
    subjects: bound.subjects ?? reading.subjects,
    value: limit === null ? null : value,
    limit,
    message: value !== null && limit !== null ? known(value, limit) : sayOpen(ask, reading.refusal, what),
    ...(ask === undefined ? {} : { ask }),
  };
}

const sayOpen = (ask: Measurement['ask'], refusal: FigureReading['refusal'], what: Message): Message =>
  ask === undefined
    ? message('rule/not-worked-out', { what, refusal: refusal ?? null })
    : message('rule/to-hold-against', { what, ask: ask.input });
