import { TOLERANCE } from '../tolerance';

/** Less than a bound by more than rounding, as the verdict takes it. */
export const isUnder = (value: number, bound: number): boolean => value < bound - TOLERANCE;

/** More than a bound by more than rounding. */
export const isOver = (value: number, bound: number): boolean => value > bound + TOLERANCE;
