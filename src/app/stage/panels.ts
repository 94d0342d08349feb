/** What stands on the paper's edge, measured from the sides of the canvas that it keeps to, px. */
export interface Panel {
  readonly left?: number;
  readonly right?: number;
  readonly top?: number;
  readonly bottom?: number;
  readonly width: number;
  readonly height: number;
}

/** The menu of what can be put on the paper, and the lens, as large as they are under a finger, with a little air. A whole plan keeps clear of them. */
export const PANELS: readonly Panel[] = [
  { left: 0, top: 12, width: 132, height: 44 },
  { right: 12, bottom: 12, width: 60, height: 166 },
];
