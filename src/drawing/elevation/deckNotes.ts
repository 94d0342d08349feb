import type { DeckStretch } from '../../scene';
import type { Hue, Prim } from '../drawing';
import { scaleBox } from '../layout/box';
import type { Label, LabelChoice } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { textBox } from '../typeset/textBox';
import { measureTextWidth } from '../typeset/textWidth';
import { deckHeightAt } from './deckProfile';
import { type ElevationFrame, onDeck } from './elevationFrame';
import type { UnrolledTable } from './unrollLine';

/** Heights at the ends and turns of a deck, and the fall of each stretch with its arrow. `index`: of the table in the plan. */
export function createDeckNotes(unrolled: UnrolledTable, index: number, frame: ElevationFrame): Label[] {
  const { table } = unrolled;
  const stretches = table.water?.stretches ?? [];
  return [
    ...table.nodes.map((_, i) => createHeightNote(unrolled, index, i, frame)),
    ...stretches
      .filter((stretch) => (stretch.to - stretch.from) / frame.unit > 8)
      .map((stretch) => createFallNote(unrolled, index, stretch, frame)),
  ];
}

/** How far under a deck its height may be written, or else above it; and how far off the floor line figures keep. Paper mm. */
const HEIGHT_DROPS = [6, 10, 14, 18, 22, 3.5, -6, -10];
const OFF_FLOOR = 2;

const isOffFloor = (y: number, { unit }: ElevationFrame) => y <= -OFF_FLOOR * unit;

/** The true height of a node, below the deck there. One that is not known is asked for. */
function createHeightNote(unrolled: UnrolledTable, index: number, i: number, frame: ElevationFrame): Label {
  const { table, way, x } = unrolled;
  const node = table.nodes[i];
  if (node === undefined) return { isRequired: false, choices: [] };
  const { deck, id } = table.table;
  const edit =
    deck.kind === 'heights' ? ['tables', index, 'deck', 'heights', i] : i === 0 ? ['tables', index, 'deck', 'jointHeight'] : undefined;
  const text = node.z === null ? 'height?' : frame.f.length(node.z, { unitInches: true });
  const place = frame.shorten(onDeck(frame, x(node.s), node.z ?? frame.datum));
  const pen = createPen('dimensions', id);
  const isFirst = i === 0;
  const away = isFirst ? way : -way;
  const choices = HEIGHT_DROPS.filter((drop) => isOffFloor(place.y + drop * frame.unit, frame)).flatMap((drop, j) =>
    [3, 6, 9].map((shift, k): LabelChoice => {
      const at = { x: place.x + away * shift * frame.unit, y: place.y + drop * frame.unit };
      const label = pen.text(at, text, LETTER.text, {
        anchor: away > 0 ? 'start' : 'end',
        baseline: 'middle',
        hue: node.z === null ? 'ask' : 'ink',
        halo: true,
        ...(edit === undefined ? {} : { edit }),
      });
      const elbow = { x: at.x - away * 0.8 * frame.unit, y: at.y };
      const leader = pen.line([place, elbow], { stroke: 'second', width: WIDTH.narrow });
      const dot = pen.symbol(place, 'dot', 1.1, { fill: 'ink' });
      return { draw: () => [leader, dot, label], boxes: [scaleBox(textBox(label, frame.unit), 1 / frame.unit)], cost: j + k * 0.3 };
    }),
  );
  return { choices, isRequired: true };
}

/** How far under a deck its fall may be written, or else above it, paper mm. */
const FALL_DROPS = [5, 7, 9, 11, 13, -7];

/** What it costs to reach over an end of the deck, the machine's side maybe. */
const PAST_THE_END = 1.5;

/** Under the middle of a stretch: the fall, and an arrow the way its water runs. */
function createFallNote(unrolled: UnrolledTable, index: number, stretch: DeckStretch, frame: ElevationFrame): Label {
  const { table, way, x } = unrolled;
  const { deck, id, role } = table.table;
  const isLevel = Math.abs(stretch.slope) < 1e-5;
  const hue: Hue = stretch.runsTo === 'stands' ? 'stop' : role;
  const text = isLevel ? 'level' : frame.f.slope(Math.abs(stretch.slope));
  const toLeft = way > 0 === stretch.slope > 0;
  const pen = createPen('dimensions', id);
  const edit = deck.kind === 'fall' ? ['tables', index, 'deck', 'fall'] : undefined;
  const width = measureTextWidth(text, LETTER.text) * frame.unit;
  const [middle, half] = [x(table.length / 2) / frame.unit, table.length / 2 / frame.unit];
  const choices = [0.5, 0.4, 0.6, 0.3, 0.7].flatMap((share, i) =>
    FALL_DROPS.map((drop, j): LabelChoice | null => {
      const s = stretch.from + share * (stretch.to - stretch.from);
      const place = frame.shorten(onDeck(frame, x(s), deckHeightAt(table, s) ?? frame.datum));
      const at = { x: place.x, y: place.y + drop * frame.unit };
      if (!isOffFloor(at.y, frame)) return null;
      const label = pen.text(at, text, LETTER.text, {
        anchor: 'middle',
        baseline: 'middle',
        hue,
        halo: true,
        ...(edit === undefined ? {} : { edit }),
      });
      const side = toLeft ? -1 : 1;
      const from = { x: at.x + side * (width / 2 + 1 * frame.unit), y: at.y };
      const tip = { x: from.x + side * 6 * frame.unit, y: at.y };
      const arrow: Prim[] = isLevel
        ? []
        : [
            pen.line([from, tip], { stroke: hue, width: WIDTH.wide }),
            pen.symbol(tip, 'arrow', 2.4, { fill: hue, angleDeg: toLeft ? 180 : 0 }),
          ];
      const box = scaleBox(textBox(label, frame.unit), 1 / frame.unit);
      const grown = {
        ...box,
        centre: { x: box.centre.x + (isLevel ? 0 : side * 3.5), y: box.centre.y },
        halfLength: box.halfLength + (isLevel ? 0 : 3.5),
      };
      const isPast = Math.abs(grown.centre.x - middle) + grown.halfLength > half;
      return { draw: () => [label, ...arrow], boxes: [grown], cost: i * 0.6 + j + (isPast ? PAST_THE_END : 0) };
    }),
  );
  return { choices: choices.filter((choice) => choice !== null), isRequired: false };
}
