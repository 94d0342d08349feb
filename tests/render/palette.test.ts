import { describe, expect, it } from 'vitest';
import { HUES } from '../../src/drawing';
import { DAY, NIGHT, type Palette, PRINT } from '../../src/render';

/** Relative luminance and contrast ratio: WCAG 2.1, definitions of the terms. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].toSorted((p, q) => p - q);
  return (high + 0.05) / (low + 0.05);
}

/** Hairlines only part what stands apart already: nothing depends on seeing them. */
const READ = HUES.filter((hue) => hue !== 'paper' && hue !== 'hairline');

describe.each([
  ['day', DAY],
  ['night', NIGHT],
  ['print', PRINT],
] as [string, Palette][])('%s paper', (_, palette) => {
  it.each(READ)('%s reads at 4.5 : 1 or more (WCAG 2.1, 1.4.3)', (hue) => {
    expect(contrast(palette[hue], palette.paper)).toBeGreaterThanOrEqual(4.5);
  });

  it('every colour is written in full', () => {
    for (const hue of HUES) expect(palette[hue]).toMatch(/^#[0-9a-f]{6}$/);
  });
});

it('black on white is 21 : 1', () => expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9));
