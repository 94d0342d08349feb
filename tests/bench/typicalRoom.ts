import { createLinePlan, type Plan, type Table, type Thing, UNKNOWN_DUCT } from '../../src/plan';

/** A typical room: one machine, three tables, a hood, a run, twenty things, twelve walls. */
export function createTypicalRoom(): Plan {
  const plan = createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand: 'left-to-right' });
  const [left, top, right, bottom] = boundsOf(plan);
  const room = { ...plan.room, outline: notched(left, top, right, bottom + 3000) };
  return {
    ...plan,
    room: { ...room, openings: room.openings.map((opening) => ({ ...opening, wall: 'w6', from: 300 })) },
    tables: [...plan.tables, freeTable(plan.tables[0] as Table, left + 800, bottom + 2200)],
    things: [
      ...plan.things,
      ...Array.from({ length: 20 - plan.things.length }, (_, i) =>
        thing(i, left + 700 + (i % 7) * 480, bottom + 300 + Math.floor(i / 7) * 520),
      ),
    ],
    runs: [run(plan, top)],
  };
}

const boundsOf = ({ room: { outline } }: Plan): [number, number, number, number] => {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};

/** Twelve walls: a rectangle with two bays in its lower wall. */
const notched = (left: number, top: number, right: number, bottom: number) =>
  [
    [left, top],
    [right, top],
    [right, bottom],
    [right - 400, bottom],
    [right - 400, bottom + 500],
    [right - 1000, bottom + 500],
    [right - 1000, bottom],
    [left + 1000, bottom],
    [left + 1000, bottom + 500],
    [left + 400, bottom + 500],
    [left + 400, bottom],
    [left, bottom],
  ].map(([x = 0, y = 0], i) => ({ id: `w${i}`, x, y }));

const freeTable = (table: Table, x: number, y: number): Table => ({
  ...table,
  id: 'free-table',
  place: { kind: 'free', x, y, headingDeg: 0 },
  legs: [{ length: 1200, turnDeg: 0 }],
  fittings: [],
});

const thing = (i: number, x: number, y: number): Thing => ({
  id: `thing-${i}`,
  kind: i % 2 === 0 ? 'cart' : 'bin',
  name: '',
  x,
  y,
  rotationDeg: (i * 7) % 30,
  width: 400,
  depth: 350,
  height: 900,
  ware: 'none',
  clearBelow: null,
  sealed: null,
  basins: null,
});

const run = ({ machines: [machine] }: Plan, top: number): Plan['runs'][number] => ({
  id: 'run',
  machine: machine?.id ?? '',
  points: [
    { x: machine?.x ?? 0, y: machine?.y ?? 0, z: 2700 },
    { x: (machine?.x ?? 0) - 600, y: machine?.y ?? 0, z: 2700 },
    { x: (machine?.x ?? 0) - 600, y: top - 300, z: 2700 },
  ],
  diameter: 178,
  fan: { at: 300, attitude: 'upright', drainHole: null, cordWay: 2000 },
  outlet: 'wall',
  duct: UNKNOWN_DUCT,
});
