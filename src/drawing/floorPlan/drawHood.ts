import { offsetConvex } from '../../geometry';
import type { PlacedHood } from '../../scene';
import type { Drawing } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';

/** A hood is above the cut: its lip in dashes, with the gutter inside it. How far it overhangs stands in the dimensions. */
export function drawHood({ hood, polygon }: PlacedHood): Drawing {
  const pen = createPen('above', hood.id);
  return [
    pen.area(polygon, { stroke: 'air', width: WIDTH.heavy, dash: 'short', pattern: 'none' }),
    pen.area(offsetConvex(polygon, -50), { stroke: 'air', width: WIDTH.fine, dash: 'short', pattern: 'none' }),
  ];
}
