import { slicePath, strip } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import { createSolid } from '../place/createSolid';
import type { PlacedFitting, PlacedTable, Solid } from '../types';
import { END_RIM_HEIGHT } from './followWater';
import { spanOf } from './placeFitting';

/** Deck with its frame, below the surface. */
const DECK_THICKNESS = 50;
/** Wall behind the back edge, as thick as its fold. */
const BACKSPLASH_THICKNESS = 40;
/** An overshelf with the racks on it, from its underside up. */
export const OVERSHELF_HEIGHT = 350;

/**
 * Bodies of a table: deck with its rims, bowls that hang below it, backsplash and overshelves. Legs
 * are no bodies. While no deck height is known, the table is taken to stand at `usualHeight`.
 */
export const deriveTableSolids = memoizeByIdentity((placed: PlacedTable, usualHeight: number): Solid[] => {
  const heights = placed.nodes.map(({ z }) => z).filter((z) => z !== null);
  const [low, high] = heights.length === 0 ? [usualHeight, usualHeight] : [Math.min(...heights), Math.max(...heights)];
  const owner = placed.table.id;
  const deck = createSolid({ owner, kind: 'table', pieces: placed.deck, zFrom: low - DECK_THICKNESS, zTo: high + END_RIM_HEIGHT });
  return [
    deck,
    ...placed.fittings.flatMap((fitting) => bowlOf(placed, fitting, low)),
    ...backsplashOf(placed, low, high),
    ...placed.fittings.flatMap((fitting) => overshelfOf(placed, fitting)),
  ];
});

function bowlOf(placed: PlacedTable, { fitting, from, to }: PlacedFitting, deckHeight: number): Solid[] {
  if (fitting.kind !== 'sink') return [];
  const pieces = piecesAlong(placed, from, to, spanOf(fitting, placed.table));
  return [createSolid({ owner: placed.table.id, kind: 'table', pieces, zFrom: deckHeight - fitting.bowlDepth, zTo: deckHeight })];
}

function backsplashOf(placed: PlacedTable, low: number, high: number): Solid[] {
  const { table, length } = placed;
  if (table.backsplash === 0) return [];
  const toBack = table.depth - table.rackLineFromEdge;
  const span: [number, number] =
    table.operatorSide === 'left' ? [BACKSPLASH_THICKNESS - toBack, toBack] : [toBack, BACKSPLASH_THICKNESS - toBack];
  const pieces = piecesAlong(placed, 0, length, span);
  return [createSolid({ owner: table.id, kind: 'backsplash', pieces, zFrom: low, zTo: high + table.backsplash })];
}

function overshelfOf(placed: PlacedTable, { fitting, from, to }: PlacedFitting): Solid[] {
  if (fitting.kind !== 'overshelf') return [];
  const pieces = piecesAlong(placed, from, to, spanOf(fitting, placed.table));
  return [
    createSolid({ owner: placed.table.id, kind: 'overshelf', pieces, zFrom: fitting.height, zTo: fitting.height + OVERSHELF_HEIGHT }),
  ];
}

const piecesAlong = ({ path }: PlacedTable, from: number, to: number, [toLeft, toRight]: [number, number]) =>
  strip(slicePath(path, from, to), toLeft, toRight).pieces;
