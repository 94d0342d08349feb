import { area, directionTo, distance, edgesOf, rightOf, signedArea } from '../../../../geometry';
import { measureWalls, type PlacedHood, type Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import type { HoodShape } from '../../formulas/support/hoodExhaust';

/** An edge of a hood with a wall within an inch all along it is closed. */
const TOUCH = 25.4;

/** Capture velocity that the printed example of the canopy formula takes; more where the air of the room moves. */
const CAPTURE_MS = toSI(50, 'fpm');

/** A hood as the rules of exhaust see it; its height is null while the lip is not known. */
export type SeenHood = Omit<HoodShape, 'heightM'> & { heightM: number | null };

/** Length is the longer inside edge; the height is from the lowest deck that it covers. */
export function deriveHoodShape(scene: Scene, { hood, polygon, covers }: PlacedHood): SeenHood {
  const open = openEdges(scene, polygon);
  const decks = covers
    .flatMap(({ machine }) => scene.machines.filter((item) => item.machine.id === machine))
    .map(({ sheet }) => sheet.deckHeight);
  return {
    lengthM: Math.max(hood.width, hood.depth) / 1000,
    areaM2: area(polygon) / 1e6,
    openPerimeterM: open.reduce((sum, { a, b }) => sum + distance(a, b), 0) / 1000,
    openSides: open.length < polygon.length ? '3' : '4',
    heightM: hood.lipHeight === null ? null : (hood.lipHeight - Math.min(...decks)) / 1000,
    captureMs: CAPTURE_MS,
  };
}

function openEdges({ room }: Scene, polygon: PlacedHood['polygon']) {
  // Of an outline with a positive area the outside lies on the left of each edge, as y runs down the paper.
  const isReversed = signedArea(polygon) < 0;
  return edgesOf(polygon).filter(({ a, b }) => {
    const outward = rightOf(isReversed ? directionTo(a, b) : directionTo(b, a));
    return !measureWalls({ a, b }, outward, room.walls, TOUCH, TOUCH).isClosed;
  });
}
