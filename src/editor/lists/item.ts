/** A thing of the plan in the list beside the canvas. */
export interface Item {
  readonly id: string;
  readonly name: string;
  /** What it is, in a word or two ("soiled table"). */
  readonly what: string;
  /** Item mark of the drawing, where it bears one. */
  readonly mark: string | null;
  /** Things that belong to it: fittings of a table. */
  readonly parts: readonly Item[];
}

export interface ItemGroup {
  readonly group: 'line' | 'room' | 'things' | 'air';
  readonly title: string;
  readonly items: readonly Item[];
}
