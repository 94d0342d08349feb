/** Parts thousands and the pieces of one length: narrow and without a line break. */
export const NARROW_SPACE = '\u202f';

/** Stands between a number and its unit: they stay on one line. */
export const UNIT_SPACE = '\u00a0';

const MINUS = '\u2212';

/**
 * A number as people read it: at most so many decimals, none that are zero; a true minus sign; narrow
 * spaces between thousands from 10 000 on. Infinity is "no limit", what is not a number is "—".
 */
export function formatNumber(value: number, decimals = 0): string {
  if (Number.isNaN(value)) return '—';
  if (!Number.isFinite(value)) return 'no limit';
  const digits = Math.abs(value).toFixed(decimals);
  const [whole = '0', part = ''] = digits.split('.');
  const decimal = part.replace(/0+$/u, '');
  return `${signOf(Number(digits) === 0 ? 0 : value)}${groupThousands(whole)}${decimal && `.${decimal}`}`;
}

/** A number with its unit: "34.5 kPa". What has no number has no unit either. */
export function formatWithUnit(value: number, unit: string, decimals = 0): string {
  return Number.isFinite(value) ? `${formatNumber(value, decimals)}${UNIT_SPACE}${unit}` : formatNumber(value);
}

/** Minus sign for what is below 0; a plus sign only where it is asked for. */
export function signOf(value: number, plus = false): string {
  if (value < 0) return MINUS;
  return plus && value > 0 ? '+' : '';
}

/** "1943" stays, "19430" becomes "19 430". */
export function groupThousands(digits: string): string {
  return digits.length < 5 ? digits : digits.replace(/(?<=\d)(?=(?:\d{3})+$)/gu, NARROW_SPACE);
}
