import { type Area, frameOf } from './area';
import { NORTH_SIZE, SCALE_BAR } from './blocks/northAndScale';
import { TITLE_HEIGHT, TITLE_WIDTH } from './blocks/titleBlock';
import type { Paper } from './papers';

/** Space between the parts of a sheet, paper mm. */
export const GAP = 5;

/** Where each part of a sheet lies. */
export interface SheetLayout {
  frame: Area;
  plan: Area;
  column: Area;
  /** Scale bar and north. */
  foot: Area;
  title: Area;
  /** The column is as wide as the title block and holds the legend; on small papers it is narrow, and the legend stands beside the title. */
  isWide: boolean;
}

/** Plan on the left, words on the right, title block lower right, within the frame. */
export function layOut({ widthMm, heightMm }: Paper): SheetLayout {
  const frame = frameOf(widthMm, heightMm);
  const right = frame.x + frame.width;
  const bottom = frame.y + frame.height;
  const title = { x: right - TITLE_WIDTH, y: bottom - TITLE_HEIGHT, width: TITLE_WIDTH, height: TITLE_HEIGHT };
  const isWide = frame.width >= 360;
  const columnWidth = isWide ? TITLE_WIDTH - 2 * GAP : 84;
  const columnX = right - columnWidth - GAP;
  const footHeight = isWide ? NORTH_SIZE : SCALE_BAR.height;
  const top = frame.y + GAP;
  const column = { x: columnX, y: top, width: columnWidth, height: title.y - GAP - (isWide ? footHeight : 0) - top };
  const planBottom = isWide ? bottom - GAP : title.y - footHeight - GAP;
  const plan = { x: frame.x + GAP, y: top, width: columnX - frame.x - 3 * GAP, height: planBottom - top };
  const foot = isWide
    ? { x: columnX, y: title.y - footHeight - 2, width: columnWidth, height: footHeight }
    : { x: frame.x + GAP, y: title.y - footHeight - 2, width: plan.width, height: footHeight };
  return { frame, plan, column, foot, title, isWide };
}
