import { scaleBox } from '../layout/box';
import type { Label, LabelChoice } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { textBox } from '../text/textBox';
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

function createNote(name: string, subject: string, from: number, to: number, { unit }: ElevationFrame): Label {
  const [a, b] = from < to ? [from, to] : [to, from];
  const pen = createPen('notes', subject);
  const choices = [0, 1, 2].map((row): LabelChoice => {
    const y = (5 + row * 3.6) * unit;
    const label = pen.text({ x: (a + b) / 2, y }, name, LETTER.text, { anchor: 'middle', baseline: 'middle', hue: 'second' });
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
    return { draw: () => [rail, stroke(a), stroke(b), label], boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost: row };
  });
  return { choices, isRequired: false };
}
