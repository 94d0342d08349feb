/** Line widths, paper mm: the ISO 128 series, narrow to wide 1 : 2 and heavy for what is cut (from memory). */
export const WIDTH = { fine: 0.13, narrow: 0.18, medium: 0.25, wide: 0.35, heavy: 0.5, bold: 0.7 } as const;

/** Letter heights, paper mm: the ISO 3098 series. 2.5 is the least for what must be read. */
export const LETTER = { small: 1.8, text: 2.5, heading: 3.5, title: 5 } as const;

/** Thickness that walls are drawn with, outside the room's outline; the plan does not say how thick they are. */
export const WALL_THICKNESS = 120;
