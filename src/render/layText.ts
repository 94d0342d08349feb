import { CAP_HEIGHT, type TextPrim } from '../drawing';

/** Where the letters of a text begin on their baseline: in drawing units, before the text's own rotation about `x`, `y`. */
export interface LaidText {
  /** The point that the text turns about. */
  x: number;
  y: number;
  /** Baseline below that point, drawing units. */
  drop: number;
  /** Letter height, drawing units. */
  size: number;
}

/** Places a text by the heights of its typeface, so that every renderer sets it alike. `unit`: drawing units per paper mm. */
export function layText(text: TextPrim, unit: number): LaidText {
  const size = text.size * unit;
  const drops = { top: CAP_HEIGHT, middle: CAP_HEIGHT / 2, bottom: 0 };
  return {
    x: text.at.x + (text.shift?.x ?? 0) * unit,
    y: text.at.y + (text.shift?.y ?? 0) * unit,
    drop: drops[text.baseline ?? 'bottom'] * size,
    size,
  };
}
