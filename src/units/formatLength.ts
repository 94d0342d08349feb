import { formatFraction } from './formatFraction';
import { formatNumber, groupThousands, NARROW_SPACE, signOf, UNIT_SPACE } from './formatNumber';
import type { Units } from './system';

export interface LengthOptions {
  /** Smallest part of an inch that is shown; 16 when left out. */
  denominator?: 8 | 16 | 32;
  /** Shows a plus sign before what is above 0. */
  sign?: boolean;
}

const MM_PER_INCH = 25.4;

/**
 * A length in mm as people read it: `6′ 4 ½″`, under a foot `8 ½″`, or `1943 mm` (one decimal below
 * 10 mm). Infinity is "no limit".
 */
export function formatLength(mm: number, units: Units, options: LengthOptions = {}): string {
  if (!Number.isFinite(mm)) return formatNumber(mm);
  return units === 'us' ? formatFeetAndInches(mm, options) : formatMillimetres(mm, options);
}

function formatMillimetres(mm: number, { sign = false }: LengthOptions): string {
  const decimals = Math.abs(mm) < 10 ? 1 : 0;
  const number = formatNumber(Math.abs(mm), decimals);
  return `${number === '0' ? '' : signOf(mm, sign)}${number}${UNIT_SPACE}mm`;
}

/** Rounds once, in whole parts of an inch, so that 11 31⁄32″ carries to 1′ 0″. */
function formatFeetAndInches(mm: number, { denominator = 16, sign = false }: LengthOptions): string {
  const parts = Math.round((Math.abs(mm) / MM_PER_INCH) * denominator);
  const feet = Math.floor(parts / (12 * denominator));
  const inches = formatInches(parts - feet * 12 * denominator, denominator, feet > 0);
  const prefix = parts === 0 ? '' : signOf(mm, sign);
  return feet === 0 ? `${prefix}${inches}` : `${prefix}${groupThousands(String(feet))}′${NARROW_SPACE}${inches}`;
}

/** So many parts of an inch as inches: `8 ½″`, `½″`; after feet the whole number is never left out. */
export function formatInches(parts: number, denominator: number, isAfterFeet = false): string {
  const whole = Math.floor(parts / denominator);
  const left = parts - whole * denominator;
  if (left === 0) return `${whole}″`;
  const fraction = formatFraction(left, denominator);
  return whole === 0 && !isAfterFeet ? `${fraction}″` : `${whole}${NARROW_SPACE}${fraction}″`;
}
