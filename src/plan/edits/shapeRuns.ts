import type { Recipe } from '../edit';
import type { Run } from '../planSchema';

type Point = Run['points'][number];

/** Puts a point into a run; index 0 is the first one after the collar. */
export function addRunPoint(run: string, index: number, point: Point): Recipe {
  return onRun(run, (item) => void item.points.splice(index, 0, { ...point }));
}

/** Moves a point of a run. */
export function moveRunPoint(run: string, index: number, to: Partial<Point>): Recipe {
  return onRun(run, (item) => {
    const point = item.points[index];
    if (point !== undefined) Object.assign(point, to);
  });
}

/** Takes a point out of a run; the last one stays. */
export function removeRunPoint(run: string, index: number): Recipe {
  return onRun(run, (item) => {
    if (item.points.length > 1 && item.points[index] !== undefined) item.points.splice(index, 1);
  });
}

function onRun(id: string, change: (run: Run) => void): Recipe {
  return (draft) => {
    const run = draft.runs.find((item) => item.id === id);
    if (run !== undefined) change(run);
  };
}
