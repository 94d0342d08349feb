import { describe, expect, it } from 'vitest';
import { area, type Polygon } from '../../src/geometry';
import { dotRings, hatchRings } from '../../src/render/hatch';
import { PATTERNS } from '../../src/render/inks';

const square: Polygon = [
  { x: 10, y: 20 },
  { x: 110, y: 20 },
  { x: 110, y: 120 },
  { x: 10, y: 120 },
];
const hole: Polygon = [
  { x: 40, y: 50 },
  { x: 80, y: 50 },
  { x: 80, y: 90 },
  { x: 40, y: 90 },
];
const lines = { kind: 'lines', angleDeg: -45, spacing: 2, width: 0.1 } as const;
const dots = { kind: 'dots', spacing: 2, diameter: 0.4 } as const;

const totalLength = (rings: readonly Polygon[], unit = 1, window?: Parameters<typeof hatchRings>[3]) =>
  hatchRings(rings, lines, unit, window).reduce((sum, { a, b }) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);

describe('hatch', () => {
  it('covers an area with one line for each spacing: length × spacing is the area', () => {
    expect(totalLength([square]) * 2).toBeCloseTo(area(square), -2);
    expect(totalLength([square, hole]) * 2).toBeCloseTo(area(square) - area(hole), -2);
  });

  it('keeps its spacing on paper at any scale', () => expect(totalLength([square], 5) * 10).toBeCloseTo(area(square), -3));

  it('runs at its angle, rising to the right', () => {
    for (const { a, b } of hatchRings([square], lines, 1)) expect((b.y - a.y) / (b.x - a.x)).toBeCloseTo(-1, 9);
  });

  it('draws no more than the window shows', () => {
    const window = { minX: 10, minY: 20, maxX: 60, maxY: 70 };
    expect(totalLength([square], 1, window)).toBeLessThan(totalLength([square]) * 0.62);
    const whole = { minX: -1e6, minY: -1e6, maxX: 1e6, maxY: 1e6 };
    expect(totalLength([square], 1, whole)).toBeCloseTo(totalLength([square]), 9);
  });

  it('no line of nothing', () => expect(hatchRings([[]], lines, 1)).toEqual([]));
});

describe('dots', () => {
  it('lie inside, none in a hole', () => {
    const found = dotRings([square, hole], dots, 1);
    expect(found.length).toBeGreaterThan(2000);
    expect(found.filter((p) => p.x < 10 || p.x > 110 || p.y < 20 || p.y > 120)).toEqual([]);
    expect(found.filter((p) => p.x > 40.3 && p.x < 79.7 && p.y > 50.3 && p.y < 89.7)).toEqual([]);
  });
});

it('soiled and clean, and walls, have patterns that differ', () => {
  expect(PATTERNS['hatch-45'].kind).toBe('lines');
  expect(PATTERNS.dots.kind).toBe('dots');
  expect(PATTERNS.wall).not.toEqual(PATTERNS['hatch-45']);
});
