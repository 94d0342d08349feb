import { describe, expect, test } from 'vitest';
import { centredRectangle, distance, isInside, measureProtrusion, type Point, type Polygon, signedDistance } from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

const L_ROOM = points([0, 0], [144, 0], [144, 60], [60, 60], [60, 120], [0, 120]);

// Worked by hand, inches.
test.each([
  { name: 'all of it outside', piece: points([200, 10], [220, 10], [220, 30], [200, 30]), by: 76 },
  { name: 'a corner out past a corner of the room', piece: points([130, -4], [147, -4], [147, 20], [130, 20]), by: 5 },
  { name: 'the whole room and more', piece: points([-10, -10], [154, -10], [154, 130], [-10, 130]), by: Math.hypot(10, 70) },
  { name: 'over the notch with its ends on the walls', piece: points([60, 100], [20, 60], [60, 20], [100, 60]), by: 20 },
  { name: 'turned 45° over the re-entrant corner', piece: points([60, 70], [50, 60], [60, 50], [70, 60]), by: 5 },
  { name: 'with an edge along two walls that meet straight', piece: points([100, 0], [144, 0], [144, 60], [100, 60]), by: 0 },
  { name: 'nothing', piece: [], by: 0 },
])('out of the L room: $name', ({ piece, by }) => {
  for (const { move } of MOTIONS) {
    const [room, moved] = [L_ROOM.map(move), piece.map(move)];
    for (const outline of [room, room.toReversed()]) {
      const found = measureProtrusion(outline, moved);
      expect(found.by).toBeCloseTo(by, 4);
      expect(found.place ? distance(found.place.a, found.place.b) : 0).toBeCloseTo(by, 4);
      expect(isInside(outline, moved)).toBe(by === 0);
      expect(isInside(outline, moved, by + 0.001)).toBe(true);
    }
  }
});

test.each([
  { name: 'as far out as can be measured', x: -1e-6, by: 0 },
  { name: 'ten times as far', x: -1e-5, by: 1e-5 },
])('a corner out of the L room: $name', ({ x, by }) => {
  expect(measureProtrusion(L_ROOM, points([x, 20], [20, 10], [40, 20], [20, 30])).by).toBe(by);
});

test('an edge from a slanted wall out over a notch is looked at though rounding hides where it meets the wall', () => {
  const room = points([0, 0], [200, 0], [200, 60], [93, 60], [131, 160], [0, 160]);
  // From (127.2, 150) on the wall to (140, 66): at t it is 90 − 84 t from the level wall and 4472 t / √11444 from the slanted one.
  const slant = 4472 / Math.sqrt(11_444);
  expect(measureProtrusion(room, points([127.2, 150], [140, 66], [140, 50])).by).toBeCloseTo((90 * slant) / (84 + slant), 5);
});

describe('a table turned and placed by seed', () => {
  test.each(Array.from({ length: 25 }, (_, i) => i))('seed %i: no point of its edge is farther out than measured', (seed) => {
    const random = createRandom(seed * 613 + 5);
    const piece = centredRectangle({ x: random() * 150, y: random() * 120 }, random() * 360, 5 + random() * 90, 5 + random() * 50);
    const { by, place } = measureProtrusion(L_ROOM, piece);
    const farthest = Math.max(0, ...alongOutline(piece, 400).map((p) => signedDistance(L_ROOM, p)));
    expect(by).toBeGreaterThanOrEqual(farthest - 1e-6);
    expect(by - farthest).toBeLessThan(0.2);
    expect(place ? signedDistance(L_ROOM, place.a) : 0).toBeCloseTo(by, 9);
  });
});

const alongOutline = (piece: Polygon, steps: number) =>
  piece.flatMap((a, i) => {
    const b = piece[(i + 1) % piece.length] as Point;
    return Array.from({ length: steps }, (_, k) => ({ x: a.x + ((b.x - a.x) * k) / steps, y: a.y + ((b.y - a.y) * k) / steps }));
  });
