import { formatNumber, MINUS, NARROW_SPACE, UNIT_SPACE } from './formatNumber';
import { AMOUNT, DECIMAL, parseAmount } from './parseNumber';
import { type Parsed, refuse } from './result';
import { MAX_TYPED, tidyText } from './tidyText';

/** Exact since 1959: the international inch. */
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 304.8;

const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, ft: MM_PER_FOOT };
type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** What a person may type for each unit. */
const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  cm: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  m: 'm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
};

/**
 * A length as people type it: `6' 4 1/2"`, `6-4 1/2`, `76½"`, `6 ft 4 in`, `1943 mm`, `1,5 m`, `72+1/2"`.
 * A number without a unit takes the fallback. In a sum, a part without a unit takes that of its neighbour.
 */
export function parseLength(text: string, fallback: 'mm' | 'in'): Parsed<'mm'> {
  const tidy = tidyText(text);
  if (tidy === '') return refuse('Type a length, such as 6′ 4 ½″ or 1943 mm.');
  if (text.length > MAX_TYPED) return refuse('That is too long for a length.');
  const sign = /^[+-]/.exec(tidy)?.[0] === '-' ? -1 : 1;
  const sum = addTerms(tidy.replace(/^[+-] ?/, '').split('+'), fallback);
  if (!sum.ok) return sum;
  if (!Number.isFinite(sum.mm)) return refuse('That number is too large.');
  return { ok: true, mm: withoutDust(sign * sum.mm) };
}

/** A part of a sum without a unit takes that of the next part that has one; after feet or inches it is inches, after a larger metric unit it is refused. */
function addTerms(texts: readonly string[], fallback: LengthUnit): Parsed<'mm'> {
  const terms = texts.map((term) => term.trim());
  const units = terms.map(unitOf);
  const last = units.findLast((unit) => unit !== null) ?? fallback;
  let mm = 0;
  for (const [index, term] of terms.entries()) {
    const unit = units.slice(index).find((next) => next !== null) ?? last;
    if (units[index] === null && unit === last && index > units.lastIndexOf(last) && (last === 'm' || last === 'cm') && term !== '') {
      return refuse(`Write the unit of “${term}” too.`);
    }
    const value = parseTerm(term, unit);
    if (!value.ok) return value;
    mm += value.mm;
  }
  return { ok: true, mm };
}

const FEET = `(?:'|ft\\.?|feet|foot)`;
const INCHES = `(?:"|in\\.?|inch|inches)`;
const FEET_INCHES = new RegExp(`^(${AMOUNT}) ?${FEET}(?: ?-? ?(${AMOUNT}) ?${INCHES}?)?$`);
const DASHED_FEET_INCHES = new RegExp(`^(\\d+)-(\\d+ \\d+ ?\\/ ?\\d+|${DECIMAL}) ?${INCHES}?$`);
const ONE_UNIT = new RegExp(`^(${AMOUNT}) ?([a-z"']*)\\.?$`);

/** One part of a sum, without a sign. */
function parseTerm(term: string, fallback: LengthUnit): Parsed<'mm'> {
  const feet = FEET_INCHES.exec(term);
  if (feet?.[1] !== undefined) return joinFeetInches(feet[1], feet[2]);
  const dashed = DASHED_FEET_INCHES.exec(term);
  if (dashed?.[1] !== undefined) return joinFeetInches(dashed[1], dashed[2]);
  const one = ONE_UNIT.exec(term);
  const unit = one?.[2] ? UNIT_WORDS[one[2]] : fallback;
  if (!one?.[1] || unit === undefined || isTwoNumbers(one[1], unit)) return refuse(whyNoLength(term));
  const amount = parseAmount(one[1]);
  return amount.ok ? { ok: true, mm: amount.value * MM_PER[unit] } : amount;
}

/** In feet and inches, `6 400` are two numbers; `12 345` is one, parted as `formatLength` parts it. */
const isTwoNumbers = (amount: string, unit: LengthUnit) => /^\d \d{3}(?! \d{3})/.test(amount) && (unit === 'in' || unit === 'ft');

function joinFeetInches(feetText: string, inchText: string | undefined): Parsed<'mm'> {
  const feet = parseAmount(feetText);
  const inches = inchText === undefined ? ({ ok: true, value: 0 } as const) : parseAmount(inchText);
  if (!feet.ok) return feet;
  if (!inches.ok) return inches;
  if (isTwoNumbers(feetText, 'ft') || isTwoNumbers(inchText ?? '', 'in')) return refuse(TWO_NUMBERS);
  if (inchText !== undefined && !Number.isInteger(feet.value)) return refuse('Feet with inches after them are whole feet.');
  if (inches.value >= 12) return refuse('Inches after feet are less than 12.');
  return { ok: true, mm: (feet.value * 12 + inches.value) * MM_PER_INCH };
}

