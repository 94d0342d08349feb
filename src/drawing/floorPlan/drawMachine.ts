import { along, type Point } from '../../geometry';
import type { PlacedMachine, PlacedSide } from '../../scene';
import type { Drawing, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';

/** How far a door's panel lies inside the footprint, and how thick it is drawn. */
const DOOR_INSET = 18;
const DOOR_THICKNESS = 26;
/** The rails that carry the rack lie this far from its centre line. */
const RAIL = 200;

/** A machine: body, doors, rack track, controls, connections, collar; the box of a recovery machine; free floor for service. */
export function drawMachine(machine: PlacedMachine, rackSize: number): Drawing {
  const pen = createPen('equipment', machine.machine.id);
  return [
    ...drawServiceZones(machine),
    pen.area(machine.footprint, { fill: 'paper', stroke: 'ink', width: WIDTH.heavy }),
    ...drawTrack(pen, machine, rackSize),
    ...Object.values(machine.sides).flatMap((side) => drawDoor(pen, side)),
    ...drawFrontMark(pen, machine),
    ...drawControls(pen, machine),
    ...drawConnections(machine),
    ...drawCollar(machine),
    ...drawRecoveryBox(machine),
  ];
}

function drawServiceZones(machine: PlacedMachine): Prim[] {
  const pen = createPen('zones', machine.machine.id);
  return machine.serviceZones.map(({ polygon }) =>
    pen.area(polygon, { stroke: 'second', width: WIDTH.fine, dash: 'dotted', pattern: 'none' }),
  );
}

/** Rails from each door in use to the middle, and the rack as it stands in the machine. */
function drawTrack(pen: Pen, machine: PlacedMachine, rackSize: number): Prim[] {
  const centre = rackCentre(machine);
  const used = Object.values(machine.sides).filter((side) => side.door !== null && side.table !== null);
  const rails = used.flatMap((side) => drawRails(pen, side, centre));
  const { right, front } = machine.sides;
  const half = rackSize / 2;
  const corner = (i: number, j: number) => along(along(centre, right.normal, i * half), front.normal, j * half);
  const rack = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  return [...rails, pen.area(rack, { stroke: 'second', width: WIDTH.narrow, pattern: 'none' })];
}

function drawRails(pen: Pen, side: PlacedSide, centre: Point): Prim[] {
  const { door, normal } = side;
  if (door === null) return [];
  const across = { x: -normal.y, y: normal.x };
  const depth = Math.abs((door.x - centre.x) * normal.x + (door.y - centre.y) * normal.y);
  return [-RAIL, RAIL].map((offset) => {
    const from = along(door, across, offset);
    return pen.line([from, along(from, normal, -Math.max(0, depth - RAIL))], { stroke: 'second', width: WIDTH.fine });
  });
}

/** Where the rack centre lines of the doors cross. */
export function rackCentre(machine: PlacedMachine): Point {
  const { sheet } = machine;
  const y = sheet.doors.includes('left') ? sheet.rackLine.left : sheet.rackLine.right;
  return placeInMachine(machine, sheet.rackLine.front, y);
}

/** A point of the machine's own frame on the plan. */
export function placeInMachine({ machine, sheet, sides }: PlacedMachine, x: number, y: number): Point {
  const centre = { x: machine.x, y: machine.y };
  return along(along(centre, sides.right.normal, x - sheet.width / 2), sides.front.normal, y - sheet.depth / 2);
}

/** A door that is used is a thin panel; one that stays shut (its track closed) is a solid bar. */
function drawDoor(pen: Pen, side: PlacedSide): Prim[] {
  if (side.door === null) return [];
  const { a, b } = side.edge;
  const inset = (p: Point, q: Point, depth: number) =>
    along(along(p, { x: (q.x - p.x) / length, y: (q.y - p.y) / length }, 40), side.normal, -depth);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const ring = [
    inset(a, b, DOOR_INSET),
    inset(b, a, DOOR_INSET),
    inset(b, a, DOOR_INSET + DOOR_THICKNESS),
    inset(a, b, DOOR_INSET + DOOR_THICKNESS),
  ];
  const isShut = side.table === null;
  return [pen.area(ring, { stroke: 'ink', width: WIDTH.narrow, fill: isShut ? 'ink' : 'paper', fillOpacity: isShut ? 0.75 : 1 })];
}

/** A small wedge outside the front, so that the plan tells which way the machine faces. */
function drawFrontMark(pen: Pen, { sides }: PlacedMachine): Prim[] {
  const { front } = sides;
  const angleDeg = (Math.atan2(front.normal.y, front.normal.x) * 180) / Math.PI + 90;
  const at = along(front.centre, front.normal, -95);
  return [pen.symbol(at, 'triangle', 2, { fill: 'second', angleDeg })];
}

/** The control post, solid, with the floor before it over which a hand reaches. */
function drawControls(pen: Pen, { controls, machine }: PlacedMachine): Prim[] {
  if (controls === null) return [];
  const { face, normal, reachZone } = controls;
  const out = (p: Point, depth: number) => along(p, normal, depth);
  const post = [out(face.a, 45), out(face.b, 45), out(face.b, -50), out(face.a, -50)];
  return [
    createPen('zones', machine.id).area(reachZone, {
      stroke: 'chosen',
      width: WIDTH.fine,
      dash: 'dotted',
      fill: 'chosen',
      fillOpacity: 0.06,
    }),
    pen.area(post, { fill: 'chosen', stroke: 'ink', width: WIDTH.narrow }),
  ];
}

const CONNECTION_HUES = {
  'cold-water': 'water',
  'hot-water': 'water',
  drain: 'water',
  power: 'power',
  'vent-signal': 'power',
  'rinse-aid-signal': 'power',
  'detergent-signal': 'power',
  collar: 'air',
} as const;

/** Water is a ring, the drain a filled dot, power and signals a square. */
function drawConnections({ connections, machine }: PlacedMachine): Prim[] {
  const pen = createPen('floor', machine.id);
  return connections
    .filter(({ connection }) => connection.kind !== 'collar')
    .map(({ connection, point }) => {
      const hue = CONNECTION_HUES[connection.kind];
      if (connection.kind === 'drain') return pen.symbol(point, 'dot', 1.5, { fill: hue });
      if (hue === 'power') return pen.symbol(point, 'square', 1.1, { stroke: hue, width: WIDTH.narrow, fill: 'paper' });
      return pen.symbol(point, 'ring', 1.4, { stroke: hue, width: WIDTH.medium, fill: 'paper' });
    });
}

function drawCollar({ collar, sheet, machine }: PlacedMachine): Prim[] {
  if (collar === null || sheet.vent.kind !== 'direct') return [];
  const pen = createPen('run', machine.id);
  const radius = sheet.vent.ductDiameter / 2;
  return [
    pen.circle(collar, radius, { stroke: 'air', width: WIDTH.wide, fill: 'paper' }),
    pen.symbol(collar, 'cross', 2, { stroke: 'air', width: WIDTH.narrow, angleDeg: 45 }),
  ];
}

/** The box of a heat-recovery machine: behind, above or beside it, so it is drawn dashed where it hangs above the cut. */
function drawRecoveryBox(machine: PlacedMachine): Prim[] {
  const { vent } = machine.sheet;
  if (vent.kind !== 'recovery') return [];
  const { x, y, width, depth, zFrom } = vent.box;
  const corners: [number, number][] = [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
  const ring = corners.map(([px, py]) => placeInMachine(machine, px, py));
  const isAbove = zFrom > 1200;
  const pen = createPen(isAbove ? 'above' : 'equipment', machine.machine.id);
  const cross = [0, 1].map((i) =>
    pen.line([ring[i] ?? ORIGIN, ring[i + 2] ?? ORIGIN], { stroke: 'air', width: WIDTH.fine, dash: isAbove ? 'short' : 'solid' }),
  );
  return [pen.area(ring, { stroke: 'air', width: WIDTH.medium, dash: isAbove ? 'short' : 'solid', pattern: 'none' }), ...cross];
}

const ORIGIN: Point = { x: 0, y: 0 };
