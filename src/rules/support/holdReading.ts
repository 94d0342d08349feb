import type { Measurement } from '../check';
import type { FigureReading } from '../figure';
import { createMessages, type Message } from '../message';
import type { Refusal } from '../refusal';

/** What is said of a figure that is not known. */
export interface HoldingMessages {
  'rule/to-know': { what: Message; ask: Message };
  'rule/to-hold-against': { what: Message; ask: Message };
  'rule/not-worked-out': { what: Message; refusal: Refusal | null };
}

const message = createMessages<HoldingMessages>();

/** What a check adds to a figure's reading. */
export interface Holding extends Omit<Measurement, 'subjects' | 'value' | 'ask' | 'message'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the figure is called in a sentence: `the flow pressure of the rinse`. */
  what: Message;
  /** What is said when the figure is known. */
  message: (value: number) => Message;
}

/**
 * Holds the reading of a figure against a limit. Where the figure waits for an input the check asks for the same; where the
 * formula does not hold for this plan the check cannot say, and gives the reason.
 */
export const holdReading = (reading: FigureReading, { what, message: known, ...holding }: Holding): Measurement => ({
  ...holding,
  subjects: holding.subjects ?? reading.subjects,
  value: reading.value,
  ask: reading.ask,
  message: reading.value === null ? sayUnknown(reading, what) : known(reading.value),
});

/** The same of a reading that is not known, or that nothing can be held against yet: it asks, or gives the reason. */
export const holdUnknown = (reading: FigureReading, { what, ...holding }: Omit<Holding, 'message'>): Measurement => ({
  ...holding,
  subjects: holding.subjects ?? reading.subjects,
  value: reading.value,
  ask: reading.ask,
  message: sayUnknown(reading, what),
});

const sayUnknown = ({ ask, refusal }: FigureReading, what: Message): Message =>
  ask === undefined
    ? message('rule/not-worked-out', { what, refusal: refusal ?? null })
    : message('rule/to-know', { what, ask: ask.input });
