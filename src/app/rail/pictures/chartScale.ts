/** A linear scale of a chart: from 0 or less up to a round number, with its ticks. */
export interface ChartScale {
  from: number;
  to: number;
  ticks: readonly number[];
}

/** Steps that people count in: 1, 2 and 5 of a power of ten. About `wanted` of them reach over all values. */
export function createScale(values: readonly number[], wanted: number, from: number | null = 0): ChartScale {
  const low = Math.min(...values, from ?? Number.POSITIVE_INFINITY);
  const high = Math.max(...values, low + 1e-9);
  const step = roundStep((high - low) / wanted);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return { from: first * step, to: last * step, ticks: Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step)) };
}

function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const size = rough / power;
  return (size <= 1 ? 1 : size <= 2 ? 2 : size <= 5 ? 5 : 10) * power;
}

const tidy = (value: number) => Number(value.toPrecision(12));
