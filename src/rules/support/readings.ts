import type { FigureReading } from '../figure';
import type { Message } from '../message';
import type { Refusal } from '../refusal';

/** A figure that waits for an input: what it is called, and where it stands in the plan. */
export const askFor = (subjects: string[], input: Message, path: (string | number)[]): FigureReading => ({
  subjects,
  value: null,
  ask: { input, path },
  how: null,
});

/** A figure that rests on another which refuses, for that one's reason. */
export const refuse = (subjects: string[], refusal: Refusal): FigureReading => ({ subjects, value: null, refusal, how: null });

/** The notes that apply; nothing where none does. */
export function notesOf(...messages: (Message | null)[]): Pick<FigureReading, 'notes'> {
  const notes = messages.filter((message) => message !== null);
  return notes.length === 0 ? {} : { notes };
}
