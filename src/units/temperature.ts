import { formatQuantity, parseQuantity, shownUnit } from './quantity';
import type { Parsed } from './result';

/** A temperature for people, from °C: `180 °F` or `82.2 °C`. */
export const formatTemperature = (tempC: number, system: 'us' | 'metric'): string => formatQuantity(tempC, 'temperature', system);

/** A temperature as people type it, in °C. A bare number is °F, or °C in metric. */
export function parseTemperature(text: string, system: 'us' | 'metric'): Parsed<'tempC'> {
  const parsed = parseQuantity(text, 'temperature', shownUnit('temperature', system));
  if (!parsed.ok) return parsed;
  if (parsed.value < ABSOLUTE_ZERO_C) return { ok: false, reason: 'Nothing is colder than −273.15 °C.' };
  return { ok: true, tempC: parsed.value };
}

const ABSOLUTE_ZERO_C = -273.15;
