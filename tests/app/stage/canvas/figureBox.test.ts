import { describe, expect, test } from 'vitest';
import { figureCorners, figureOf } from '../../../../src/app/stage/canvas/figureBox';
import { measureTextWidth, type TextPrim } from '../../../../src/drawing';

const VIEW = { scale: 0.2, dx: 7, dy: -3 };

const number = (parts: Partial<TextPrim>): TextPrim => ({
  kind: 'text',
  layer: 'dimensions',
  at: { x: 1000, y: 500 },
  text: '12′-0″',
  size: 3,
  anchor: 'middle',
  baseline: 'middle',
  edit: ['machines', 0, 'x'],
  ...parts,
});

describe('a number of a dimension', () => {
  test('opens with its text where it stands', () => {
    const figure = figureOf(number({}), VIEW);
    expect(figure).toMatchObject({ path: ['machines', 0, 'x'], text: '12′-0″', x: 207 });
    // The middle of the capitals is at 97; with room for descenders, a tenth of the letter's 12 px lower.
    expect(figure?.y).toBeCloseTo(97 + 0.105 * 12, 6);
  });

  test('is no field where it has no path', () => {
    const { edit: _path, ...plain } = number({});
    expect(figureOf(plain, VIEW)).toBeNull();
  });

  test.each([
    { angleDeg: 0, across: 'x', along: 'y' },
    { angleDeg: 90, across: 'y', along: 'x' },
  ] as const)('is pressed on its letters and 5 px around them, at $angleDeg°', ({ angleDeg, across, along }) => {
    const corners = figureCorners(number({ angleDeg }), VIEW);
    const extent = (key: 'x' | 'y') => Math.max(...corners.map((p) => p[key])) - Math.min(...corners.map((p) => p[key]));
    // Ink is 4 px to the paper millimetre.
    expect(extent(across)).toBeCloseTo(measureTextWidth('12′-0″', 3) * 4 + 10, 6);
    expect(extent(along)).toBeGreaterThan(0.6 * 12 + 10);
    expect(extent(along)).toBeLessThan(12 + 10);
  });
});
