import { createPen, elideText, type Ink, LETTER, type Pen, type Prim, STUBS, WIDTH } from '../../drawing';
import type { Scene } from '../../scene';
import { type Block, drawHeading, HEADING_HEIGHT } from '../block';

interface Entry {
  words: string;
  draw: (pen: Pen, x: number, y: number) => Prim[];
}

const SWATCH = { width: 11, height: 4 };
const ROW = 5.1;
const TIGHT_ROW = 4.7;

/** What patterns, lines and letters mean: those that this plan uses. A tight one has no heading and less space. */
export function createLegendBlock(scene: Scene, width: number, isTight = false): Block {
  const entries = listEntries(scene);
  const columns = Math.max(1, Math.floor(width / (isTight ? 36 : 42)));
  const rows = Math.ceil(entries.length / columns);
  const step = width / columns;
  const [row, heading] = isTight ? [TIGHT_ROW, 0] : [ROW, HEADING_HEIGHT];
  return {
    height: heading + rows * row,
    draw: (x, y) => {
      const pen = createPen('notes');
      const cells = entries.flatMap((entry, i) => {
        const left = x + Math.floor(i / rows) * step;
        const top = y + heading + (i % rows) * row;
        const words = elideText(entry.words, { size: LETTER.text, width: step - SWATCH.width - 4 });
        return [
          ...entry.draw(pen, left, top),
          pen.text({ x: left + SWATCH.width + 2, y: top + SWATCH.height / 2 }, words, LETTER.text, { baseline: 'middle' }),
        ];
      });
      return [...(isTight ? [] : drawHeading('Legend', x, y, width)), ...cells];
    },
  };
}

function listEntries(scene: Scene): Entry[] {
  const kinds = [...new Set(scene.room.stubs.map(({ stub }) => stub.kind))];
  const hasRun = scene.runs.length > 0;
  return [
    { words: 'wall', draw: swatch({ fill: 'second', pattern: 'wall', stroke: 'ink', width: WIDTH.medium }) },
    { words: 'soiled', draw: swatch({ fill: 'soiled', pattern: 'hatch-45', stroke: 'soiled', width: WIDTH.medium }) },
    { words: 'clean', draw: swatch({ fill: 'clean', pattern: 'dots', stroke: 'clean', width: WIDTH.medium }) },
    { words: 'backsplash', draw: stroke({ stroke: 'ink', width: WIDTH.bold * 1.4 }) },
    { words: 'controls', draw: swatch({ fill: 'chosen', stroke: 'ink', width: WIDTH.narrow }) },
    { words: 'item, see equipment', draw: lozenge },
    { words: 'overhead', draw: swatch({ stroke: 'air', width: WIDTH.heavy, dash: 'short', pattern: 'none' }) },
    ...(hasRun ? [{ words: 'vent run', draw: stroke({ stroke: 'air', width: WIDTH.wide, dash: 'long' }) } satisfies Entry] : []),
    ...(kinds.some((kind) => kind.endsWith('water'))
      ? [{ words: 'water serves', draw: stroke({ stroke: 'water', width: WIDTH.medium, dash: 'short' }) } satisfies Entry]
      : []),
    ...(kinds.includes('power')
      ? [{ words: 'power serves', draw: stroke({ stroke: 'power', width: WIDTH.medium, dash: 'dash-dot' }) } satisfies Entry]
      : []),
    ...kinds.map((kind): Entry => ({ words: `${STUBS[kind].name} stub`, draw: letters(STUBS[kind]) })),
    { words: 'way of racks', draw: arrow },
  ];
}

function swatch(ink: Ink): Entry['draw'] {
  return (pen, x, y) => [
    pen.area(
      [
        { x, y },
        { x: x + SWATCH.width, y },
        { x: x + SWATCH.width, y: y + SWATCH.height },
        { x, y: y + SWATCH.height },
      ],
      ink,
    ),
  ];
}

function stroke(ink: Ink): Entry['draw'] {
  return (pen, x, y) => [
    pen.line(
      [
        { x, y: y + SWATCH.height / 2 },
        { x: x + SWATCH.width, y: y + SWATCH.height / 2 },
      ],
      ink,
    ),
  ];
}

const lozenge: Entry['draw'] = (pen, x, y) => {
  const at = { x: x + SWATCH.width / 2, y: y + SWATCH.height / 2 };
  return [
    pen.symbol(at, 'lozenge', 6.4, { stroke: 'ink', width: WIDTH.medium, fill: 'paper' }),
    pen.text(at, '1', LETTER.text, { anchor: 'middle', baseline: 'middle', weight: 'semibold' }),
  ];
};

const letters =
  ({ hue, letters: text }: (typeof STUBS)[keyof typeof STUBS]): Entry['draw'] =>
  (pen, x, y) => {
    const at = { x: x + SWATCH.width / 2, y: y + SWATCH.height / 2 };
    return [
      pen.symbol(at, 'ring', 4.8, { stroke: hue, width: WIDTH.medium, fill: 'paper' }),
      pen.text(at, text, 2, { anchor: 'middle', baseline: 'middle', hue, weight: 'semibold' }),
    ];
  };

const arrow: Entry['draw'] = (pen, x, y) => [
  pen.line(
    [
      { x, y: y + SWATCH.height / 2 },
      { x: x + SWATCH.width, y: y + SWATCH.height / 2 },
    ],
    { stroke: 'ink', width: WIDTH.medium },
  ),
  pen.symbol({ x: x + SWATCH.width * 0.7, y: y + SWATCH.height / 2 }, 'arrow', 2.2, { fill: 'ink', angleDeg: 0 }),
];
