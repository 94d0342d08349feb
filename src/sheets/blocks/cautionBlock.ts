import { CAUTION, createPen, LETTER, WALL_THICKNESS, wrapText } from '../../drawing';
import type { Formatter } from '../../units';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT } from '../block';

/** The caution, the measure that figures are in, and what is drawn but not said by the plan. `elsewhere`: what this paper has no room for. */
export function createCautionBlock(f: Formatter, width: number, elsewhere = ''): Block {
  const measure = f.units === 'metric' ? 'Dimensions in millimetres' : 'Dimensions in feet and inches';
  const notes = `${measure}, to finished faces. Walls are drawn ${f.length(WALL_THICKNESS)} thick: the plan does not say how thick they are. Lines from stubs show what serves what, not the way of a pipe or wire. ${elsewhere}`;
  const text = [...wrapText(CAUTION, { size: LETTER.text, width }), ...wrapText(notes, { size: LETTER.text, width })];
  const bold = wrapText(CAUTION, { size: LETTER.text, width }).length;
  return {
    height: HEADING_HEIGHT + text.length * LINE_HEIGHT,
    draw: (x, y) => {
      const pen = createPen('notes');
      return [
        ...drawHeading('Caution', x, y, width),
        ...text.map((line, i) =>
          pen.text({ x, y: y + HEADING_HEIGHT + 3 + i * LINE_HEIGHT }, line, LETTER.text, i < bold ? {} : { hue: 'second' }),
        ),
      ];
    },
  };
}
