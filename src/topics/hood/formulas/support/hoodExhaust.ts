/** A canopy as the rules see it. */
export interface HoodShape {
  lengthM: number;
  areaM2: number;
  openPerimeterM: number;
  openSides: '3' | '4';
  /** From the source of the vapour to the lip. */
  heightM: number;
  /** Capture velocity of the canopy formula; 50 fpm is usual. */
  captureMs: number;
}

export const EXHAUST_RULES = ['length', 'face', 'area-least', 'area-most', 'older-area', 'older-perimeter', 'capture'] as const;
export type ExhaustRule = (typeof EXHAUST_RULES)[number];
