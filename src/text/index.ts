import type { Ask, Figure, Finding, Message, Repair } from '../rules';
import type { Formatter } from '../units';
import { FIELDS } from './en/fields';
import { OPTIONS } from './en/options';
import type { FieldWords } from './fieldWords';
import { createTeller, type Language, type Tell } from './wording';

export { powerWords, sentence } from './en/words';
export type { FieldKey, FieldWords } from './fieldWords';
export { figureWords } from './quantities/figureWords';
export { partWords } from './quantities/partWords';
export { refusalSentence } from './quantities/refusalSentence';
export { refusalWords } from './quantities/refusalWords';
export type { Language, Tell } from './wording';

/** The language that everything is said in; none until one is taken. */
let language: Language = {};

/** Takes a language for all that is said from now on. */
export function setLanguage(next: Language): void {
  language = next;
}

/** Fetches the words of plain US English and takes them: a page need not have them before it has something to say. */
export const loadEnglish = () => import('./en').then(({ EN }) => setLanguage(EN));

/** Words for messages, in a system of units. */
export const tellIn = (f: Formatter): Tell => createTeller(language, f);

const tell = (message: Message, f: Formatter) => tellIn(f)(message);

/** What a finding says: what is wrong, by how much, what to do; or that it holds. */
export const findingWords = ({ message }: Pick<Finding, 'message'>, f: Formatter): string => tell(message, f);

/** What a repair will do. */
export const repairWords = ({ label }: Repair, f: Formatter): string => tell(label, f);

/** What the missing input is called. */
export const askWords = ({ input }: Pick<Ask, 'input'>, f: Formatter): string => tell(input, f);

/** What is to be known beside a figure: which rule governs, what was assumed; null where nothing is. */
export const notesWords = ({ notes }: Pick<Figure, 'notes'>, f: Formatter): string | null =>
  notes.length === 0 ? null : notes.map((message) => tell(message, f)).join(' ');

/** What the field at a place of the plan (`tables.legs.length`) is called, and what is meant by it. */
export function fieldWords(place: string): FieldWords {
  const words = FIELD_WORDS.get(place);
  if (words === undefined) throw new Error(`there are no words for the field “${place}”`);
  return words;
}

const FIELD_WORDS: ReadonlyMap<string, FieldWords> = new Map(Object.entries(FIELDS));

/** What people read for a stored word; `field` tells apart what is called otherwise there. */
export function optionWords(value: string | number | boolean, field = ''): string {
  const words: Readonly<Record<string, string>> = OPTIONS;
  return words[`${field}.${value}`] ?? words[String(value)] ?? String(value).replaceAll('-', ' ');
}
