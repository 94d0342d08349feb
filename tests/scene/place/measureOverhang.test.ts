import { describe, expect, test } from 'vitest';
import { centredRectangle, type Point, type Polygon, rotate } from '../../../src/geometry';
import { deriveScene } from '../../../src/scene';
import { measureOverhang } from '../../../src/scene/place/measureOverhang';
import { first, linePlan } from '../plans';

/** The front of a machine 737 × 711 with its back left corner at the origin. */
const EDGE = { a: { x: 0, y: 711 }, b: { x: 737, y: 711 } };
const NORMAL = { x: 0, y: 1 };

interface Row {
  name: string;
  centre: [x: number, y: number];
  rotationDeg: number;
  size: [width: number, depth: number];
  expected: number;
}

const HALF = Math.SQRT1_2;

const ROWS: Row[] = [
  // 26 in machine and 6 in all round make a 38 in hood; here 1041.4 × 1015.4 about the machine's centre.
  { name: '6 in on every side', centre: [368.5, 355.5], rotationDeg: 0, size: [737 + 304.8, 711 + 304.8], expected: 152.4 },
  { name: 'as large as the machine', centre: [368.5, 355.5], rotationDeg: 0, size: [737, 711], expected: 0 },
  { name: '40 short of the front', centre: [368.5, 305.5], rotationDeg: 0, size: [1000, 731], expected: -40 },
  { name: 'a quarter turn', centre: [368.5, 355.5], rotationDeg: 90, size: [1000, 1200], expected: 500 - 355.5 },
  // The left and right 68.5 of the front are bare; that is for the sides to say.
  { name: 'narrower than the front', centre: [368.5, 500], rotationDeg: 0, size: [600, 1000], expected: 289 },
  { name: 'narrower, and short of the front', centre: [368.5, 355.5], rotationDeg: 0, size: [600, 600], expected: 300 - 355.5 },
  // Square of 2000 on its corner: its lower edges fall from (x0, y0 + 1000√2) at 45°, so at the ends of the front it reaches 1000√2 − 368.5 below the centre.
  { name: 'on its corner', centre: [368.5, 355.5], rotationDeg: 45, size: [2000, 2000], expected: 2000 * HALF - 368.5 - 355.5 },
  // Square of 400 on its corner about the middle of the front: it covers 200√2 to either side, and reaches nowhere at the ends of that.
  { name: 'small, on its corner', centre: [368.5, 711], rotationDeg: 45, size: [400, 400], expected: 0 },
  { name: 'off to the side', centre: [-500, 711], rotationDeg: 0, size: [400, 400], expected: -300 },
];

describe.each(ROWS)('$name', ({ centre: [x, y], rotationDeg, size: [width, depth], expected }) => {
  const outline = centredRectangle({ x, y }, rotationDeg, width, depth);

  test.each([0, 90, 180, 270, 17])('everything turned by %d°', (deg) => {
    const turned = (p: Point) => rotate(p, deg);
    const edge = { a: turned(EDGE.a), b: turned(EDGE.b) };
    expect(measureOverhang(outline.map(turned), edge, turned(NORMAL))).toBeCloseTo(expected, 6);
    expect(measureOverhang(outline.map(turned).reverse(), edge, turned(NORMAL))).toBeCloseTo(expected, 6);
  });
});

test('brute force: no sampled point of the edge has less', () => {
  const outline = centredRectangle({ x: 300, y: 400 }, 12, 900, 1100);
  const samples = Array.from({ length: 201 }, (_, i) => reachFrom(outline, { x: (737 * i) / 200, y: 711 }));
  expect(measureOverhang(outline, EDGE, NORMAL)).toBeCloseTo(Math.min(...samples), 6);
});

/** Where a vertical line through p leaves the outline, from p downward. */
function reachFrom(outline: Polygon, p: Point): number {
  const ys = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const t = (p.x - a.x) / (b.x - a.x);
    return t >= 0 && t <= 1 ? [a.y + (b.y - a.y) * t] : [];
  });
  return Math.max(...ys) - p.y;
}

test('a hood covers the machines that it hangs over, each side for itself', () => {
  const plan = linePlan({ family: 'recirculating-hot-water', configuration: 'straight' }, (draft) => {
    const { x, y } = first(draft.machines);
    draft.hoods = [
      {
        id: 'over',
        x: x + 20,
        y: y + 30,
        rotationDeg: 0,
        width: 737 + 400,
        depth: 711 + 300,
        lipHeight: 2100,
        height: 450,
        exhaust: null,
        cavityAir: null,
      },
      {
        id: 'beside',
        x: x + 3000,
        y,
        rotationDeg: 0,
        width: 800,
        depth: 800,
        lipHeight: 2100,
        height: 450,
        exhaust: null,
        cavityAir: null,
      },
    ];
  });
  const [over, beside] = deriveScene(plan).hoods;
  expect(over?.covers).toHaveLength(1);
  const { left, right, front, back } = over?.covers[0]?.overhang ?? { left: NaN, right: NaN, front: NaN, back: NaN };
  for (const [found, expected] of [
    [left, 180],
    [right, 220],
    [front, 180],
    [back, 120],
  ] as const)
    expect(found).toBeCloseTo(expected, 6);
  expect(beside?.covers).toEqual([]);
});
