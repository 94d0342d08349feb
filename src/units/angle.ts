import { formatNumber } from './formatNumber';
import { NUMBER, parseNumber } from './parseNumber';
import { plainText } from './plainText';
import { type Refusal, refuse } from './refusal';

export type ParsedAngle = { ok: true; deg: number } | Refusal;

const ANGLE = new RegExp(`^([-+]?) ?(${NUMBER}) ?(?:°|degrees|degree|deg)?$`, 'u');

/** Reads an angle in degrees: `45°`, `45`, `45 deg`. */
export function parseAngle(text: string): ParsedAngle {
  const plain = plainText(text);
  if (plain === '') return refuse('Nothing was typed: give an angle.');
  const [, sign, number] = ANGLE.exec(plain) ?? [];
  if (number === undefined) return refuse(`“${text.trim()}” is not an angle. Write it in degrees, like 45°.`);
  const parsed = parseNumber(number);
  return parsed.ok ? { ok: true, deg: (sign === '-' ? -parsed.value : parsed.value) + 0 } : parsed;
}

/** An angle in degrees as people read it: `1.5°`, with two decimals below 1°. */
export function formatAngle(deg: number): string {
  return Number.isFinite(deg) ? `${formatNumber(deg, Math.abs(deg) < 1 ? 2 : 1)}°` : formatNumber(deg);
}
