/** Things by the place that each of them states, lowest first. */
export const inOrder = <T extends { order: number }>(things: readonly T[]): T[] => things.toSorted((a, b) => a.order - b.order);
