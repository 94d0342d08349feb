import { NUMBER, type ParsedNumber, parseNumber } from './parseNumber';
import { plainText } from './plainText';
import { type Refusal, refuse } from './refusal';

export type ParsedLength = { ok: true; mm: number } | Refusal;

/**
 * Reads a length as people type it, in mm: `6' 4 1/2"`, `6-4 1/2` (feet and inches), `76½ in`, `1 943 mm`,
 * `1,5 m`, and all that `formatLength` prints. A number without a unit is in the fallback unit.
 * A length may be negative; whether that is allowed is the caller's matter.
 */
export function parseLength(text: string, fallback: 'mm' | 'in'): ParsedLength {
  const plain = plainText(text);
  if (plain === '') return refuse('Nothing was typed: give a length.');
  if (ENDLESS.test(plain)) return refuse('A length must be finite.');
  const { sign, rest } = takeSign(plain);
  const parsed = parseFeetAndInches(rest) ?? parseOneUnit(rest, fallback);
  if (parsed === null) return refuse(`“${text.trim()}” is not a length. Write it like 6' 4 1/2", 76.5 in or 1943 mm.`);
  return parsed.ok ? toMm(sign * parsed.value) : parsed;
}

/** Millimetres of each unit by its spellings. Exact: the inch is 25.4 mm (1959 agreement; NIST SP 811, B.6). */
const MM_OF_UNIT: readonly (readonly [number, readonly string[]])[] = [
  [1, ['mm', 'millimetre', 'millimeter', 'millimetres', 'millimeters']],
  [10, ['cm', 'centimetre', 'centimeter', 'centimetres', 'centimeters']],
  [1000, ['m', 'metre', 'meter', 'metres', 'meters']],
  [25.4, ['"', 'in', 'inch', 'inches']],
  [304.8, ["'", 'ft', 'foot', 'feet']],
];

const ENDLESS = /^[-+]? ?(?:∞|inf|infinity|infinite|no limit)(?: ?[a-z'"]+)?$/u;
const FEET = String.raw`(?:'|feet|foot|ft)\.?`;
const INCHES = String.raw`(?:"|inches|inch|in)\.?`;
const MARKED = new RegExp(`^(${NUMBER}) ?${FEET}[ ,]*-? ?(${NUMBER}) ?(?:${INCHES})?$`, 'u');
const HYPHENED = new RegExp(String.raw`^(\d+) ?- ?(${NUMBER}) ?(?:${INCHES})?$`, 'u');
const ONE_UNIT = new RegExp(`^(${NUMBER}) ?([a-z]+\\.?|['"])?$`, 'u');
const HYPHENED_FRACTION = /^\d+-\d+ ?\/ ?\d+$/u;

function takeSign(plain: string): { sign: 1 | -1; rest: string } {
  const [, sign, rest = plain] = /^([-+]) ?(.*)$/u.exec(plain) ?? [];
  return { sign: sign === '-' ? -1 : 1, rest };
}

/** Feet and inches in inches; null when the text has another form. "4-1/2" is left: a hyphen may also part whole and fraction. */
function parseFeetAndInches(rest: string): ParsedNumber | null {
  const hyphened = ONE_UNIT.exec(rest)?.[1];
  const isMixed = hyphened !== undefined && HYPHENED_FRACTION.test(hyphened);
  const [, feetText, inchText] = MARKED.exec(rest) ?? (isMixed ? [] : (HYPHENED.exec(rest) ?? []));
  if (feetText === undefined || inchText === undefined) return null;
  const [feet, inches] = [parseNumber(feetText), parseNumber(inchText)];
  if (!feet.ok) return feet;
  return inches.ok ? { ok: true, value: (feet.value * 12 + inches.value) * 25.4 } : inches;
}

function parseOneUnit(rest: string, fallback: 'mm' | 'in'): ParsedNumber | null {
  const [, number, spelling] = ONE_UNIT.exec(rest) ?? [];
  if (number === undefined) return null;
  if (spelling === undefined && HYPHENED_FRACTION.test(number)) {
    return refuse(`“${number}” can be read in two ways: write ${number.replace('-', ' ')} in, or mark the feet with '.`);
  }
  const mm = mmOf(spelling ?? fallback);
  if (mm === null) return refuse(`“${spelling}” is not a unit of length. Use ft, in, mm, cm or m.`);
  // Nobody lays out a room of a thousand metres: in metres a comma begins the decimals.
  const parsed = parseNumber(number, mm === 1000 ? 'decimal' : 'ask');
  return parsed.ok ? { ok: true, value: parsed.value * mm } : parsed;
}

function mmOf(spelling: string): number | null {
  const bare = spelling.replace(/\.$/u, '');
  return MM_OF_UNIT.find(([, spellings]) => spellings.includes(bare))?.[0] ?? null;
}

/** Adding 0 turns −0 into 0. */
const toMm = (mm: number): ParsedLength =>
  Number.isFinite(mm) ? { ok: true, mm: mm + 0 } : refuse('The length is too large: it would be infinite.');
