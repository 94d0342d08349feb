import type { GuideKind } from '../types';

/** What catches a moving box: by how much to move along an axis, and where the guide lies. */
export interface Catch {
  readonly by: number;
  readonly cost: number;
  readonly kind: GuideKind;
  /** Offset of the caught line along the axis. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** How far a box reaches along an axis and across it. */
export interface Span {
  readonly min: number;
  readonly max: number;
  readonly mid: number;
  readonly side: { readonly min: number; readonly max: number; readonly mid: number };
  /** What it keeps free between itself and a wall, at its lower and at its upper end. */
  readonly keepOff: { readonly min: number; readonly max: number };
}

/** By how much two spans are apart; negative where they overlap. */
export const gapBetween = (a: { min: number; max: number }, b: { min: number; max: number }) => Math.max(a.min - b.max, b.min - a.max);
