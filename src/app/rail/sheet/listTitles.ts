import type { DataSheetListName } from '../../../editor';

/** Headings of lists that share their part of the data sheet with something else. */
export const LIST_TITLES: Partial<Record<DataSheetListName, string>> = {
  fanCurve: 'Curve of its own fan',
  toCorner: 'To a corner',
  toStraight: 'To straight-through',
};
