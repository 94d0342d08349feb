import type { Point } from '../../geometry';
import type { Hit, Modifiers, PointerInput, PointerKind, View } from '../types';
import { toPlan } from './view';

/** How near counts as on it, px: a fingertip is blunter than a mouse. */
export const REACH_PX: Record<PointerKind, number> = { mouse: 6, pen: 8, touch: 18 };

export interface PointerOptions extends Partial<Modifiers> {
  readonly pointer?: PointerKind;
  readonly button?: 0 | 1 | 2;
  readonly under?: readonly Hit[];
}

/** Makes an editor event from a place on the canvas (px). */
export function createPointerEvent(view: View, type: PointerInput['type'], screen: Point, options: PointerOptions = {}): PointerInput {
  const pointer = options.pointer ?? 'mouse';
  return {
    type,
    point: toMicron(toPlan(view, screen)),
    screen,
    tolerance: REACH_PX[pointer] / view.scale,
    pointer,
    under: options.under ?? [],
    button: options.button ?? 0,
    shift: options.shift ?? false,
    alt: options.alt ?? false,
    ctrl: options.ctrl ?? false,
  };
}

/** Plan places to a thousandth of a millimetre, so that no dust of the zoom gets into a plan. */
const toMicron = ({ x, y }: Point): Point => ({ x: Math.round(x * 1000) / 1000, y: Math.round(y * 1000) / 1000 });
