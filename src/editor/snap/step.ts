import type { Units } from '../../units';

/** Steps of lengths, finest first: ½, 1, 3, 6 and 12 in; 10, 50, 100 and 500 mm. */
const STEPS: Record<Units, readonly number[]> = {
  us: [12.7, 25.4, 76.2, 152.4, 304.8],
  metric: [10, 50, 100, 500],
};

/** A step that is smaller than this on the screen can't be aimed at, px. */
const LEAST_PX = 3;

/** The step that lengths keep to at this zoom, mm: the finest that can be told apart on the screen. */
export function stepFor(units: Units, scale: number): number {
  const steps = STEPS[units];
  return steps.find((step) => step * scale >= LEAST_PX) ?? steps.at(-1) ?? 1;
}

/** The nearest multiple of a step; unchanged for a step of 0 (everything free). */
export function roundTo(value: number, step: number): number {
  return step === 0 ? value : withoutDust(Math.round(value / step) * step);
}

/** Takes off what binary arithmetic adds in the last figures, so that what is typed and what is dragged are the same number. */
export const withoutDust = (value: number): number => Number(value.toPrecision(12)) + 0;

/** How far an arrow key moves things: ⅛, ½ or 1 in; 1, 5 or 10 mm, finer the nearer one looks. */
export function nudgeFor(units: Units, scale: number): number {
  const [fine, middle, coarse]: readonly [number, number, number] = units === 'us' ? [3.175, 12.7, 25.4] : [1, 5, 10];
  if (scale >= 2) return fine;
  return scale >= 0.5 ? middle : coarse;
}
