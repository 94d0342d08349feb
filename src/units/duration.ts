import { toSI } from './factors';
import { formatNumber, formatWithUnit, signOf } from './formatNumber';
import { NUMBER, parseNumber } from './parseNumber';
import { parseUnit } from './parseUnit';
import { type Refusal, refuse } from './refusal';

type ParsedDuration = { ok: true; value: number } | Refusal;

const CLOCK = /^(\d+):([0-5]\d)$/u;
const TERM = new RegExp(String.raw`(${NUMBER}) ?([a-z]+\.?)?(?: |$)?`, 'uy');

/** Reads a duration from plain text in s: `55 s`, `2 min 5 s`, `1:30` (minutes and seconds), `1.5 h`; a plain number is in s. */
export function parseDuration(plain: string): ParsedDuration {
  const [, minutes, seconds] = CLOCK.exec(plain) ?? [];
  if (minutes !== undefined && seconds !== undefined) return { ok: true, value: Number(minutes) * 60 + Number(seconds) };
  const terms = readTerms(plain);
  if (terms === null) return refuse(`“${plain}” is not a duration. Write it like 55 s or 2 min 5 s.`);
  let sum = 0;
  for (const [number, spelling] of terms) {
    const parsed = parseNumber(number);
    if (!parsed.ok) return parsed;
    const unit = parseUnit(spelling ?? 's');
    if (unit !== 's' && unit !== 'min' && unit !== 'h') return refuse(`“${spelling}” is not a unit of time. Use s, min or h.`);
    sum += toSI(parsed.value, unit);
  }
  return Number.isFinite(sum) ? { ok: true, value: sum } : refuse('The number is too large: it would be infinite.');
}

/** Number and unit, again and again to the end of the text; only a lone number may go without its unit. */
function readTerms(plain: string): [string, string | undefined][] | null {
  const terms: [string, string | undefined][] = [];
  let at = 0;
  while (at < plain.length) {
    TERM.lastIndex = at;
    const match = TERM.exec(plain);
    if (match?.[1] === undefined) return null;
    terms.push([match[1], match[2]]);
    at = TERM.lastIndex;
  }
  return terms.length > 1 && terms.some(([, spelling]) => spelling === undefined) ? null : terms;
}

/** A duration in s as people read it: `55 s`, from two minutes on `2 min 5 s`, from one hour on `1 h 5 min`. */
export function formatDuration(seconds: number): string {
  if (!Number.isFinite(seconds)) return formatNumber(seconds);
  const size = Math.abs(seconds);
  if (size < 119.5) return formatWithUnit(seconds, 's', 1);
  return `${signOf(seconds)}${Math.round(size) < 3600 ? inTwo(Math.round(size), 'min', 's') : inTwo(Math.round(size / 60), 'h', 'min')}`;
}

function inTwo(small: number, large: string, unit: string): string {
  const rest = small % 60;
  const first = formatWithUnit(Math.floor(small / 60), large);
  return rest === 0 ? first : `${first} ${formatWithUnit(rest, unit)}`;
}
