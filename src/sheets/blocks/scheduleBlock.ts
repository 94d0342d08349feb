import { configurationWords, createPen, describeRun, LETTER, powerWords, WIDTH, wrapText } from '../../drawing';
import type { PlacedMachine, PlacedTable, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT, NO_BLOCK } from '../block';

interface Row {
  mark: string;
  item: string;
  details: string;
}

/** The equipment schedule: what bears each mark, its size and what must be known of it. At most `maxHeight` high. */
export function createScheduleBlock(scene: Scene, f: Formatter, width: number, maxHeight: number): Block {
  const listed = listRows(scene, f);
  const room = maxHeight - HEADING_HEIGHT;
  const roomy = listed.map((row) => layRow(row, width, 2));
  const rows = heightOf(roomy) <= room ? roomy : listed.map((row) => layRow(row, width, 1));
  const shown = heightOf(rows) <= room ? rows : takeFitting(rows, room - LINE_HEIGHT);
  const left = rows.length - shown.length;
  const height = HEADING_HEIGHT + heightOf(shown) + (left > 0 ? LINE_HEIGHT : 0);
  if (rows.length === 0) return NO_BLOCK;
  return {
    height,
    draw: (x, y) => {
      let top = y + HEADING_HEIGHT;
      const drawn = shown.flatMap((row) => {
        const prims = row.draw(x, top);
        top += row.height;
        return prims;
      });
      const more =
        left > 0
          ? [createPen('notes').text({ x, y: top + 3 }, `and ${left} more, which the plan file holds`, LETTER.text, { hue: 'second' })]
          : [];
      return [...drawHeading('Equipment', x, y, width), ...drawn, ...more];
    },
  };
}

const heightOf = (rows: readonly Block[]) => rows.reduce((sum, row) => sum + row.height, 0);

function takeFitting(rows: readonly Block[], room: number): Block[] {
  let used = 0;
  return rows.filter((row) => {
    used += row.height;
    return used <= room;
  });
}

const MARK_WIDTH = 9;

/** A row in two columns, or in one where the block is narrow; no more than `maxLines` of text in either. */
function layRow(row: Row, width: number, maxLines: number): Block {
  const isNarrow = width < 120;
  const itemWidth = isNarrow ? width - MARK_WIDTH : width * 0.36 - MARK_WIDTH;
  const item = wrapText(row.item, { size: LETTER.text, width: itemWidth - 1, weight: 'semibold', maxLines: isNarrow ? 1 : maxLines });
  const detailsX = isNarrow ? MARK_WIDTH : width * 0.36 + 2;
  const details = wrapText(row.details, { size: LETTER.text, width: width - detailsX, maxLines });
  const lines = isNarrow ? 1 + details.length : Math.max(item.length, details.length);
  return {
    height: lines * LINE_HEIGHT + 1.4,
    draw: (x, y) => {
      const pen = createPen('notes');
      const first = isNarrow ? 1 : 0;
      const rule = y + lines * LINE_HEIGHT + 0.9;
      return [
        pen.text({ x: x + MARK_WIDTH - 3, y: y + 3 }, row.mark, LETTER.text, { anchor: 'end', weight: 'semibold' }),
        ...item.map((line, i) => pen.text({ x: x + MARK_WIDTH, y: y + 3 + i * LINE_HEIGHT }, line, LETTER.text, { weight: 'semibold' })),
        ...details.map((line, i) => pen.text({ x: x + detailsX, y: y + 3 + (first + i) * LINE_HEIGHT }, line, LETTER.text)),
        pen.line(
          [
            { x, y: rule },
            { x: x + width, y: rule },
          ],
          { stroke: 'hairline', width: WIDTH.narrow },
        ),
      ];
    },
  };
}

/** A row for each mark, in the order of the marks. */
function listRows(scene: Scene, f: Formatter): Row[] {
  const rows = new Map<string, Omit<Row, 'mark'>>();
  for (const machine of scene.machines)
    rows.set(machine.machine.id, { item: machine.sheet.name, details: describeMachine(scene, machine, f) });
  for (const table of scene.tables)
    rows.set(table.table.id, { item: `${table.table.role === 'soiled' ? 'Soiled' : 'Clean'} table`, details: describeTable(table, f) });
  for (const { hood } of scene.hoods) {
    const lip = hood.lipHeight === null ? 'height of the lip not known' : `lip ${f.length(hood.lipHeight)} above the floor`;
    rows.set(hood.id, { item: 'Hood', details: `${f.length(hood.width)} × ${f.length(hood.depth)} inside, ${lip}` });
  }
  for (const run of scene.runs) rows.set(run.run.id, { item: 'Vent run', details: describeRun(scene, run, f) });
  for (const { thing, name } of scene.things) {
    rows.set(thing.id, { item: name, details: `${f.length(thing.width)} × ${f.length(thing.depth)}, ${f.length(thing.height)} high` });
  }
  return Object.entries(scene.marks).flatMap(([id, mark]) => {
    const row = rows.get(id);
    return row === undefined ? [] : [{ mark, ...row }];
  });
}

function describeMachine(scene: Scene, { machine, sheet }: PlacedMachine, f: Formatter): string {
  const line = scene.lines.find((item) => item.machine.machine.id === machine.id);
  const variant = sheet.electrical.find(({ id }) => id === machine.electrical);
  const controls = sheet.controls.find(({ id }) => id === machine.controls);
  const parts = [
    `${f.length(sheet.width)} × ${f.length(sheet.depth)}`,
    line === undefined ? '' : [configurationWords(line.configuration.kind), line.hand?.replaceAll('-', ' ')].filter(Boolean).join(', '),
    variant === undefined ? 'voltage not decided' : powerWords(variant.voltage, variant.phase),
    controls === undefined ? '' : `controls: ${controls.name.toLowerCase()}`,
  ];
  return parts.filter((part) => part !== '').join('; ');
}

function describeTable({ table, length, nodes }: PlacedTable, f: Formatter): string {
  const height = nodes[0]?.z ?? null;
  const joint = height === null ? 'height at the joint not known' : `${f.length(height, { unitInches: true })} high at the joint`;
  const fall = table.deck.kind === 'fall' && table.deck.fall !== null ? `, fall ${f.slope(table.deck.fall)}` : '';
  const splash = table.backsplash > 0 ? `, backsplash ${f.length(table.backsplash, { unitInches: true })}` : '';
  return `${f.length(length)} × ${f.length(table.depth)}, ${joint}${fall}${splash}`;
}
