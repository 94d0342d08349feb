import { createPen, elideText, LETTER, type Pen, type Prim, WIDTH } from '../../drawing';

/** Width of the title block, lower right (ISO 7200, from memory), and its height; paper mm. */
export const TITLE_WIDTH = 180;
export const TITLE_HEIGHT = 36;

/** The fields of ISO 7200: each with its small caption. */
export interface TitleFields {
  owner: string;
  title: string;
  documentType: string;
  creator: string;
  approval: string;
  number: string;
  revision: string;
  date: string;
  sheet: string;
  scale: string;
  paper: string;
}

interface Cell {
  caption: string;
  text: string;
  x: number;
  width: number;
  /** Row, from the top. */
  row: number;
  size: number;
}

const ROWS = [12, 12, 12];

/** The title block with its upper left corner at (x, y). Long texts end in an ellipsis. */
export function drawTitleBlock(fields: TitleFields, x: number, y: number): Prim[] {
  const pen = createPen('notes');
  const outline = [
    { x, y },
    { x: x + TITLE_WIDTH, y },
    { x: x + TITLE_WIDTH, y: y + TITLE_HEIGHT },
    { x, y: y + TITLE_HEIGHT },
  ];
  return [
    pen.area(outline, { fill: 'paper', stroke: 'ink', width: WIDTH.heavy }),
    ...cellsOf(fields).flatMap((cell) => drawCell(pen, cell, x, y)),
  ];
}

function cellsOf(f: TitleFields): Cell[] {
  const { text, heading, title } = LETTER;
  return [
    { caption: 'Owner', text: f.owner, x: 0, width: 60, row: 0, size: heading },
    { caption: 'Title', text: f.title, x: 60, width: 120, row: 0, size: title },
    { caption: 'Document type', text: f.documentType, x: 0, width: 60, row: 1, size: heading },
    { caption: 'Drawn by', text: f.creator, x: 60, width: 40, row: 1, size: text },
    { caption: 'Approved by', text: f.approval, x: 100, width: 40, row: 1, size: text },
    { caption: 'Date of issue', text: f.date, x: 140, width: 40, row: 1, size: text },
    { caption: 'Number', text: f.number, x: 0, width: 60, row: 2, size: heading },
    { caption: 'Revision', text: f.revision, x: 60, width: 20, row: 2, size: text },
    { caption: 'Scale', text: f.scale, x: 80, width: 48, row: 2, size: text },
    { caption: 'Paper', text: f.paper, x: 128, width: 34, row: 2, size: text },
    { caption: 'Sheet', text: f.sheet, x: 162, width: 18, row: 2, size: text },
  ];
}

function drawCell(pen: Pen, { caption, text, x, width, row, size }: Cell, left: number, top: number): Prim[] {
  const y = top + ROWS.slice(0, row).reduce((sum, height) => sum + height, 0);
  const height = ROWS[row] ?? 0;
  const corner = { x: left + x, y };
  const edges = [
    [corner, { x: corner.x, y: y + height }],
    [corner, { x: corner.x + width, y }],
  ];
  const shown = elideText(text, { size, width: width - 3.2, weight: 'semibold' });
  return [
    ...edges.map((edge) => pen.line(edge, { stroke: 'ink', width: WIDTH.narrow })),
    pen.text({ x: corner.x + 1.6, y: y + 3.2 }, caption, LETTER.small, { hue: 'second' }),
    pen.text({ x: corner.x + 1.6, y: y + height - 2.6 }, shown, size, { weight: 'semibold' }),
  ];
}
