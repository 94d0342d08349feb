import type { Measurement } from '../../checks';
import { type FigureReading, refusalWords } from '../../figures';
import type { Formatter } from '../../units';

/** What a check adds to a figure's reading. */
export interface Holding extends Omit<Measurement, 'subjects' | 'value' | 'ask' | 'say'> {
  /** Those of the reading when they are left out. */
  subjects?: string[];
  /** What the figure is called in a sentence: `the flow pressure of the rinse`. */
  name: string;
  /** The sentence when the figure is known. */
  say: (value: number, f: Formatter) => string;
}

/**
 * Holds the reading of a figure against a limit. Where the figure waits for an input the check asks for the same; where the
 * formula does not hold for this plan the check cannot say, and gives the reason.
 */
export function holdReading(reading: FigureReading, holding: Holding): Measurement {
  return {
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
    say: (f) => sayHeld(reading, holding, f),
    repairs: holding.repairs,
  };
}

function sayHeld({ value, ask, refusal }: FigureReading, { name, say }: Holding, f: Formatter): string {
  if (value !== null) return say(value, f);
  if (ask !== undefined) return `To know ${name}, say the ${ask.input}.`;
  return `Can’t work out ${name}: ${refusal === undefined ? 'an input is missing' : refusalWords(refusal, f)}.`;
}
