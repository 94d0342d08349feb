import type { Point } from '../../geometry';
import type { PlacedTable, Pool } from '../../scene';
import type { Prim } from '../drawing';
import { cornersOfPath } from '../floorPlan/alongPath';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { deckHeightAt, profilePlaces } from './deckProfile';
import { at, type ElevationFrame, onDeck } from './elevationFrame';
import type { UnrolledTable } from './unrollLine';

const DECK_THICKNESS = 40;
const LEG_INSET = 110;
const LEG_WIDTH = 42;

/** A table from the operator's side: backsplash, deck, legs. */
export function drawDeck(unrolled: UnrolledTable, frame: ElevationFrame): Prim[] {
  const { table } = unrolled;
  const pen = createPen('equipment', table.table.id);
  const profile = (s: number): Point => onDeck(frame, unrolled.x(s), deckHeightAt(table, s) ?? frame.datum);
  const line = profilePlaces(table, 0, table.length).map(profile);
  const isKnown = table.nodes.every((node) => node.z !== null);
  const under = line.map(({ x, y }) => ({ x, y: y + DECK_THICKNESS }));
  return [
    ...drawBacksplash(pen, table, line),
    ...legPlaces(table).flatMap((s) => drawLeg(pen, unrolled.x(s), profile(s).y + DECK_THICKNESS)),
    ...drawTurns(pen, unrolled, frame),
    pen.area([...line, ...under.toReversed()], { fill: 'paper', stroke: table.table.role, width: WIDTH.narrow }),
    pen.line(line, { stroke: table.table.role, width: WIDTH.bold, dash: isKnown ? 'solid' : 'short' }),
  ];
}

function drawBacksplash(pen: Pen, { table }: PlacedTable, line: readonly Point[]): Prim[] {
  if (table.backsplash <= 0) return [];
  const top = line.map(({ x, y }) => ({ x, y: y - table.backsplash }));
  const pattern = table.role === 'soiled' ? 'hatch-45' : 'dots';
  return [pen.area([...top, ...line.toReversed()], { fill: table.role, pattern, stroke: table.role, width: WIDTH.narrow })];
}

/** Near the joint, at each turn and near the far end, clear of bowls. */
function legPlaces(table: PlacedTable): number[] {
  const ends = table.length < 3 * LEG_INSET ? [table.length / 2] : [LEG_INSET, table.length - LEG_INSET];
  return [...ends, ...cornersOfPath(table.path)];
}

function drawLeg(pen: Pen, x: number, y: number): Prim[] {
  const half = LEG_WIDTH / 2;
  const leg = [
    { x: x - half, y },
    { x: x + half, y },
    { x: x + half, y: 0 },
    { x: x - half, y: 0 },
  ];
  return [pen.area(leg, { fill: 'paper', stroke: 'second', width: WIDTH.narrow })];
}

/** Where the line turns a corner in the room. */
function drawTurns(pen: Pen, unrolled: UnrolledTable, frame: ElevationFrame): Prim[] {
  return cornersOfPath(unrolled.table.path).map((s) => {
    const z = deckHeightAt(unrolled.table, s) ?? frame.datum;
    const foot = onDeck(frame, unrolled.x(s), z);
    return pen.line([foot, { x: foot.x, y: foot.y - Math.max(unrolled.table.table.backsplash, 150) - 80 }], {
      stroke: 'second',
      width: WIDTH.narrow,
      dash: 'dash-dot',
    });
  });
}

/** The water that stands on a table, over whatever else is drawn there. */
export const drawPools = (unrolled: UnrolledTable, frame: ElevationFrame): Prim[] =>
  (unrolled.table.water?.pools ?? []).flatMap((pool) => drawPool(unrolled.table, pool, unrolled, frame));

/** As high as it would stand; on a level deck, a film. */
function drawPool(table: PlacedTable, pool: Pool, unrolled: UnrolledTable, frame: ElevationFrame): Prim[] {
  const pen = createPen('equipment', table.table.id);
  const bed = profilePlaces(table, pool.from, pool.to).map((s) => onDeck(frame, unrolled.x(s), deckHeightAt(table, s) ?? frame.datum));
  if (pool.depth <= 0)
    return [
      pen.line(
        bed.map(({ x, y }) => ({ x, y: y - 14 })),
        { stroke: 'water', width: WIDTH.bold * 1.6 },
      ),
    ];
  const level = (deckHeightAt(table, pool.lowest) ?? frame.datum) + pool.depth;
  const surface = [unrolled.x(pool.to), unrolled.x(pool.from)].map((x) => onDeck(frame, x, level));
  return [pen.area([...bed, ...surface], { fill: 'water', fillOpacity: 0.5, stroke: 'water', width: WIDTH.wide })];
}

/** Depth of the hatched band, paper mm. */
const BAND = 1.8;

/** The floor, hatched below, and the ceiling where it is known. */
export function drawFloorAndCeiling(from: number, to: number, ceiling: number | null, unit: number): Prim[] {
  const pen = createPen('room');
  const thick = BAND * unit;
  const band = (z: number) => [at(from, z), at(to, z), at(to, z + thick), at(from, z + thick)];
  const floor = [
    pen.area(band(-thick), { fill: 'second', pattern: 'wall' }),
    pen.line([at(from, 0), at(to, 0)], { stroke: 'ink', width: WIDTH.heavy }),
  ];
  if (ceiling === null) return floor;
  return [
    ...floor,
    pen.area(band(ceiling), { fill: 'second', pattern: 'wall' }),
    pen.line([at(from, ceiling), at(to, ceiling)], { stroke: 'ink', width: WIDTH.medium }),
  ];
}
