import { distance, type Point } from '../../geometry';
import type { PointerInput } from '../types';
import type { Press } from './toolState';

/** A pointer that goes less far than this between down and up has pressed, not dragged, px. */
export const DRAG_FROM_PX = 3;

/** A second press this near to the first is on the same place, px. */
const SAME_PLACE_PX = 4;

export const pressAt = ({ point, screen }: PointerInput): Press => ({ point, screen });

export const isDrag = (press: Press, event: PointerInput): boolean => distance(press.screen, event.screen) >= DRAG_FROM_PX;

export const isSamePlace = (a: Point, b: Point): boolean => distance(a, b) <= SAME_PLACE_PX;
