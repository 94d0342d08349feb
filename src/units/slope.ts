import { formatInches } from './formatLength';
import { formatNumber, formatWithUnit, signOf } from './formatNumber';
import { NUMBER, parseNumber } from './parseNumber';
import { plainText } from './plainText';
import { type Refusal, refuse } from './refusal';
import type { Units } from './system';

export type ParsedSlope = { ok: true; ratio: number } | Refusal;

/**
 * Reads a slope as a ratio (rise over run): `1/4" per ft`, `1/4 in/ft`, `2 %`, `1:48`, `20 mm/m`.
 * A number without a unit is in percent.
 */
export function parseSlope(text: string): ParsedSlope {
  const plain = plainText(text);
  if (plain === '') return refuse('Nothing was typed: give a slope.');
  const [, sign, rest = plain] = /^([-+]) ?(.*)$/u.exec(plain) ?? [];
  const found = FORMS.map(({ pattern, read }) => ({ match: pattern.exec(rest), read })).find(({ match }) => match);
  if (!found?.match) return refuse(`“${text.trim()}” is not a slope. Write it like 1/4 in per ft, 2 % or 1:48.`);
  const numbers = found.match.slice(1).map((part) => parseNumber(part));
  const refused = numbers.find((number) => !number.ok);
  if (refused && !refused.ok) return refused;
  const ratio = found.read(numbers.map((number) => (number.ok ? number.value : 0)));
  return Number.isFinite(ratio) ? { ok: true, ratio: (sign === '-' ? -ratio : ratio) + 0 } : refuse(`“${text.trim()}” divides by zero.`);
}

interface Form {
  pattern: RegExp;
  read: (numbers: number[]) => number;
}

const form = (pattern: string, read: (a: number, b: number) => number): Form => ({
  pattern: new RegExp(`^${pattern.replaceAll('#', `(${NUMBER})`)}$`, 'u'),
  read: ([a = 0, b = 1]) => read(a, b),
});

const PER = String.raw` ?(?:/|per) ?(?:1 ?)?`;

const FORMS: readonly Form[] = [
  form(String.raw`# ?(?:"|inches|inch|in)\.?${PER}(?:'|feet|foot|ft)\.?`, (inches) => inches / 12),
  form(`# ?mm${PER}m`, (mm) => mm / 1000),
  form(`# ?cm${PER}m`, (cm) => cm / 100),
  form('# ?: ?#', (rise, run) => rise / run),
  form('# ?(?:%|percent|per cent)?', (percent) => percent / 100),
];

/** A ratio as a fall or rise people know: `¼″ per ft` in sixteenths, finer only below one of them, or `2.1 %`. */
export function formatSlope(ratio: number, units: Units): string {
  if (!Number.isFinite(ratio)) return formatNumber(ratio);
  return units === 'us' ? formatPerFoot(ratio) : formatWithUnit(ratio * 100, '%', Math.abs(ratio) < 0.001 ? 2 : 1);
}

function formatPerFoot(ratio: number): string {
  const inches = Math.abs(ratio) * 12;
  const denominator = inches < 1 / 16 ? 64 : 16;
  const parts = Math.round(inches * denominator);
  return `${parts === 0 ? '' : signOf(ratio)}${formatInches(parts, denominator)} per ft`;
}
