import { describe, expect, it } from 'vitest';
import { GLYPH_WIDTHS } from '../../src/drawing/typeset/glyphWidths';
import { CAP_HEIGHT, measureTextWidth, type Weight } from '../../src/drawing/typeset/textWidth';
import { elideText, wrapText } from '../../src/drawing/typeset/wrapText';
import { readFont } from '../support/readFont';

const FONTS = { regular: readFont('public/fonts/IBMPlexSans-Regular.ttf'), semibold: readFont('public/fonts/IBMPlexSans-SemiBold.ttf') };
const WEIGHTS: Weight[] = ['regular', 'semibold'];

/** Whatever the program itself writes: figures, feet and inches, fractions, units. */
const OWN = '0123456789 abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.,:;-–—×·°%/()[]+±=≤≥½¼¾⅛⅜⅝⅞′″\'"…✓';

describe('the width table agrees with the font files', () => {
  it.each(WEIGHTS)('%s: each width, and no character missing that the program writes', (weight) => {
    const font = FONTS[weight];
    expect(font.unitsPerEm).toBe(1000);
    for (const [first, widths] of GLYPH_WIDTHS[weight]) {
      const read = widths.split(' ').map((_, i) => font.advance(first + i) ?? 0);
      expect(widths.split(' ').map(Number)).toEqual(read);
    }
    const missing = [...OWN].filter((letter) => font.advance(letter.codePointAt(0) ?? 0) === null);
    expect(missing).toEqual([]);
  });

  it('height of capitals', () => {
    expect(FONTS.regular.capHeight / 1000).toBe(CAP_HEIGHT);
    expect(FONTS.semibold.capHeight / 1000).toBe(CAP_HEIGHT);
  });

  it('all figures are equally wide, so numbers align', () => {
    for (const weight of WEIGHTS) expect(new Set([...'0123456789'].map((d) => measureTextWidth(d, 1, weight)))).toEqual(new Set([0.6]));
  });
});

describe('wrapping', () => {
  const column = { size: 2.5, width: 40 };
  const text = 'Clean table falls 3/8 in away from the machine; water stands at the turn. Raise the far end 1 1/4 in.';

  it('every line fits and no word is lost', () => {
    const lines = wrapText(text, column);
    expect(lines.length).toBe(3);
    for (const line of lines) expect(measureTextWidth(line, 2.5)).toBeLessThanOrEqual(40);
    expect(lines.join(' ')).toBe(text);
  });

  it('what does not fit the lines ends in an ellipsis', () => {
    const lines = wrapText(text, { ...column, maxLines: 2 });
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/);
    expect(measureTextWidth(lines[1] ?? '', 2.5)).toBeLessThanOrEqual(40);
  });

  it('a word longer than the line is cut', () => {
    const lines = wrapText('Donaudampfschifffahrtsgesellschaftskapitän', { size: 2.5, width: 20 });
    for (const line of lines) expect(measureTextWidth(line, 2.5)).toBeLessThanOrEqual(20);
    expect(lines.join('')).toBe('Donaudampfschifffahrtsgesellschaftskapitän');
  });

  it('a short text stays as it is; an empty one has no line', () => {
    expect(elideText('short', column)).toBe('short');
    expect(wrapText('', column)).toEqual([]);
  });
});
