import { along, type Point, type Polygon, scale } from '../../geometry';
import type { PlacedOpening, Scene } from '../../scene';
import { formatterFor, type Units } from '../../units';
import type { Drawing, Prim } from '../drawing';
import { drawOpening } from '../floorPlan/drawOpening';
import type { PlanOptions } from '../floorPlan/planOptions';
import { layLabels } from '../labels/layLabels';
import { type Box, boxAround, scaleBox, withHalfHeight } from '../layout/box';
import { inkBoxes } from '../layout/inkBoxes';
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

/** What figures had better not stand on: the wall's band, leaves of doors and the arcs of their swing, equipment, the operator. */
function bodiesOf(scene: Scene, unit: number): Body[] {
  const scaled = (p: Point) => scale(p, 1 / unit);
  const walls = scene.room.walls.map(({ a, b, inward }): Body => {
    const [from, to] = [a, b].map((p) => scaled(along(p, inward, -WALL_THICKNESS / 2)));
    return { boxes: [boxAround(from ?? a, to ?? b, WALL_THICKNESS / unit)], subject: null };
  });
  const doors = scene.room.openings.flatMap((placed) => doorOf(placed, unit));
  const rings: [string, Polygon][] = [
    ...scene.machines.map(({ machine, footprint }): [string, Polygon] => [machine.id, footprint]),
    ...scene.tables.flatMap(({ table, deck }) => deck.map((piece): [string, Polygon] => [table.id, piece])),
    ...scene.things.map(({ thing, polygon }): [string, Polygon] => [thing.id, polygon]),
  ];
  const people = scene.lines.flatMap(({ stand }) => (stand === null ? [] : [personBox(scaled(stand.centre), 230 / unit)]));
  return [...walls, ...doors, ...people, ...rings.map(([subject, ring]) => ({ boxes: boxOfRing(ring.map(scaled)), subject }))];
}

/** Air beside the leaf of a door, paper mm. */
const AIR = 0.4;

/** The thin arc of a swing may rather be crossed than have the chain pushed out past it. */
const ARC_WEIGHT = 0.1;

/** Open leaves, and the arcs of their swing: lines may cross them, figures had better not. */
function doorOf(placed: PlacedOpening, unit: number): Body[] {
  const drawing = drawOpening(placed);
  const boxesOf = (kind: Prim['kind']) =>
    inkBoxes(
      drawing.filter((prim) => prim.kind === kind),
      0,
    ).map((box) => withHalfHeight(scaleBox(box, 1 / unit), AIR));
  return [
    { boxes: boxesOf('area'), subject: null, isOpen: true },
    { boxes: boxesOf('arc'), subject: null, isOpen: true, weight: ARC_WEIGHT },
  ];
}

const personBox = (centre: Point, half: number): Body => ({
  boxes: [{ centre, d: { x: 1, y: 0 }, halfLength: half, halfHeight: half }],
  subject: null,
});

/** A four-cornered body as a box along its first side. */
function boxOfRing(ring: readonly { x: number; y: number }[]): Box[] {
  const [a, b, c, d] = ring;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const half = (p: typeof a, q: typeof a) => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
  return [boxAround(half(a, d), half(b, c), Math.hypot(d.x - a.x, d.y - a.y))];
}
