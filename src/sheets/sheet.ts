import type { Drawing } from '../drawing';
import type { Finding } from '../rules';
import type { Scene } from '../scene';
import type { Units } from '../units';
import type { PaperName } from './papers';

/** One page of drawing at a true scale. */
export interface Sheet {
  title: string;
  widthMm: number;
  heightMm: number;
  /** In paper mm from the upper left corner of the page. */
  drawing: Drawing;
  /** The n of 1 : n. */
  scaleDenominator: number;
  /** The scale for people. */
  scaleText: string;
}

export interface SheetOptions {
  paper: PaperName;
  /** The n of 1 : n, or the largest usual scale at which the plan fits. */
  scale: number | 'fit';
  units: Units;
  /** Only some of the checks were made; the sheet says so. */
  isPartlyChecked?: boolean;
}

/** Where a sheet stands in its set: `2 of 5`. */
export interface SheetPlace {
  number: number;
  of: number;
}

/** One kind of sheet: a file in `kinds/`. */
export interface SheetKind {
  /** Kebab-case and permanent. */
  id: string;
  /** Its place in the set; steps of ten. */
  order: number;
  draw: (scene: Scene, findings: readonly Finding[], options: SheetOptions, place: SheetPlace) => Sheet;
}
