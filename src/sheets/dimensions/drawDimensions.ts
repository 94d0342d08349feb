import { along, type Point, type Polygon, scale } from '../../geometry';
import type { Scene } from '../../scene';
import { formatterFor, type Units } from '../../units';
import type { Drawing } from '../drawing';
import type { PlanOptions } from '../floorPlan/planOptions';
import { layLabels } from '../labels/layLabels';
import { type Box, boxAround } from '../layout/box';
import { WALL_THICKNESS } from '../support/ink';
import { memoizeLast } from '../support/memoizeLast';
import { createAisleRows } from './aisleRows';
import { createColumnRows } from './columnRows';
import { createEquipmentRows } from './equipmentRows';
import type { Body } from './layRow';
import { createMachineRows } from './machineRows';
import { placeDimensions } from './placeDimensions';
import { createOpeningRows, createOverallRow, createWallRows } from './roomRows';
import { deriveSides, type RoomSide } from './sidesOfRoom';
import { createTableRows } from './tableRows';
import type { DimensionRequest } from './types';

/**
 * The dimensions of a plan, in plan mm: chains and overall sizes outside the room, sizes and distances of the line inside it.
 * Figures never cover each other, a mark or a note; one that is a field of the plan carries its path in `edit`
 * (a wall's length has the path `room, outline, index, length`, which stands for moving its far corner).
 */
export const drawDimensions: (scene: Scene, options: PlanOptions) => Drawing = memoizeLast(
  (scene: Scene, units: Units, unit: number): Drawing => {
    const labels = layLabels(scene, { units, scaleDenominator: unit });
    return placeDimensions(createRequests(scene, units, unit), unit, { texts: labels.taken, lines: [], bodies: bodiesOf(scene, unit) });
  },
  (scene, { units, scaleDenominator }): [Scene, Units, number] => [scene, units, scaleDenominator],
);

/** Inner chains first, so that overall sizes come to lie outside them; then what stands inside the room. */
function createRequests(scene: Scene, units: Units, unit: number): DimensionRequest[] {
  const f = formatterFor(units);
  const sides = deriveSides(scene.room);
  return [
    ...sides.flatMap((side) => createEquipmentRows(scene, side, f, unit)),
    ...sides.flatMap((side) => createOpeningRows(scene, side, f, unit)),
    ...sides.flatMap((side) => createWallRows(scene, side, f, unit)),
    ...overallSides(scene, sides).map((side) => createOverallRow(scene, side, f, unit)),
    ...createTableRows(scene, f, unit),
    ...createAisleRows(scene, f, unit),
    ...createMachineRows(scene, f, unit),
    ...createColumnRows(scene, sides, f, unit),
  ];
}

/** One of each two opposite main sides: the one that has chains already, so that they can be read together. */
function overallSides(scene: Scene, sides: readonly RoomSide[]): RoomSide[] {
  const busy = (side: RoomSide) => scene.room.openings.filter(({ wall }) => side.walls.includes(wall)).length;
  const main = sides.filter((side) => side.isMain).toSorted((a, b) => busy(b) - busy(a));
  const chosen: RoomSide[] = [];
  for (const side of main) {
    const isTold = chosen.some((other) => Math.abs(other.axis.x * side.axis.y - other.axis.y * side.axis.x) < 1e-3);
    if (!isTold) chosen.push(side);
  }
  return chosen;
}

/** What figures had better not stand on: the wall's band, equipment, the operator. */
function bodiesOf(scene: Scene, unit: number): Body[] {
  const scaled = (p: Point) => scale(p, 1 / unit);
  const walls = scene.room.walls.map(({ a, b, inward }): Body => {
    const [from, to] = [a, b].map((p) => scaled(along(p, inward, -WALL_THICKNESS / 2)));
    return { box: boxAround(from ?? a, to ?? b, WALL_THICKNESS / unit), subject: null };
  });
  const rings: [string, Polygon][] = [
    ...scene.machines.map(({ machine, footprint }): [string, Polygon] => [machine.id, footprint]),
    ...scene.tables.flatMap(({ table, deck }) => deck.map((piece): [string, Polygon] => [table.id, piece])),
    ...scene.things.map(({ thing, polygon }): [string, Polygon] => [thing.id, polygon]),
  ];
  const people = scene.lines.flatMap(({ stand }) => (stand === null ? [] : [personBox(scaled(stand.centre), 230 / unit)]));
  return [...walls, ...people, ...rings.flatMap(([subject, ring]) => boxOfRing(ring.map(scaled)).map((box) => ({ box, subject })))];
}

const personBox = (centre: Point, half: number): Body => ({
  box: { centre, d: { x: 1, y: 0 }, halfLength: half, halfHeight: half },
  subject: null,
});

/** A four-cornered body as a box along its first side. */
function boxOfRing(ring: readonly { x: number; y: number }[]): Box[] {
  const [a, b, c, d] = ring;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const half = (p: typeof a, q: typeof a) => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
  return [boxAround(half(a, d), half(b, c), Math.hypot(d.x - a.x, d.y - a.y))];
}
