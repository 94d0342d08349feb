import type { Hood, Plan, Run, Table, Thing } from '../../src/plan';

/**
 * Changes of the room of `linePlan`. As drawn, in the corner at the left: walls 4812.5 × 4049.5; the machine's
 * footprint from 3950, 138.5 to 4687, 849.5; the soiled table from 1050, 5 to 3950, 767; the clean table from
 * 4045.5, 849.5 to 4807.5, 2449.5; the shelving from 4345.5, 2529.5 to 4802.5, 3749.5; a door in the lower wall
 * from 250 to 1164; a hand sink at that wall from 1749 to 2179, a bin beside it from 2289 to 2639; a bin in the upper
 * left corner from 20 to 370.
 */

/** Leaves the shelving alone of what stands free in the room. */
export const clearAway = ({ things }: Plan): void => void things.splice(1);

/** A body of a width, depth and height about a point; a cart unless told. */
export function addThing(plan: Plan, id: string, x: number, y: number, width: number, depth: number, change: Partial<Thing> = {}): void {
  plan.things.push({
    id,
    kind: 'cart',
    name: '',
    x,
    y,
    rotationDeg: 0,
    width,
    depth,
    height: 900,
    ware: 'none',
    clearBelow: null,
    sealed: null,
    basins: null,
    ...change,
  });
}

/** A body from corner to corner. */
export function addThingBetween(plan: Plan, id: string, [x0, y0]: Corner, [x1, y1]: Corner, change: Partial<Thing> = {}): void {
  addThing(plan, id, (x0 + x1) / 2, (y0 + y1) / 2, x1 - x0, y1 - y0, change);
}

type Corner = readonly [x: number, y: number];

export function addColumn(plan: Plan, id: string, x: number, y: number, size = 200): void {
  plan.room.columns.push({ id, x, y, width: size, depth: size, rotationDeg: 0 });
}

/** Walls through these corners, each with the id of its number; the door moves to a wall of them. */
export function setWalls(plan: Plan, corners: readonly Corner[], door: { wall: string; from: number }): void {
  plan.room.outline = corners.map(([x, y], i) => ({ id: `wall-${i}`, x, y }));
  for (const opening of plan.room.openings) Object.assign(opening, door);
}

/** The hood of an unturned line, by how far it stands out beyond the machine of 737 × 711. */
export function setOverhang(plan: Plan, left: number, right: number, front: number, back: number): void {
  const [machine, hood] = [plan.machines[0], hoodOf(plan)];
  if (machine === undefined) throw new Error('the plan has no machine');
  Object.assign(hood, {
    x: machine.x + (right - left) / 2,
    y: machine.y + (front - back) / 2,
    width: 737 + left + right,
    depth: 711 + front + back,
  });
}

export function hoodOf(plan: Plan): Hood {
  const [hood] = plan.hoods;
  if (hood === undefined) throw new Error('the plan has no hood');
  return hood;
}

export function runOf(plan: Plan): Run {
  const [run] = plan.runs;
  if (run === undefined) throw new Error('the plan has no run');
  return run;
}

type Fan = NonNullable<Run['fan']>;

export function setFan(plan: Plan, change: Partial<Fan>): void {
  const { fan } = runOf(plan);
  if (fan === null) throw new Error('the run has no fan');
  Object.assign(fan, change);
}

/** A shelf over a table from its joint outward; below 0 it reaches over the machine. */
export function addShelf({ fittings }: Table, from: number, to: number, height: number): void {
  fittings.push({ id: 'shelf', kind: 'overshelf', at: (from + to) / 2, length: to - from, depth: 300, height });
}
