import { formatNumber } from './formatNumber';
import { DECIMAL, parseDecimal } from './parseNumber';
import { type Parsed, refuse } from './result';
import { MAX_TYPED, tidyText } from './tidyText';

/** An angle for people, to a tenth of a degree: `37.5°`. */
export const formatAngle = (deg: number): string => `${formatNumber(deg, 1)}°`;

const ANGLE = new RegExp(`^([+-]?) ?(${DECIMAL}) ?(?:°|deg\\.?|degrees?)?$`);

/** An angle as people type it, in degrees: `90`, `90°`, `-37.5 deg`. */
export function parseAngle(text: string): Parsed<'deg'> {
  const tidy = tidyText(text);
  if (tidy === '') return refuse('Type an angle, such as 90.');
  const parts = ANGLE.exec(tidy);
  if (text.length > MAX_TYPED || !parts?.[2])
    return refuse(`“${tidy.slice(0, MAX_TYPED)}” is not an angle: write it in degrees, like 37.5.`);
  const size = parseDecimal(parts[2]);
  return size.ok ? { ok: true, deg: (parts[1] === '-' ? -size.value : size.value) + 0 } : size;
}
