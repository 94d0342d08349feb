import { expect, test } from 'vitest';
import { distance, findStandingPlace, measureProtrusion } from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';

const L_ROOM = points([0, 0], [144, 0], [144, 60], [60, 60], [60, 120], [0, 120]);

// legal centres of a 60 in turning circle in the L room.
test.each([
  { centre: [30, 30], fits: true },
  { centre: [114, 30], fits: true },
  { centre: [115, 30], fits: false },
  { centre: [100, 31], fits: false },
  { centre: [38, 38], fits: true },
  { centre: [39, 39], fits: false },
] as const)('a 60 in circle at $centre fits: $fits', ({ centre: [x, y], fits }) => {
  for (const { move } of MOTIONS) {
    const near = move({ x, y });
    const place = findStandingPlace({ region: [L_ROOM.map(move)], room: L_ROOM.map(move), obstacles: [], near, width: 60, within: 0.001 });
    // The region is concave, so only its outline is asked of; the search may not leave the point itself.
    expect(place !== null).toBe(fits);
  }
});

test('the nearest free place beside a table', () => {
  const room = points([0, 0], [4000, 0], [4000, 4000], [0, 4000]);
  const table = points([0, 0], [4000, 0], [4000, 762], [0, 762]);
  const near = { x: 2000, y: 762 };
  const place = findStandingPlace({ region: [room], room, obstacles: bodiesOf([table]), near, width: 700, within: 2000 });
  expect(place?.distance).toBeGreaterThanOrEqual(350 - 1e-6);
  expect(place?.distance).toBeLessThan(352);
  expect(distance(place?.centre ?? near, near)).toBeCloseTo(place?.distance ?? 0, 9);
});

test.each([
  { name: 'inside', piece: points([10, 10], [50, 10], [50, 50], [10, 50]), by: 0 },
  { name: 'flush with two walls', piece: points([0, 0], [50, 0], [50, 50], [0, 50]), by: 0 },
  { name: '5 in through a wall', piece: points([-5, 10], [30, 10], [30, 40], [-5, 40]), by: 5 },
  { name: 'over the notch', piece: points([40, 40], [80, 40], [80, 70], [40, 70]), by: 10 },
  { name: 'across the notch with its corners in the room', piece: points([20, 110], [110, 20], [120, 30], [30, 120]), by: 15 },
])('out of the L room: $name', ({ piece, by }) => {
  for (const { move } of MOTIONS) {
    const out = measureProtrusion(L_ROOM.map(move), piece.map(move)).by;
    expect(out).toBeCloseTo(by, 4);
  }
});
