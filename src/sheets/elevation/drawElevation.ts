import type { Scene } from '../../scene';
import { formatterFor, type Units } from '../../units';
import { placeDimensions } from '../dimensions/placeDimensions';
import type { Drawing, Prim } from '../drawing';
import { placeLabels } from '../layout/placeLabels';
import { LETTER } from '../support/ink';
import { createPen } from '../support/pen';
import { createDeckNotes } from './deckNotes';
import { drawAir, unrollHood } from './drawAir';
import { drawDeck, drawFloorAndCeiling } from './drawDeck';
import { drawDeckFitting } from './drawDeckFitting';
import { drawMachineFront } from './drawMachineFront';
import type { ElevationFrame } from './elevationFrame';
import { createHeightRows } from './heightRows';
import { createStationNotes } from './stationNotes';
import { type UnrolledLine, unrollLine } from './unrollLine';

export interface ElevationOptions {
  units: Units;
  /** Millimetres of the line per paper millimetre, which texts are laid out for. */
  scaleDenominator: number;
  /** How many times steeper decks are drawn, about the height of the machine's track; 10 when left out. */
  exaggeration?: number;
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
  const frame: ElevationFrame = {
    f: formatterFor(options.units),
    unit: options.scaleDenominator,
    exaggeration: options.exaggeration ?? 10,
    datum: line.machine.sheet.deckHeight,
    rackSize: scene.plan.settings.rackSize,
    rackPitch: scene.plan.settings.rackPitch,
  };
  return [...drawBodies(scene, unrolled, frame), ...drawTexts(scene, unrolled, frame)];
}

function drawBodies(scene: Scene, unrolled: UnrolledLine, frame: ElevationFrame): Prim[] {
  const [from, to] = extentOf(scene, unrolled);
  return [
    ...drawFloorAndCeiling(from, to, scene.room.ceilingHeight),
    ...unrolled.tables.flatMap((table) => drawDeck(table, frame)),
    ...unrolled.tables.flatMap((table) => table.table.fittings.flatMap((fitting) => drawDeckFitting(fitting, table, frame))),
    ...drawMachineFront(unrolled),
    ...drawAir(scene, unrolled),
  ];
}

function drawTexts(scene: Scene, unrolled: UnrolledLine, frame: ElevationFrame): Prim[] {
  const [from, to] = extentOf(scene, unrolled);
  const indexOf = (id: string) => scene.plan.tables.findIndex((table) => table.id === id);
  const decks = unrolled.tables.flatMap((table) => createDeckNotes(table, indexOf(table.table.table.id), frame));
  const notes = placeLabels([...decks, ...createStationNotes(unrolled, frame)], [], []);
  const heights = placeDimensions(createHeightRows(scene, unrolled, to, frame), frame.unit, { texts: notes.taken, lines: [], bodies: [] });
  return [...notes.prims, ...heights, drawCaption(from, frame)];
}

function drawCaption(from: number, { exaggeration, unit }: ElevationFrame): Prim {
  const text =
    exaggeration === 1
      ? 'Unrolled line, seen by the operator'
      : `Unrolled line, seen by the operator. Decks fall ${exaggeration} times as steep as built; heights of figures are true.`;
  return createPen('notes').text({ x: from, y: 19 * unit }, text, LETTER.text, { hue: 'second' });
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
