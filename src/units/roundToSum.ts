/**
 * Parts rounded to whole numbers that add up to their rounded sum (the method of the largest remainder): each is rounded down,
 * and those that lose most by it are rounded up instead. No part moves by as much as 1.
 */
export function roundToSum(parts: readonly number[]): number[] {
  const low = parts.map(Math.floor);
  const missing = Math.round(sumOf(parts)) - sumOf(low);
  const loss = (i: number) => (parts[i] ?? 0) - (low[i] ?? 0);
  const raised = new Set([...parts.keys()].toSorted((a, b) => loss(b) - loss(a)).slice(0, missing));
  return low.map((part, i) => (raised.has(i) ? part + 1 : part));
}

const sumOf = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);
