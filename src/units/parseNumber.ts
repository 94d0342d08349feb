import { type Refusal, refuse } from './refusal';

/** A number as typed: whole, decimal with point or comma, fraction, or whole number and fraction. No sign: see `NUMBER`. */
export type ParsedNumber = { ok: true; value: number } | Refusal;

/**
 * Pattern of a number in plain text (see `plainText`), for building larger patterns. Whole number and
 * fraction come first, so that "76 1/2" is one number and not two.
 */
export const NUMBER = String.raw`(?:\d+[ -]\d+ ?/ ?\d+|\d+ ?/ ?\d+|\d{1,3}(?: \d{3})+(?:[.,]\d+)?|\d+(?:,\d{3})*[.,]?\d*|[.,]\d+)`;

/**
 * Reads a number without a sign from plain text. A comma before three figures may part thousands or begin
 * the decimals; unless something else in the number tells which, it is refused, except where `comma` says
 * that decimals are meant.
 */
export function parseNumber(text: string, comma: 'decimal' | 'ask' = 'ask'): ParsedNumber {
  const fraction = FRACTION.exec(text);
  const value = fraction ? fractionValue(fraction) : decimalValue(text, comma);
  if (value === null) return refuse(`“${text}” is not a number.`);
  if (value === 'two-ways')
    return refuse(`“${text}” can be read in two ways: write ${text.replace(',', '')} or ${text.replace(',', '.')}.`);
  if (value === 'zero-below') return refuse(`“${text}” divides by zero.`);
  return Number.isFinite(value) ? { ok: true, value } : refuse('The number is too large: it would be infinite.');
}

const FRACTION = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/u;
const SPACED = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/u;
const TWO_WAYS = /^[1-9]\d{0,2},\d{3}$/u;
const COMMA_THOUSANDS = /^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/u;
const DECIMAL = /^(?:\d+[.,]?\d*|[.,]\d+)$/u;

function fractionValue([, whole = '0', above, below]: RegExpExecArray): number | 'zero-below' {
  return Number(below) === 0 ? 'zero-below' : Number(whole) + Number(above) / Number(below);
}

function decimalValue(text: string, comma: 'decimal' | 'ask'): number | 'two-ways' | null {
  if (TWO_WAYS.test(text) && comma === 'ask') return 'two-ways';
  if (COMMA_THOUSANDS.test(text) && (text.includes('.') || text.indexOf(',') !== text.lastIndexOf(',')))
    return Number(text.replaceAll(',', ''));
  const solid = SPACED.test(text) ? text.replaceAll(' ', '') : text;
  return DECIMAL.test(solid) ? Number(solid.replace(',', '.')) : null;
}
