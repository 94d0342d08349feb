import { GLYPH_WIDTHS } from './glyphWidths';

export type Weight = 'regular' | 'semibold';

/** Height of capitals and figures, and depth of descenders, of the shipped typeface as parts of the letter height. */
export const CAP_HEIGHT = 0.698;
export const DESCENT = 0.21;

/** What a character outside the table is taken to be wide: more than most, so that a box is never too small. */
const UNKNOWN = 0.9;

const TABLES: Record<Weight, Map<number, number>> = { regular: readTable('regular'), semibold: readTable('semibold') };

/** Width of one line of text in the unit of `size` (the letter height), without kerning. */
export function measureTextWidth(text: string, size: number, weight: Weight = 'regular'): number {
  const table = TABLES[weight];
  let sum = 0;
  for (const letter of text) sum += table.get(letter.codePointAt(0) ?? 0) ?? UNKNOWN;
  return sum * size;
}

function readTable(weight: Weight): Map<number, number> {
  const pairs = GLYPH_WIDTHS[weight].flatMap(([first, widths]) =>
    widths.split(' ').map((width, i): [number, number] => [first + i, Number(width) / 1000]),
  );
  return new Map(pairs.filter(([, width]) => width > 0));
}
