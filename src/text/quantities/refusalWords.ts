import type { RecordUnit, Refusal } from '../../rules';
import { type Formatter, UNIT_SPACE } from '../../units';
import { figureWords } from './figureWords';
import { type Bit, refusalBits } from './refusalSentence';

/**
 * Why a formula does not hold, as people read it: with the names of inputs as words, in their units. The group tells air from water;
 * without one the refusal does.
 */
export function refusalWords(refusal: Refusal, f: Formatter, group: string = speaksOfAir(refusal) ? 'air' : 'water'): string {
  return refusalBits(refusal)
    .map((bit) => bitWords(bit, f, group))
    .join('');
}

function bitWords(bit: Bit, f: Formatter, group: string): string {
  if (typeof bit === 'string') return bit;
  if ('amounts' in bit) return bit.amounts.map((amount) => amountWords(amount, bit.unit, f, group)).join(' to ');
  const { words, unit } = nameWords(bit.input);
  if (bit.is === undefined) return words;
  return `${words} is ${typeof bit.is === 'number' && unit !== null ? figureWords(bit.is, unit, f, group) : bit.is}`;
}

/** A size of wire such as 1/0 is no number. */
const amountWords = (amount: number | string | null, unit: RecordUnit, f: Formatter, group: string): string =>
  amount === null || Number.isNaN(Number(amount)) ? `${amount ?? 'any'}${UNIT_SPACE}${unit}` : figureWords(Number(amount), unit, f, group);

/** An input's name ends in its unit: `airflowM3s` is an airflow in m³/s. */
function nameWords(input: string): { words: string; unit: RecordUnit | null } {
  const [, key, suffix] = NAME.exec(input) ?? [];
  if (key === undefined) return { words: input, unit: null };
  return { words: key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`), unit: SUFFIXES[suffix ?? ''] ?? null };
}

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

const NAME = new RegExp(String.raw`^([a-z]{2,}(?:[A-Z][a-z]+)*?)(${Object.keys(SUFFIXES).join('|')})?$`);

const speaksOfAir = ({ code, formula, input }: Refusal): boolean =>
  code === 'vapour-boils' || OF_AIR.has(formula) || (input !== null && AIR_INPUTS.has(input));

/** Formulas whose flows, pressures and densities are of air. */
const OF_AIR: ReadonlySet<string> = new Set([
  'air-changes',
  'air-mixing',
  'duct-friction-loss',
  'duct-section-loss',
  'duct-velocity',
  'exhaust-share',
  'fan-operating-point',
  'humidity-airflow',
  'make-up-air',
  'moist-air-density',
  'moist-air-volume',
  'net-exhaust',
  'total-exhaust',
  'transfer-air',
  'vapour-pressure',
]);
const AIR_INPUTS: ReadonlySet<string> = new Set(['airflowM3s', 'airflowsM3s', 'exhaustM3s']);
