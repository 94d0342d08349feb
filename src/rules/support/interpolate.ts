/** Points of a table, by rising x. */
export type Points = readonly (readonly [x: number, y: number])[];

/** Straight lines between the points of a table. The caller keeps x within its ends. */
export function interpolate(points: Points, x: number): number {
  const next = Math.max(
    1,
    points.findIndex(([at]) => x <= at),
  );
  const [x0, y0] = points[next - 1] ?? [0, 0];
  const [x1, y1] = points[next] ?? [x0, y0];
  return x === x1 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
