import type { Measurement } from '../../checks';
import { type FigureReading, refusalWords } from '../../figures';
import type { Formatter } from '../../units';

/** What the plan says, and where it would be said. */
export interface Said {
  value: number | null;
  input: string;
  path: (string | number)[];
}

/** What a check adds when a figure is its limit. */
export interface Bound extends Omit<Measurement, 'subjects' | 'value' | 'limit' | 'ask' | 'say'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the limit is called in a sentence: `the breaker that it needs`. */
  name: string;
  /** The sentence when both are known. */
  say: (value: number, limit: number, f: Formatter) => string;
}

/** Holds what the plan says against a figure. What the figure waits for is asked for first; then what the plan does not say. */
export function holdAgainst(said: Said, reading: Pick<FigureReading, 'subjects' | 'value' | 'ask' | 'refusal'>, bound: Bound): Measurement {
  const { subjects, name, say } = bound;
  const { value: limit, refusal } = reading;
  const ask = reading.ask ?? (limit !== null && said.value === null ? { input: said.input, path: said.path } : undefined);
  const held: Measurement = {
    subjects: subjects ?? reading.subjects,
    value: limit === null ? null : said.value,
    limit,
    ...bound,
    say: (f) => {
      if (said.value !== null && limit !== null) return say(said.value, limit, f);
      return ask === undefined
        ? `Can’t work out ${name}: ${refusal === undefined ? 'an input is missing' : refusalWords(refusal, f)}.`
        : `To hold it against ${name}, say the ${ask.input}.`;
    },
  };
  if (ask !== undefined) held.ask = ask;
  return held;
}
