import { stepFor } from '../snap/step';
import type { EditorState, PointerInput } from '../types';

/** Beyond this nothing is caught, however far out one looks, mm. */
const FARTHEST_REACH = 150;

/** How a drag is held by what is near. Alt lets go of every snap and step, shift keeps to one direction. */
export interface Aim {
  /** How near an edge must come to be caught, mm. */
  readonly reach: number;
  /** Lengths and distances keep to this step, mm; 0 for free. */
  readonly step: number;
  readonly isFree: boolean;
  readonly isStraight: boolean;
}

/** The aim of a pointer at this zoom. */
export function aimOf(event: Pick<PointerInput, 'tolerance' | 'alt' | 'shift'>, { history, view }: EditorState): Aim {
  const step = stepFor(history.present.settings.units, view.scale);
  if (event.alt) return { ...FREE_AIM, isStraight: event.shift };
  return { reach: Math.min(event.tolerance * 1.5, FARTHEST_REACH), step, isFree: false, isStraight: event.shift };
}

/** Nothing catches: for arrow keys and typed places. */
export const FREE_AIM: Aim = { reach: 0, step: 0, isFree: true, isStraight: false };
