import { directionOf } from '../../geometry';
import type { TextPrim } from '../drawing';
import type { Box } from '../layout/box';
import { CAP_HEIGHT, DESCENT, measureTextWidth } from './textWidth';

/**
 * The box that a text's letters take, from the foot of descenders to the top of capitals, in drawing units.
 * `unit`: drawing units per paper mm. For hit tests and for keeping texts apart.
 */
export function textBox(text: TextPrim, unit: number): Box {
  const width = measureTextWidth(text.text, text.size, text.weight) * unit;
  const cap = CAP_HEIGHT * text.size * unit;
  const below = DESCENT * text.size * unit;
  const d = directionOf(text.angleDeg ?? 0);
  const start = { start: 0, middle: -0.5, end: -1 }[text.anchor ?? 'start'] * width;
  const baseline = { top: cap, middle: cap / 2, bottom: 0 }[text.baseline ?? 'bottom'];
  const [right, down] = [start + width / 2, baseline + (below - cap) / 2];
  const [x, y] = [text.at.x + (text.shift?.x ?? 0) * unit, text.at.y + (text.shift?.y ?? 0) * unit];
  return {
    centre: { x: x + d.x * right - d.y * down, y: y + d.y * right + d.x * down },
    d,
    halfLength: width / 2,
    halfHeight: (cap + below) / 2,
  };
}
