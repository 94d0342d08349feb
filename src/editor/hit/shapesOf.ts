import { WALL_THICKNESS } from '../../drawing';
import { along, type Point, type Polygon } from '../../geometry';
import type { PlacedHood, PlacedOpening, PlacedTable, Scene, Wall } from '../../scene';
import type { SubjectKind } from '../subject/subject';

/** A line around a thing, or along it. */
export interface Outline {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** The true shape of a thing on the paper, mm: what a pointer takes it by, what marks it, what a frame must hold to take it. */
export interface ItemShape {
  readonly id: string;
  readonly kind: SubjectKind;
  /** Taken anywhere inside. */
  readonly areas: readonly Polygon[];
  /** Taken near these lines as well: within `reach` times what the pointer reaches, but no nearer than `least` mm. A point is a line of one point. */
  readonly lines: readonly Outline[];
  readonly reach: number;
  readonly least: number;
  /** The lines that mark it. */
  readonly outlines: readonly Outline[];
  /** Its corners and bends; none for what no frame takes. */
  readonly corners: readonly Point[];
}

const known = new WeakMap<Scene, ReadonlyMap<string, ItemShape>>();

/** The shapes of everything on the paper, by id. */
export function shapesOf(scene: Scene): ReadonlyMap<string, ItemShape> {
  const found = known.get(scene) ?? new Map([...shapesOfRoom(scene), ...shapesOfLine(scene), ...shapesOfAir(scene)].map((s) => [s.id, s]));
  known.set(scene, found);
  return found;
}

/** A stub's mark is as large as half this, mm. */
const STUB = 60;

const NONE = { areas: [], lines: [], outlines: [], corners: [], reach: 0, least: 0 } as const;

const closed = (points: readonly Point[]): Outline => ({ points, closed: true });
const open = (points: readonly Point[]): Outline => ({ points, closed: false });

/** Taken anywhere inside its outline, and within `reach` around it. */
function body(id: string, kind: SubjectKind, polygon: Polygon, reach = 0): ItemShape {
  const outline = closed(polygon);
  return { ...NONE, id, kind, areas: [polygon], lines: reach > 0 ? [outline] : [], reach, outlines: [outline], corners: polygon };
}

function shapesOfRoom({ room }: Scene): ItemShape[] {
  return [
    ...room.walls.map(shapeOfWall),
    ...room.openings.map(shapeOfOpening),
    ...room.columns.map(({ column, polygon }) => body(column.id, 'column', polygon)),
    // A drain is small: a finger finds it from a little way off.
    ...room.floorDrains.map(({ drain, polygon }) => body(drain.id, 'floor-drain', polygon, 1)),
    ...room.stubs.map(shapeOfStub),
  ];
}

function shapeOfWall(wall: Wall): ItemShape {
  const line = open([wall.a, wall.b]);
  return { ...NONE, id: wall.id, kind: 'corner', areas: [bandOf(wall, 0, wall.length)], lines: [line], reach: 1, outlines: [line] };
}

function shapeOfOpening({ opening, wall, segment }: PlacedOpening): ItemShape {
  const line = open([segment.a, segment.b]);
  const areas = [bandOf(wall, opening.from, opening.from + opening.width)];
  return { ...NONE, id: opening.id, kind: 'opening', areas, lines: [line], reach: 1.5, outlines: [line] };
}

/** A stretch of a wall, as thick as it is drawn. */
function bandOf({ a, direction, inward }: Wall, from: number, to: number): Polygon {
  const [near, far] = [along(a, direction, from), along(a, direction, to)];
  return [near, far, along(far, inward, -WALL_THICKNESS), along(near, inward, -WALL_THICKNESS)];
}

function shapeOfStub({ stub, point }: Scene['room']['stubs'][number]): ItemShape {
  const outlines = [closed(squareAbout(point))];
  return { ...NONE, id: stub.id, kind: 'stub', lines: [open([point])], reach: 1.5, outlines, corners: [point] };
}

const squareAbout = ({ x, y }: Point): Polygon => [
  { x: x - STUB, y: y - STUB },
  { x: x + STUB, y: y - STUB },
  { x: x + STUB, y: y + STUB },
  { x: x - STUB, y: y + STUB },
];

function shapesOfLine({ machines, tables, things }: Scene): ItemShape[] {
  return [
    ...machines.map(({ machine, footprint }) => body(machine.id, 'machine', footprint)),
    ...tables.flatMap((table) => [shapeOfTable(table), ...shapesOfFittings(table)]),
    ...things.map(({ thing, polygon }) => body(thing.id, 'thing', polygon, 0.5)),
  ];
}

const shapeOfTable = ({ table, deck, outline }: PlacedTable): ItemShape => ({ ...body(table.id, 'table', outline), areas: deck });

/** A fitting goes where its table goes: a frame takes the table. */
const shapesOfFittings = ({ fittings }: PlacedTable): ItemShape[] =>
  fittings.map(({ fitting, polygon }) => ({ ...body(fitting.id, 'fitting', polygon), corners: [] }));

function shapesOfAir({ hoods, runs }: Scene): ItemShape[] {
  return [
    ...hoods.map(shapeOfHood),
    ...runs.map(({ run, points }): ItemShape => {
      const line = open(points);
      return { ...NONE, id: run.id, kind: 'run', lines: [line], reach: 1, least: run.diameter / 2, outlines: [line], corners: points };
    }),
  ];
}

/** A hood hangs over what one means to press, so only its edge counts; all of it where nothing stands under it. */
function shapeOfHood({ hood, polygon, covers }: PlacedHood): ItemShape {
  const shape = body(hood.id, 'hood', polygon, 1);
  return covers.length === 0 ? shape : { ...shape, areas: [] };
}
