/**
 * Where a rising function reaches 0 between two ends. Halving is slower than Newton's steps and never lost:
 * 60 halvings of a span of 300 leave less than the last digit.
 */
export function bisect(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let step = 0; step < 60; step += 1) {
    const middle = (from + to) / 2;
    if (rising(middle) < 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