/** Unit that a term names itself, or null. */
function unitOf(term: string): LengthUnit | null {
  const word = /([a-z]+|["'])\.?$/.exec(term)?.[1];
  const last = word === undefined ? undefined : UNIT_WORDS[word];
  if (last !== undefined) return last === 'ft' ? 'in' : last;
  return /['a-z]/.test(term) ? 'in' : null;
}

const TWO_NUMBERS = 'Two numbers without a unit: write 6′ 4″, 6-4 or 1943 mm.';

function whyNoLength(term: string): string {
  const word = /[a-z]+/.exec(term)?.[0];
  if (term === '') return 'A number is missing beside the +.';
  if (/^(?:∞|inf|infinity|infinite|no limit)$/.test(term)) return 'A length cannot be infinite.';
  if (word !== undefined && /\d/.test(term) && UNIT_WORDS[word] === undefined)
    return `“${word}” is not a unit of length here: use ft, in, mm, cm or m.`;
  if (/^[\d., /]+ ?(in|"|ft|')?$/.test(term) && /\d [\d.,]/.test(term)) return TWO_NUMBERS;
  return `“${term}” is not a length: write it like 6′ 4 ½″ or 1943 mm.`;
}

/** Takes off what binary arithmetic adds in the fifteenth figure. */
export const withoutDust = (value: number): number => Number(value.toPrecision(14)) + 0;

export interface LengthStyle {
  /** Finest part of an inch that is shown; 16 when left out. */
  denominator?: 8 | 16 | 32;
  /** A plus before positive lengths. */
  sign?: boolean;
  /** Inches alone, without feet. */
  unitInches?: boolean;
}

/** A length for people: `6′ 4 ½″`, under a foot `4 ½″`; metric `1943 mm`, below 10 mm with a decimal. Infinity is "no limit". */
export function formatLength(mm: number, system: 'us' | 'metric', style: LengthStyle = {}): string {
  if (mm === Number.POSITIVE_INFINITY) return 'no limit';
  if (!Number.isFinite(mm)) return formatNumber(mm);
  const size = system === 'us' ? formatInches(Math.abs(mm), style) : formatMillimetres(Math.abs(mm));
  if (size === '0″' || size === `0${UNIT_SPACE}mm`) return size;
  if (mm < 0) return MINUS + size;
  return style.sign ? `+${size}` : size;
}

const formatMillimetres = (mm: number) => `${formatNumber(mm, mm < 10 ? 1 : 0)}${UNIT_SPACE}mm`;

function formatInches(mm: number, style: LengthStyle): string {
  const denominator = style.denominator ?? 16;
  const parts = Math.round((mm / MM_PER_INCH) * denominator);
  const perFoot = 12 * denominator;
  if (style.unitInches || parts < perFoot) return `${mixedNumber(parts, denominator)}″`;
  const left = parts % perFoot;
  // After feet the whole inches are always there: 6′ 0 ½″ cannot be taken for half a foot.
  const zero = left > 0 && left < denominator ? `0${NARROW_SPACE}` : '';
  return `${formatNumber(Math.floor(parts / perFoot))}′${NARROW_SPACE}${zero}${mixedNumber(left, denominator)}″`;
}

/** So many parts of a whole as a mixed number: 9 eighths are 1 ⅛. */
export function mixedNumber(parts: number, denominator: number): string {
  const whole = Math.floor(parts / denominator);
  const fraction = formatFraction(parts % denominator, denominator);
  if (fraction === '') return formatNumber(whole);
  return whole === 0 ? fraction : `${formatNumber(whole)}${NARROW_SPACE}${fraction}`;
}

const ONE_CHARACTER: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/** A fraction below 1 in lowest terms, as one character where there is one; empty for 0. The denominator is a power of two. */
function formatFraction(numerator: number, denominator: number): string {
  if (numerator === 0) return '';
  if (numerator % 2 === 0) return formatFraction(numerator / 2, denominator / 2);
  return ONE_CHARACTER[`${numerator}/${denominator}`] ?? `${inDigits(numerator, RAISED)}⁄${inDigits(denominator, LOWERED)}`;
}

const inDigits = (value: number, digits: string) => [...String(value)].map((digit) => digits[Number(digit)] ?? '').join('');
