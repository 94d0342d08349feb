import type { Formatter } from '../../units';
import type { Measurement } from '../check';
import type { FigureReading } from '../figure';
import { createMessages, type Message } from '../message';
import { refusalWords } from '../refusalWords';
import { type HoldingMessages, wordsOfAsk } from './holdReading';

const message = createMessages<HoldingMessages>();

/** What the plan says, and where it would be said. */
export interface Said {
  value: number | null;
  input: Message | string;
  path: (string | number)[];
}

/** What a check adds when a figure is its limit. */
export interface Bound extends Omit<Measurement, 'subjects' | 'value' | 'limit' | 'ask' | 'say' | 'message'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the limit is called in a sentence: `the breaker that it needs`. */
  what?: Message;
  name?: string;
  /** The sentence when both are known. */
  message?: (value: number, limit: number) => Message;
  say?: (value: number, limit: number, f: Formatter) => string;
}

/** Holds what the plan says against a figure. What the figure waits for is asked for first; then what the plan does not say. */
export function holdAgainst(
  said: Said,
  reading: Pick<FigureReading, 'subjects' | 'value' | 'ask' | 'refusal'>,
  { what, name, message: known, say, ...bound }: Bound,
): Measurement {
  const { value: limit } = reading;
  const ask = reading.ask ?? (limit !== null && said.value === null ? { input: said.input, path: said.path } : undefined);
  const held: Measurement = { ...bound, subjects: bound.subjects ?? reading.subjects, value: limit === null ? null : said.value, limit };
  if (ask !== undefined) held.ask = ask;
  if (what === undefined) return { ...held, say: (f) => sayHeld(said.value, reading, ask, { name, say }, f) };
  if (said.value !== null && limit !== null && known !== undefined) return { ...held, message: known(said.value, limit) };
  return {
    ...held,
    message:
      ask === undefined
        ? message('rule/not-worked-out', { what, refusal: reading.refusal ?? null })
        : message('rule/to-hold-against', { what, ask: ask.input as Message }),
  };
}

function sayHeld(
  value: number | null,
  { value: limit, refusal }: Pick<FigureReading, 'value' | 'refusal'>,
  ask: Measurement['ask'],
  { name, say }: Pick<Bound, 'name' | 'say'>,
  f: Formatter,
): string {
  if (value !== null && limit !== null) return say?.(value, limit, f) ?? '';
  return ask === undefined
    ? `Can’t work out ${name}: ${refusal === undefined ? 'an input is missing' : refusalWords(refusal, f)}.`
    : `To hold it against ${name}, say the ${wordsOfAsk(ask.input)}.`;
}
