/** What stands on the paper's edge, measured from the sides of the canvas that it keeps to, px. */
export interface Panel {
  readonly left?: number;
  readonly right?: number;
  readonly top?: number;
  readonly bottom?: number;
  readonly width: number;
  readonly height: number;
}

/** The menu of what can be put on the paper, and the lens, each with a little air, as large as they are under a mouse and under a finger. */
export const PANELS: Record<'mouse' | 'touch', readonly Panel[]> = {
  mouse: [
    { left: 0, top: 12, width: 130, height: 34 },
    { right: 12, bottom: 12, width: 56, height: 126 },
  ],
  touch: [
    { left: 0, top: 12, width: 130, height: 44 },
    { right: 12, bottom: 12, width: 56, height: 156 },
  ],
};

/** The panels as they are on this screen. A whole plan keeps clear of them. */
export const readPanels = (): readonly Panel[] => PANELS[globalThis.matchMedia?.('(pointer: coarse)').matches ? 'touch' : 'mouse'];
