import type { RecordUnit } from '../engineering';
import type { Formatter } from '../units';
import { figureWords, UNITS } from './figureWords';

/**
 * Why a formula does not hold, as people read it: a formula names its inputs as `airflowM3s` and has SI units. The group tells air from
 * water; without one the sentence does.
 */
export function refusalWords(refusal: string, f: Formatter, group: string = AIR.test(refusal) ? 'air' : 'water'): string {
  const named = refusal.replace(INPUT, (_, key: string, suffix: string | undefined, value: string | undefined) => {
    const name = key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
    const unit = suffix === undefined ? undefined : SUFFIXES[suffix];
    return value === undefined ? name : `${name} is ${value}${unit === undefined ? '' : ` ${unit}`}`;
  });
  return named.replace(QUANTITY, (_, from: string, to: string | undefined, unit: RecordUnit) =>
    [from, to].flatMap((text) => (text === undefined ? [] : [figureWords(Number(text), unit, f, group)])).join(' to '),
  );
}

const AIR = /\b(air|airflow|exhaust|hood|duct|fan|vent)/i;

/** How the name of an input ends, and the unit that it has then. */
const SUFFIXES: Readonly<Record<string, RecordUnit>> = {
  M3S: 'm3/s',
  M3s: 'm3/s',
  M3: 'm3',
  M2: 'm2',
  Ms: 'm/s',
  M: 'm',
  Kg: 'kg',
  PerH: '1/h',
  Pa: 'Pa',
  Deg: 'deg',
  S: 's',
  C: 'C',
  K: 'K',
  W: 'W',
  V: 'V',
  A: 'A',
};

const NUMBER = String.raw`-?\d+(?:\.\d+)?(?:e[-+]?\d+)?`;
const INPUT = new RegExp(String.raw`\b([a-z]{2,}(?:[A-Z][a-z]+)*?)(${Object.keys(SUFFIXES).join('|')})?\b(?: is (${NUMBER})(?=;|$))?`, 'g');

/** Longer symbols first, so that none is read as the beginning of another. */
const SYMBOLS = UNITS.toSorted((a, b) => b.length - a.length)
  .map((unit) => unit.replace(/[()]/g, String.raw`\$&`))
  .join('|');
const QUANTITY = new RegExp(String.raw`(?<![\w.])(${NUMBER})(?: to (${NUMBER}))? (${SYMBOLS})(?![\w/·])`, 'g');
