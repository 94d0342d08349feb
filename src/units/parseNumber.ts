import { type Parsed, refuse } from './result';

/** A decimal number without sign or unit: 1943, 76.5, 1,5, .5, 1 943, 1,234.5, 1.234,5. */
export const DECIMAL = String.raw`(?:\d{1,3}(?: \d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+)`;

/** A number with or without a fraction: 76 1/2, 76-1/2, 1/2, or a decimal. */
export const AMOUNT = String.raw`(?:\d+[ -]\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|${DECIMAL})`;

/** Reads what `AMOUNT` matches. */
export function parseAmount(text: string): Parsed<'value'> {
  const parts = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (!parts) return parseDecimal(text);
  const [whole, numerator, denominator] = [Number(parts[1] ?? 0), Number(parts[2]), Number(parts[3])];
  if (denominator === 0) return refuse('A fraction cannot have 0 below its line.');
  return { ok: true, value: whole + numerator / denominator };
}

/**
 * Reads what `DECIMAL` matches. Point and comma may both mark decimals; where one comma has three digits
 * after it there is no telling, and the number is refused rather than guessed at.
 */
export function parseDecimal(text: string): Parsed<'value'> {
  const digits = text.replaceAll(' ', '');
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits))
    return refuse(`${digits} can be read two ways: write ${digits.replace(',', '')} or ${digits.replace(',', '.')}.`);
  const value = Number(plainDigits(digits));
  if (Number.isNaN(value)) return refuse(`${text} is not a number.`);
  if (!Number.isFinite(value)) return refuse('That number is too large.');
  return { ok: true, value };
}

/** Thousands marks taken out, the decimal mark made a point; what fits no pattern stays and is refused as no number. */
function plainDigits(digits: string): string {
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(digits) && digits.length > 7) return digits.replaceAll(',', '');
  if (/^\d{1,3}(,\d{3})+\.\d+$/.test(digits)) return digits.replaceAll(',', '');
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(digits)) return digits.replaceAll('.', '').replace(',', '.');
  if (/^\d{1,3}(\.\d{3}){2,}$/.test(digits)) return digits.replaceAll('.', '');
  return digits.replace(',', '.');
}
