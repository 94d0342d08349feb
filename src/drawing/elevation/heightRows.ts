import type { Scene } from '../../scene';
import { figures } from '../dimensions/figures';
import { DIMENSION, type DimensionRequest, type DimensionRow, type Span } from '../dimensions/types';
import { scaleBox } from '../layout/box';
import type { Label } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { textBox } from '../typeset/textBox';
import { unrollHood } from './drawAir';
import { at, type ElevationFrame } from './elevationFrame';
import type { UnrolledLine } from './unrollLine';

/** A height above the floor that is named and dimensioned. */
export interface Height {
  name: string;
  x: number;
  z: number;
  edit?: Span['edit'];
  subject?: string;
}

/** Width of the column of names between the drawing and the height lines, paper mm. */
const NAMES = 19;

/** The heights of a line, the lowest first: track, open doors, hoods, ceiling. */
export function findHeights(scene: Scene, unrolled: UnrolledLine, to: number): Height[] {
  const { machine, right } = unrolled;
  const { ceilingHeight } = scene.room;
  const own = machine.machine.id;
  const hoods = scene.hoods.flatMap((hood, i): Height[] => {
    const extent = unrollHood(hood, unrolled);
    return extent === null
      ? []
      : [{ name: 'hood lip', x: extent.to, z: extent.lip, edit: ['hoods', i, 'lipHeight'], subject: hood.hood.id }];
  });
  return [
    { name: 'track', x: right, z: machine.sheet.deckHeight, subject: own },
    { name: 'doors open', x: right, z: machine.sheet.doorLiftHeight, subject: own },
    ...hoods,
    ...(ceilingHeight === null ? [] : [{ name: 'ceiling', x: to, z: ceilingHeight, edit: ['room', 'ceilingHeight'] }]),
  ].toSorted((a, b) => a.z - b.z);
}

/** A name and its own line take so much, paper mm: where the next height is nearer, its name has the place between. */
const NAME = 4;

/** Places of a name: above or below its line, and how far off, paper mm. */
const OFFSETS = [0.8, 1.6, 2.4];

/** The name of a height, above the line that leads to its figures, or below it where `next`, the height above, is near. */
export function createHeightName(
  { name, x, z, subject }: Height,
  next: Height | undefined,
  to: number,
  { unit, shorten }: ElevationFrame,
): Label {
  const pen = createPen('notes', subject);
  const { y } = shorten(at(to, z));
  const isNear = next !== undefined && (y - shorten(at(to, next.z)).y) / unit < NAME;
  const lead = pen.line([at(x, z), at(to, z)].map(shorten), { stroke: 'second', width: WIDTH.fine });
  const sides = isNear ? (['top', 'bottom'] as const) : (['bottom', 'top'] as const);
  const choices = OFFSETS.flatMap((offset, i) =>
    sides.map((baseline, j) => {
      const label = pen.text({ x: to + unit, y: y + (baseline === 'top' ? offset : -offset) * unit }, name, LETTER.text, {
        baseline,
        hue: 'second',
      });
      return { draw: () => [lead, label], boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost: i * 2 + j };
    }),
  );
  return { isRequired: false, choices };
}

/** One dimension line a height, to the right of the names. Measured upward, so that the right hand of the axis is the right of the paper. */
export function createHeightRow({ z, edit, subject }: Height, to: number, { f, unit, shorten }: ElevationFrame): DimensionRequest {
  const axis = { x: 0, y: -1 };
  const span: Span = {
    from: { point: at(to, 0), lift: 0 },
    to: { point: shorten(at(to, z)), lift: 0 },
    text: figures(f, z),
    ...(edit === undefined ? {} : { edit }),
    ...(subject === undefined ? {} : { subject }),
  };
  return {
    rows: Array.from(
      { length: 8 },
      (_, i): DimensionRow => ({ axis, spans: [span], across: to / unit + NAMES + i * DIMENSION.step, cost: i * 1.5 }),
    ),
  };
}
