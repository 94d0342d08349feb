import type { Units } from '../../units';

/** How a plan is drawn. */
export interface PlanOptions {
  units: Units;
  /** The n of 1 : n that texts and marks are laid out for: plan millimetres per paper millimetre. */
  scaleDenominator: number;
}
