import type { ElevationPlace } from '../../rules';
import type { Scene } from '../../scene';
import { formatterFor, type Units } from '../../units';
import { placeDimensions } from '../dimensions/placeDimensions';
import type { Drawing, Prim } from '../drawing';
import { placeLabels } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { breakHeights, createShorten, type HeightBreak } from './breakHeights';
import { createDeckNotes } from './deckNotes';
import { deckHeightAt, profilePlaces } from './deckProfile';
import { drawAir, unrollHood } from './drawAir';
import { drawDeck, drawFloorAndCeiling, drawPools } from './drawDeck';
import { drawDeckFitting } from './drawDeckFitting';
import { drawMachineFront } from './drawMachineFront';
import { type ElevationFrame, onDeck } from './elevationFrame';
import { createHeightName, createHeightRow, findHeights } from './heightRows';
import { createStationNotes } from './stationNotes';
import { type UnrolledLine, unrollLine } from './unrollLine';

export interface ElevationOptions {
  units: Units;
  /** Millimetres of the line per paper millimetre, which texts are laid out for. */
  scaleDenominator: number;
  /** A stretch of a table that is lit up: where a chosen finding has its place. */
  lit?: ElevationPlace | null;
  /** Says below the drawing that it is exaggerated, as it does when this is left out; `false` where a heading says it. */
  hasCaption?: boolean;
  /** How many times steeper decks are drawn, about the height of the machine's track; 10 when left out. */
  exaggeration?: number;
  /** Heights in which nothing is to be seen are drawn shortened, between break lines. */
  isBroken?: boolean;
}

/** Free floor shown beside the line. */
const MARGIN = 250;

/**
 * The unrolled line of one machine, as its operator sees it: x along the line from the middle of the machine, y down from
 * the floor at 0, in millimetres. Deck heights above and below the track are drawn exaggerated, and the drawing says so.
 */
export function drawElevation(scene: Scene, machineId: string | null, options: ElevationOptions): Drawing {
  const line = scene.lines.find(({ machine }) => machine.machine.id === machineId);
  if (line === undefined) return drawNothing();
  const unrolled = unrollLine(line);
  const breaks = options.isBroken ? findBreaks(scene, unrolled) : [];
  const frame: ElevationFrame = {
    f: formatterFor(options.units),
    unit: options.scaleDenominator,
    exaggeration: options.exaggeration ?? 10,
    datum: line.machine.sheet.deckHeight,
    shorten: createShorten(breaks),
    rackSize: scene.plan.settings.rackSize,
    rackPitch: scene.plan.settings.rackPitch,
  };
  const bodies = [...drawBodies(scene, unrolled, frame), ...drawLit(unrolled, options.lit ?? null, frame)];
  return [
    ...breakHeights(bodies, breaks, ...extentOf(scene, unrolled)),
    ...drawTexts(scene, unrolled, frame),
    ...(options.hasCaption === false ? [] : [drawCaption(scene, unrolled, frame)]),
  ];
}

/** Kept clear below the track for bowls, steep decks and their figures. */
const CLEAR = 640;

/** The height under the tables, and the one above doors and hood lips. */
function findBreaks(scene: Scene, unrolled: UnrolledLine): HeightBreak[] {
  const { deckHeight, doorLiftHeight } = unrolled.machine.sheet;
  const { ceilingHeight } = scene.room;
  const top = Math.max(doorLiftHeight, ...scene.hoods.map(({ hood }) => hood.lipHeight ?? 0)) + 240;
  const below = { from: 60, to: deckHeight - CLEAR };
  const above = { from: top, to: (ceilingHeight ?? top) - 60 };
  return [below, above].filter(({ from, to }) => to - from > 100);
}

function drawBodies(scene: Scene, unrolled: UnrolledLine, frame: ElevationFrame): Prim[] {
  const [from, to] = extentOf(scene, unrolled);
  return [
    ...drawFloorAndCeiling(from, to, scene.room.ceilingHeight, frame.unit),
    ...unrolled.tables.flatMap((table) => drawDeck(table, frame)),
    ...unrolled.tables.flatMap((table) => table.table.fittings.flatMap((fitting) => drawDeckFitting(fitting, table, frame))),
    ...unrolled.tables.flatMap((table) => drawPools(table, frame)),
    ...drawMachineFront(unrolled),
    ...drawAir(scene, unrolled),
  ];
}

/** A stretch of a deck, lit up. */
function drawLit(unrolled: UnrolledLine, lit: ElevationPlace | null, frame: ElevationFrame): Prim[] {
  const found = unrolled.tables.find(({ table }) => table.table.id === lit?.table);
  if (lit === null || found === undefined) return [];
  const places = profilePlaces(found.table, Math.max(0, lit.from), Math.min(found.table.length, lit.to));
  const line = places.map((s) => onDeck(frame, found.x(s), deckHeightAt(found.table, s) ?? frame.datum));
  return [createPen('findings', lit.table).line(line, { stroke: 'chosen', width: WIDTH.bold * 2.4 })];
}

function drawTexts(scene: Scene, unrolled: UnrolledLine, frame: ElevationFrame): Prim[] {
  const [, to] = extentOf(scene, unrolled);
  const indexOf = (id: string) => scene.plan.tables.findIndex((table) => table.id === id);
  const decks = unrolled.tables.flatMap((table) => createDeckNotes(table, indexOf(table.table.table.id), frame));
  const heights = findHeights(scene, unrolled, to);
  const notes = placeLabels(
    [...decks, ...createStationNotes(unrolled, frame), ...heights.map((height, i) => createHeightName(height, heights[i + 1], to, frame))],
    [],
    [],
  );
  const rows = heights.map((height) => createHeightRow(height, to, frame));
  return [...notes.prims, ...placeDimensions(rows, frame.unit, { texts: notes.taken, lines: [], bodies: [] })];
}

function drawCaption(scene: Scene, unrolled: UnrolledLine, { exaggeration, unit }: ElevationFrame): Prim {
  const [from] = extentOf(scene, unrolled);
  const text =
    exaggeration === 1
      ? 'Unrolled line, seen by the operator'
      : `Unrolled line, seen by the operator. Fall drawn × ${exaggeration}; all figures are true.`;
  return createPen('notes').text({ x: from, y: 15.5 * unit }, text, LETTER.text, { hue: 'second' });
}

function extentOf(scene: Scene, unrolled: UnrolledLine): [number, number] {
  const ends = unrolled.tables.map(({ table, x }) => x(table.length));
  const hoods = scene.hoods.flatMap((hood) => {
    const extent = unrollHood(hood, unrolled);
    return extent === null ? [] : [extent.from, extent.to];
  });
  const all = [unrolled.left, unrolled.right, ...ends, ...hoods];
  return [Math.min(...all) - MARGIN, Math.max(...all) + MARGIN];
}

/** What stands here while there is no line. */
function drawNothing(): Drawing {
  return [
    createPen('notes').text({ x: 0, y: 0 }, 'No machine yet: with one on the plan, its line is drawn here.', LETTER.heading, {
      anchor: 'middle',
      hue: 'second',
    }),
  ];
}
