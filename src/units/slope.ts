import { formatNumber, MINUS, UNIT_SPACE } from './formatNumber';
import { mixedNumber, withoutDust } from './length';
import { AMOUNT, DECIMAL, parseAmount } from './parseNumber';
import { type Parsed, refuse } from './result';
import { MAX_TYPED, tidyText } from './tidyText';

/** A slope (height per length) for people: `¼″ per ft`, to the nearest 1/32 in, or `2.1 %`. */
export function formatSlope(ratio: number, system: 'us' | 'metric'): string {
  if (!Number.isFinite(ratio)) return formatNumber(ratio);
  if (system === 'metric') return `${formatNumber(ratio * 100, Math.abs(ratio) < 0.01 ? 2 : 1)}${UNIT_SPACE}%`;
  const parts = Math.round(Math.abs(ratio) * 12 * 32);
  return `${ratio < 0 && parts > 0 ? MINUS : ''}${mixedNumber(parts, 32)}″ per ft`;
}

const PER_FOOT = new RegExp(`^(${AMOUNT}) ?(?:"|in\\.?|inch|inches) ?(?:per|\\/|a|in a) ?(?:ft\\.?|foot|')$`);
const PERCENT = new RegExp(`^(${DECIMAL}) ?(?:%|percent|per cent)$`);
const ONE_IN = new RegExp(`^(${DECIMAL}) ?(?::|in) ?(${DECIMAL})$`);
const PER_METRE = new RegExp(`^(${DECIMAL}) ?mm ?(?:per|\\/) ?m$`);
const BARE = new RegExp(`^(${AMOUNT}) ?(?:"|in\\.?)?$`);

/** A slope as people type it: `1/4" per ft`, `2 %`, `1:48`, `20 mm/m`. A bare number is inches per foot, or per cent in metric. */
export function parseSlope(text: string, system: 'us' | 'metric'): Parsed<'ratio'> {
  const tidy = tidyText(text);
  if (tidy === '') return refuse('Type a slope, such as ¼″ per ft or 2 %.');
  if (text.length > MAX_TYPED) return refuse('That is too long for a slope.');
  const sign = tidy.startsWith('-') ? -1 : 1;
  const size = parseSize(tidy.replace(/^[+-] ?/, ''), system);
  return size.ok ? { ok: true, ratio: withoutDust(sign * size.ratio) } : size;
}

function parseSize(text: string, system: 'us' | 'metric'): Parsed<'ratio'> {
  const oneIn = ONE_IN.exec(text);
  if (oneIn?.[1] && oneIn[2]) return divide(parseAmount(oneIn[1]), parseAmount(oneIn[2]));
  const forms: [RegExp, number][] = [
    [PER_FOOT, 12],
    [PERCENT, 100],
    [PER_METRE, 1000],
    [BARE, system === 'us' || text.includes('"') ? 12 : 100],
  ];
  for (const [form, per] of forms) {
    const amount = form.exec(text)?.[1];
    if (amount) return divide(parseAmount(amount), { ok: true, value: per });
  }
  return refuse(`“${text}” is not a slope: write it like ¼″ per ft, 2 % or 1:48.`);
}

function divide(height: Parsed<'value'>, length: Parsed<'value'>): Parsed<'ratio'> {
  if (!height.ok) return height;
  if (!length.ok) return length;
  if (length.value === 0) return refuse('A slope cannot have a length of 0.');
  return { ok: true, ratio: height.value / length.value };
}
