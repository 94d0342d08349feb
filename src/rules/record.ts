import type { RecordUnit } from './recordUnit';
import { createRefusal, type Refusal } from './refusal';
import type { SourceKey } from './sources';
import type { Confidence } from './sources/sourceDocument';

/**
 * What a formula says about itself, for the manual and for the tests. SI in, SI out; a formula
 * outside its range refuses with `{ ok: false, refusal }` and never extrapolates.
 */
export interface FormulaRecord<Inputs extends object> {
  /** Kebab-case and permanent. */
  id: string;
  title: string;
  /** The formula as it is written by hand. */
  formula: string;
  inputs: { [K in keyof Inputs]: Note };
  result: Note;
  source: FormulaSource[];
  examples: Example<Inputs>[];
  /** Why no example is printed in the source; only where none is. */
  unprinted?: string;
  /** A bound that no single input shows, in the words of the refusal: `the speed is at most 10 m/s`. */
  also?: string;
}

/** Unit and range of a number (a result may have no upper end), or the words that a choice allows. */
export type Note = { text: string; unit: RecordUnit; min: number; max: number } | { text: string; choices: readonly string[] };

/** Where something comes from: the line that people read, the documents of the bibliography that it rests on, and how surely. */
export interface FormulaSource {
  text: string;
  documents: readonly SourceKey[];
  /** Of this place in them. */
  confidence: Confidence;
}

/**
 * `source`: printed in the source. `memory`: said to be printed there, but not read.
 * `regression`: what is computed today, which proves it unchanged and not correct.
 */
export interface Example<Inputs extends object> {
  kind: 'source' | 'memory' | 'regression';
  /** Empty where the source line says all. */
  from: string;
  inputs: Inputs;
  result: number;
  tolerance: number;
}

/** A formula's answer, or why it refuses. */
export type FormulaResult<T = number> = { ok: true; value: T } | { ok: false; refusal: Refusal };

/** The first input that is out of its range; null when all are within. A list is held item by item. */
export function findOutOfRange<Inputs extends object>(record: FormulaRecord<Inputs>, inputs: Inputs): Refusal | null {
  const ranges = rangesOf(record);
  for (let i = 0; i < ranges.length; i++) {
    const { key, min, max, note } = ranges[i] as Range;
    const value = (inputs as Readonly<Record<string, unknown>>)[key];
    // Most inputs are numbers.
    if (typeof value === 'number' && value >= min && value <= max) continue;
    const isHeld = Array.isArray(value) ? value.every((item) => isWithin(note, item)) : isWithin(note, value);
    if (!isHeld) return refuseInput(record, key, note, Array.isArray(value) ? value.find((item) => !isWithin(note, item)) : value);
  }
  return null;
}

/** A choice has no number within it. */
interface Range {
  key: string;
  min: number;
  max: number;
  note: Note;
}

/** The inputs of a record as a list, made once: a plan holds some hundred and fifty inputs against them. */
function rangesOf({ inputs }: { inputs: object }): readonly Range[] {
  const listed = known.get(inputs);
  if (listed !== undefined) return listed;
  const ranges = Object.entries(inputs).map(([key, note]: [string, Note]) => {
    const { min, max } = 'choices' in note ? NO_NUMBER : note;
    return { key, min, max, note };
  });
  known.set(inputs, ranges);
  return ranges;
}

const known = new WeakMap<object, readonly Range[]>();
const NO_NUMBER = { min: Infinity, max: -Infinity };

function isWithin(note: Note, value: unknown): boolean {
  if ('choices' in note) return typeof value === 'string' && note.choices.includes(value);
  return typeof value === 'number' && value >= note.min && value <= note.max;
}

const refuseInput = (record: { id: string; title: string }, input: string, note: Note, value: unknown): Refusal =>
  'choices' in note
    ? createRefusal(record, 'not-a-choice', {}, { input, value, choices: note.choices })
    : createRefusal(record, 'out-of-range', {}, { input, value, min: note.min, max: note.max, unit: note.unit });
