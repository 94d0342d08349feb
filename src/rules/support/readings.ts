import type { FigureReading } from '../figure';
import type { Message } from '../message';
import type { Refusal } from '../refusal';

/** A figure that waits for an input: what it is called, and where it stands in the plan. */
export const askFor = (subjects: string[], input: Message | string, path: (string | number)[]): FigureReading => ({
  subjects,
  value: null,
  ask: { input, path },
  how: null,
});

/** A figure that rests on another which refuses, for that one's reason. */
export const refuse = (subjects: string[], refusal: Refusal): FigureReading => ({ subjects, value: null, refusal, how: null });

/** The note of a reading, told now. */
export const readNote = ({ note }: FigureReading): string | null => (typeof note === 'function' ? note() : (note ?? null));

/** The sentences that apply, as one note; nothing where none does. */
export function noteOf(...sentences: (string | null)[]): Pick<FigureReading, 'note'> {
  let words: string | null = null;
  for (const text of sentences) if (text !== null) words = words === null ? text : `${words} ${text}`;
  return words === null ? {} : { note: words };
}

/** The notes that apply; nothing where none does. */
export function notesOf(...messages: (Message | null)[]): Pick<FigureReading, 'notes'> {
  const notes = messages.filter((message) => message !== null);
  return notes.length === 0 ? {} : { notes };
}
