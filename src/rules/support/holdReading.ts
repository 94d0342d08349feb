import type { Formatter } from '../../units';
import type { Measurement } from '../check';
import type { FigureReading } from '../figure';
import { createMessages, type Message } from '../message';
import type { Refusal } from '../refusal';
import { refusalWords } from '../refusalWords';

/** What is said of a figure that is not known. */
export interface HoldingMessages {
  'rule/to-know': { what: Message; ask: Message };
  'rule/to-hold-against': { what: Message; ask: Message };
  'rule/not-worked-out': { what: Message; refusal: Refusal | null };
}

const message = createMessages<HoldingMessages>();

/** What a check adds to a figure's reading. */
export interface Holding extends Omit<Measurement, 'subjects' | 'value' | 'ask' | 'say' | 'message'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the figure is called in a sentence: `the flow pressure of the rinse`. */
  what?: Message;
  name?: string;
  /** The sentence when the figure is known. */
  message?: (value: number) => Message;
  say?: (value: number, f: Formatter) => string;
}

/**
 * Holds the reading of a figure against a limit. Where the figure waits for an input the check asks for the same; where the
 * formula does not hold for this plan the check cannot say, and gives the reason.
 */
export function holdReading(reading: FigureReading, holding: Holding): Measurement {
  const measured: Measurement = {
    part: holding.part,
    subjects: holding.subjects ?? reading.subjects,
    place: holding.place,
    elevation: holding.elevation,
    value: reading.value,
    limit: holding.limit,
    watchLimit: holding.watchLimit,
    severity: holding.severity,
    ask: reading.ask,
    source: holding.source,
    relation: holding.relation,
    unit: holding.unit,
    repairs: holding.repairs,
  };
  return holding.what === undefined
    ? { ...measured, say: (f) => sayHeld(reading, holding, f) }
    : { ...measured, message: messageOf(reading, holding.what, holding.message) };
}

function messageOf({ value, ask, refusal }: FigureReading, what: Message, known: Holding['message']): Message {
  if (value !== null && known !== undefined) return known(value);
  if (ask !== undefined) return message('rule/to-know', { what, ask: ask.input as Message });
  return message('rule/not-worked-out', { what, refusal: refusal ?? null });
}

function sayHeld({ value, ask, refusal }: FigureReading, { name, say }: Holding, f: Formatter): string {
  if (value !== null) return say?.(value, f) ?? '';
  if (ask !== undefined) return `To know ${name}, say the ${wordsOfAsk(ask.input)}.`;
  return `Can’t work out ${name}: ${refusal === undefined ? 'an input is missing' : refusalWords(refusal, f)}.`;
}

/** Of a message its words are not known here: it goes through the text tables, and the check that says it with it. */
export const wordsOfAsk = (input: Message | string): string => {
  if (typeof input !== 'string') throw new Error(`“${input.key}” is said in words`);
  return input;
};
