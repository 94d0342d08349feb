import { scaleBox } from '../layout/box';
import type { Label, LabelChoice } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { textBox } from '../typeset/textBox';
import { measureTextWidth } from '../typeset/textWidth';
import { fittingName } from '../wording';
import type { ElevationFrame } from './elevationFrame';
import type { UnrolledLine, UnrolledTable } from './unrollLine';

/** Names below the floor: what each stretch of the line is, between small strokes. */
export function createStationNotes(unrolled: UnrolledLine, frame: ElevationFrame): Label[] {
  const { machine, left, right } = unrolled;
  return [createNote('machine', machine.machine.id, left, right, frame), ...unrolled.tables.flatMap((table) => notesOfTable(table, frame))];
}

function notesOfTable({ table, x }: UnrolledTable, frame: ElevationFrame): Label[] {
  const named = table.fittings.filter(({ fitting }) => fitting.kind !== 'overshelf');
  return named.map(({ fitting, from, to }) => createNote(fittingName(fitting, table.table.role), fitting.id, x(from), x(to), frame));
}

/** Rows of names, and shares of its own width by which a name may stand aside of its stretch's middle. */
const PLACES = [0, 1, 2]
  .flatMap((row) =>
    [0, 0.12, -0.12, 0.25, -0.25, 0.4, -0.4].map((shift) => ({ row, shift, cost: row + (shift === 0 ? 0 : 1.2 + Math.abs(shift)) })),
  )
  .sort((one, other) => one.cost - other.cost);

function createNote(name: string, subject: string, from: number, to: number, { unit }: ElevationFrame): Label {
  const [a, b] = from < to ? [from, to] : [to, from];
  const pen = createPen('notes', subject);
  const width = measureTextWidth(name, LETTER.text) * unit;
  const choices = PLACES.map(({ row, shift, cost }): LabelChoice => {
    const label = pen.text({ x: (a + b) / 2 + shift * width, y: (5 + row * 3.6) * unit }, name, LETTER.text, {
      anchor: 'middle',
      baseline: 'middle',
      hue: 'second',
    });
    const stroke = (x: number) =>
      pen.line(
        [
          { x, y: 2.3 * unit },
          { x, y: 3.3 * unit },
        ],
        { stroke: 'second', width: WIDTH.narrow },
      );
    const rail = pen.line(
      [
        { x: a, y: 2.8 * unit },
        { x: b, y: 2.8 * unit },
      ],
      { stroke: 'second', width: WIDTH.narrow },
    );
    return { draw: () => [rail, stroke(a), stroke(b), label], boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost };
  });
  return { choices, isRequired: false };
}
