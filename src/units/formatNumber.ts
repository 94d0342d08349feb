/** Narrow, and never broken over two lines: parts thousands and the pieces of one length. */
export const NARROW_SPACE = '\u202f';

/** Stands between a number and its unit, which stay on one line. */
export const UNIT_SPACE = '\u00a0';

/** A true minus, as wide as a plus. */
export const MINUS = '−';

/** A number for people: at most so many decimals, none that are 0, a true minus, thousands parted from 10 000 on. Never −0. */
export function formatNumber(value: number, decimals = 0): string {
  if (Number.isNaN(value)) return '—';
  if (!Number.isFinite(value)) return value > 0 ? '∞' : `${MINUS}∞`;
  const [whole = '0', rest = ''] = Math.abs(value).toFixed(decimals).split('.');
  const digits = rest.replace(/0+$/, '');
  const text = digits === '' ? groupThousands(whole) : `${groupThousands(whole)}.${digits}`;
  return value < 0 && text !== '0' ? MINUS + text : text;
}

function groupThousands(whole: string): string {
  return whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, NARROW_SPACE);
}
