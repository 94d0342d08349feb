import { createPen, type Drawing, LETTER, type Prim, WIDTH } from '../drawing';
import type { Area } from './area';

/** A part of a sheet that is as high as what it holds. `draw` places it with its upper left corner at a point of the paper. */
export interface Block {
  height: number;
  draw: (x: number, y: number) => Drawing;
}

/** A block that has nothing to say. */
export const NO_BLOCK: Block = { height: 0, draw: () => [] };

/** From one line of text to the next, paper mm. */
export const LINE_HEIGHT = 4;
/** Height of a block's heading with the space below it. */
export const HEADING_HEIGHT = 6.6;

/** A block's heading over a thin rule. */
export function drawHeading(text: string, x: number, y: number, width: number): Prim[] {
  const pen = createPen('notes');
  return [
    pen.text({ x, y: y + 3.2 }, text, LETTER.heading * 0.86, { weight: 'semibold' }),
    pen.line(
      [
        { x, y: y + 4.6 },
        { x: x + width, y: y + 4.6 },
      ],
      { stroke: 'ink', width: WIDTH.medium },
    ),
  ];
}

/** Two blocks beside each other, tops level, the second so far to the right of the first. */
export const placeBeside = (left: Block, right: Block, step: number): Block => ({
  height: Math.max(left.height, right.height),
  draw: (x, y) => [...left.draw(x, y), ...right.draw(x + step, y)],
});

/** Blocks below each other from the top of an area, as many as find room; the rest is left out. */
export function stackBlocks(blocks: readonly Block[], { x, y, height }: Area, gap: number): Drawing {
  let top = y;
  return blocks.flatMap((block) => {
    if (block.height === 0 || top + block.height > y + height + 1e-6) return [];
    const drawing = block.draw(x, top);
    top += block.height + gap;
    return drawing;
  });
}
