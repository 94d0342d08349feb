import { expect, test } from 'vitest';
import { type Point, type Polygon, pathLength } from '../../src/geometry';
import { findSharedFloor } from '../../src/scene/ways/findSharedFloor';
import { findWidestWay } from '../../src/scene/ways/findWidestWay';
import { areaOf, common, createBodies, freeFloor, grown, isWayFor, joined, less, lineOf as pathAs, placeOf } from '../support/areas';
import { createRandom } from '../support/seeded';
import { at, box, HALL, lineOf, roomOf, solidOf } from './hall';
import { first } from './plans';

/** The oracle is jsts, and takes its time. */
const PATIENT = { timeout: 30_000 };

/** Tolerance of the oracle: the chords of its arcs. */
const HAIR = 1;

test('the way in: what fits through the door and over the free floor, with a hair less but not with a hair more', PATIENT, () => {
  let [byAisle, byDoor, shut] = [0, 0, 0];
  for (let seed = 0; seed < 36; seed++) {
    const random = createRandom(seed * 71 + 9);
    const bodies = [...createBodies(seed, 3 + (seed % 5)), ...partition(random)].filter((body) => !isNearStand(body));
    const [from, width] = [200 + random() * 800, 700 + random() * 500];
    const room = roomOf(HALL, [{ wall: '0', from, width }]);
    const line = lineOf({ inside: null, stand: { centre: STAND, width: 700, reach: 0 } });
    const way = findWidestWay({ room, solids: bodies.map((body, i) => solidOf(`body-${i}`, body)) }, line, 2000);
    // A bay as wide and as deep as the door, in front of the wall.
    const bay = box(from, -width, from + width, 0);
    const floor = joined([freeFloor(box(0, 0, 6000, 4000), bodies), areaOf(bay)]);
    const behindDoor = at(from + width / 2, -width / 2);
    const found = Math.min(way?.door ?? 0, way?.aisle.width ?? 0);
    expect([seed, isWayFor(floor, found + HAIR, behindDoor, STAND)]).toEqual([seed, false]);
    expect([seed, found <= HAIR || isWayFor(floor, found - HAIR, behindDoor, STAND)]).toEqual([seed, true]);
    if (found === 0) shut++;
    else if (found < width - 1) byAisle++;
    else byDoor++;
  }
  expect(byAisle).toBeGreaterThan(12);
  expect(Math.min(byDoor, shut)).toBeGreaterThan(2);
});

const STAND = at(5000, 3000);
const isNearStand = (body: Polygon) => common(areaOf(body), grown(placeOf(STAND), 600)).getArea() > 0;

/** Two walls in line from above to below at x = 3500, with a gap of up to 2000 between them, or none. */
function partition(random: () => number): Polygon[] {
  const [gap, middle] = [Math.max(0, random() * 2200 - 200), 1000 + random() * 2000];
  return [box(3500, -100, 3600, middle - gap / 2), box(3500, middle + gap / 2, 3600, 4100)];
}

test('the floor that two legs share is what of the clean one lies within the width of the soiled one', PATIENT, () => {
  const random = createRandom(99);
  const place = (): Point => at(random() * 4000, random() * 3000);
  let shared = 0;
  for (let run = 0; run < 200; run++) {
    const [soiled, clean] = [
      [place(), place()],
      [place(), place()],
    ];
    const width = 200 + random() * 800;
    const line = lineOf({ ways: { soiled, rack: [], clean } });
    const found = findSharedFloor(line, [line], width).reduce((sum, { a, b }) => sum + pathLength([a, b]), 0);
    const theirs = common(pathAs(clean), grown(pathAs(soiled), width)).getLength();
    // Where the clean leg runs along the rim of the area, a chord of the oracle cuts off more of it.
    expect([run, Math.abs(found - theirs) < 15 + theirs / 100]).toEqual([run, true]);
    if (theirs > 0) shared++;
  }
  expect(shared).toBeGreaterThan(80);
  expect(shared).toBeLessThan(190);
});

test('a leaf sweeps the quarter of a disc between its wall and its square to it', PATIENT, () => {
  const random = createRandom(5);
  for (let run = 0; run < 60; run++) {
    const [wall, from, width] = [Math.floor(random() * 4), 300 + random() * 1000, 600 + random() * 600];
    const [hinge, isDouble] = [random() < 0.5 ? ('start' as const) : ('end' as const), random() < 0.3];
    const corners = run % 2 === 0 ? HALL : HALL.toReversed();
    const room = roomOf(corners, [{ kind: isDouble ? 'double-door' : 'door', swing: 'in', wall: `${wall}`, from, width, hinge }]);
    const { sweep, segment } = first(room.openings);
    const leaf = isDouble ? width / 2 : width;
    const hinges = isDouble ? [segment.a, segment.b] : [hinge === 'start' ? segment.a : segment.b];
    expect(sweep).toHaveLength(hinges.length);
    for (const [i, pin] of hinges.entries()) {
      const latch = isDouble
        ? at((segment.a.x + segment.b.x) / 2, (segment.a.y + segment.b.y) / 2)
        : pin === segment.a
          ? segment.b
          : segment.a;
      // The part of the disc about the hinge that lies in the room, less what lies on the far side of the hinge.
      const inRoom = common(grown(placeOf(pin), leaf), areaOf(box(0, 0, 6000, 4000)));
      const theirs = less(inRoom, halfBehind(pin, latch));
      const fan = areaOf(sweep[i] as Polygon);
      expect(less(fan, grown(theirs, 0.5)).getArea()).toBeLessThan(1);
      expect(fan.getArea() / theirs.getArea()).toBeCloseTo(1, 2);
    }
  }
});

/** Everything within 10 m that lies behind a hinge, seen from its latch. */
function halfBehind(hinge: Point, latch: Point) {
  const size = Math.hypot(latch.x - hinge.x, latch.y - hinge.y);
  const [x, y] = [((latch.x - hinge.x) / size) * 10_000, ((latch.y - hinge.y) / size) * 10_000];
  return areaOf([
    at(hinge.x - y, hinge.y + x),
    at(hinge.x + y, hinge.y - x),
    at(hinge.x + y - x, hinge.y - x - y),
    at(hinge.x - y - x, hinge.y + x - y),
  ]);
}
