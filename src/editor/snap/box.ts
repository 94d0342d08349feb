import type { Side } from '../../catalog';
import { along, centroid, directionOf, dot, type Point, rightOf } from '../../geometry';
import { jointFrame, type Machine, type Plan, resolveDataSheet, type Table } from '../../plan';

/** A rectangle at any rotation, as snapping sees it. */
export interface Box {
  /** Id of the thing; of a table for each of its legs. */
  readonly id: string;
  readonly centre: Point;
  /** Unit direction of its own x; its y lies a quarter turn clockwise. */
  readonly u: Point;
  /** Half of its size along x and along y. */
  readonly hu: number;
  readonly hv: number;
  /** What its sides keep free of walls; nothing where it is left out. */
  readonly keepOff?: Readonly<Record<Side, number>>;
}

export const createBox = (id: string, centre: Point, rotationDeg: number, width: number, depth: number): Box => ({
  id,
  centre: { x: centre.x, y: centre.y },
  u: directionOf(rotationDeg),
  hu: width / 2,
  hv: depth / 2,
});

export const moveBox = (box: Box, by: Point): Box => ({ ...box, centre: { x: box.centre.x + by.x, y: box.centre.y + by.y } });

export const cornersOfBox = ({ centre, u, hu, hv }: Box): Point[] => {
  const v = rightOf(u);
  const at = (su: number, sv: number) => along(along(centre, u, su * hu), v, sv * hv);
  return [at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)];
};

/** Extent of a box along a direction; exact for any direction. */
export function extentOf(box: Box, n: Point): { min: number; max: number; mid: number } {
  const mid = dot(box.centre, n);
  const half = Math.abs(dot(box.u, n)) * box.hu + Math.abs(dot(rightOf(box.u), n)) * box.hv;
  return { min: mid - half, max: mid + half, mid };
}

/** What a box keeps free of walls at its lower and upper end along a direction that is one of its own, or near it. */
export function keepOffAlong({ u, keepOff }: Box, n: Point): { min: number; max: number } {
  if (keepOff === undefined) return { min: 0, max: 0 };
  const [along, across] = [dot(u, n), dot(rightOf(u), n)];
  const [lower, upper]: [Side, Side] = Math.abs(along) > Math.abs(across) ? ['left', 'right'] : ['back', 'front'];
  const isReversed = along + across < 0;
  return { min: keepOff[isReversed ? upper : lower], max: keepOff[isReversed ? lower : upper] };
}

const known = new WeakMap<Plan, readonly Box[]>();

/** Boxes of everything that stands or hangs in the plan. */
export function boxesOf(plan: Plan): readonly Box[] {
  const found = known.get(plan) ?? collect(plan);
  known.set(plan, found);
  return found;
}

function collect(plan: Plan): Box[] {
  const { columns, floorDrains, stubs } = plan.room;
  return [
    ...plan.machines.map((machine) => machineBox(plan, machine)),
    ...plan.tables.flatMap((table) => tableBoxes(table, startOf(plan, table))),
    ...[...plan.things, ...plan.hoods, ...columns].map((item) => createBox(item.id, item, item.rotationDeg, item.width, item.depth)),
    ...floorDrains.map((drain) => createBox(drain.id, drain, 0, drain.size, drain.size)),
    ...stubs.map((stub) => createBox(stub.id, stub, 0, 0, 0)),
  ];
}

/** A machine keeps what its service needs behind it and at its sides, where no table stands. Its front is for people. */
function machineBox(plan: Plan, machine: Machine): Box {
  const { width, depth, clearances } = resolveDataSheet(plan, machine);
  const tables = plan.tables.flatMap(({ place }) => (place.kind === 'joined' && place.machine === machine.id ? [place.side] : []));
  const keepOff = (side: Side) => (tables.includes(side) ? 0 : clearances[side]);
  return {
    ...createBox(machine.id, machine, machine.rotationDeg, width, depth),
    keepOff: { left: keepOff('left'), right: keepOff('right'), back: keepOff('back'), front: 0 },
  };
}

/** Where a table's rack centre line begins and runs to. */
export interface TableStartFrame {
  readonly x: number;
  readonly y: number;
  readonly headingDeg: number;
}

/** Start of a table, joined or free. */
export function startOf(plan: Plan, { place }: Table): TableStartFrame {
  if (place.kind === 'free') return place;
  const machine = plan.machines.find(({ id }) => id === place.machine);
  return machine === undefined ? { x: 0, y: 0, headingDeg: 0 } : jointFrame(machine, resolveDataSheet(plan, machine), place.side, place);
}

/** One box a leg, square at its ends. */
export function tableBoxes(table: Table, start: TableStartFrame): Box[] {
  const toOperator = table.operatorSide === 'right' ? 1 : -1;
  // From the rack centre line to the middle of the deck, toward the right of the way.
  const aside = toOperator * (table.rackLineFromEdge - table.depth / 2);
  return nodesOf(table, start)
    .slice(1)
    .map(({ from, headingDeg, length }) => {
      const u = directionOf(headingDeg);
      const centre = along(along(from, u, length / 2), rightOf(u), aside);
      return { id: table.id, centre, u, hu: length / 2, hv: table.depth / 2 };
    });
}

/** The joint, the turns and the end of a table's rack centre line, each with the leg that leads to it. */
export interface TableNode {
  readonly point: Point;
  /** Start, direction and length of the leg that ends here; of the first leg for the joint. */
  readonly from: Point;
  readonly headingDeg: number;
  readonly length: number;
}

/** Nodes of a table from its start. */
export function nodesOf(table: Pick<Table, 'legs'>, start: TableStartFrame): TableNode[] {
  let from: Point = { x: start.x, y: start.y };
  let headingDeg = start.headingDeg;
  const nodes: TableNode[] = [{ point: from, from, headingDeg, length: 0 }];
  for (const { length, turnDeg } of table.legs) {
    headingDeg += turnDeg;
    const point = along(from, directionOf(headingDeg), length);
    nodes.push({ point, from, headingDeg, length });
    from = point;
  }
  return nodes;
}

/** Middle of everything in the boxes, for turning a group. */
export const middleOf = (boxes: readonly Box[]): Point => centroid(boundingCorners(boxes));

function boundingCorners(boxes: readonly Box[]): Point[] {
  const corners = boxes.flatMap(cornersOfBox);
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}
