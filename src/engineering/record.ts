/**
 * What a formula says about itself, for the manual and for the tests. SI in, SI out; a formula
 * outside its range refuses with `{ ok: false, reason }` and never extrapolates.
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

/** Units of inputs and results: SI, temperatures in °C, differences of temperature in K. */
export type RecordUnit =
  | 'm'
  | 'm2'
  | 'm3'
  | 'm/s'
  | 'm3/s'
  | 'm3/h'
  | 'kg'
  | 'kg/m3'
  | 'kg/s'
  | 'kg/kg'
  | 'm3/kg'
  | 's'
  | '1/s'
  | '1/h'
  | 'C'
  | 'K'
  | 'Pa'
  | 'Pa/m'
  | 'Pa·s'
  | 'Pa·s2/m6'
  | 'J'
  | 'J/kg'
  | 'W'
  | 'W/m'
  | 'W/(m·K)'
  | 'W/(m2·K)'
  | 'm2·K/W'
  | 'm·K/W'
  | 'V'
  | 'A'
  | 'ohm'
  | 'ohm/m'
  | 'N'
  | 'lx'
  | 'deg'
  | 'ratio'
  /** A part of a whole, shown in hundredths. */
  | 'share'
  /** Height over length. */
  | 'slope'
  | 'count'
  /** Size of copper wire in the American gauge; 1/0 is 0, 2/0 is −1. */
  | 'AWG'
  | 'money';

/** Unit and range of a number (a result may have no upper end), or the words that a choice allows. */
export type Note = { text: string; unit: RecordUnit; min: number; max: number } | { text: string; choices: readonly string[] };

export interface FormulaSource {
  text: string;
  /**
   * `read`: the text itself; `secondary`: a restatement; `memory`: known, but checked against no text;
   * `practice`: the trade's habit, in no document; `geometry`: follows from the drawing or by arithmetic.
   */
  confidence: 'read' | 'secondary' | 'memory' | 'practice' | 'geometry';
}

/**
 * `source`: printed in the source. `memory`: said to be printed there, but not read.
 * `regression`: what is computed today, which proves it unchanged and not correct.
 */
export interface Example<Inputs extends object> {
  kind: 'source' | 'memory' | 'regression';
  from: string;
  inputs: Inputs;
  result: number;
  tolerance: number;
}

/** A formula's answer, or why it refuses. */
export type Outcome<T = number> = { ok: true; value: T } | { ok: false; reason: string };

/** The first input that is out of its range, in words; null when all are within. A list is held item by item. */
export function findOutOfRange<Inputs extends object>(record: FormulaRecord<Inputs>, inputs: Inputs): string | null {
  const ranges = rangesOf(record);
  for (let i = 0; i < ranges.length; i++) {
    const { key, min, max, note } = ranges[i] as Range;
    const value = (inputs as Readonly<Record<string, unknown>>)[key];
    // Most inputs are numbers.
    if (typeof value === 'number' && value >= min && value <= max) continue;
    const isHeld = Array.isArray(value) ? value.every((item) => isWithin(note, item)) : isWithin(note, value);
    if (!isHeld) return `${key} is ${describe(note, value)}; ${record.title.toLowerCase()} holds for ${rangeWords(note)}`;
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

/** Of a list the first item that is out of the range. */
const describe = (note: Note, value: unknown) => String(Array.isArray(value) ? value.find((item) => !isWithin(note, item)) : value);

function isWithin(note: Note, value: unknown): boolean {
  if ('choices' in note) return typeof value === 'string' && note.choices.includes(value);
  return typeof value === 'number' && value >= note.min && value <= note.max;
}

const rangeWords = (note: Note) => ('choices' in note ? note.choices.join(', ') : `${note.min} to ${note.max} ${note.unit}`);
