/** Wetted area and hydraulic radius of a round pipe of diameter 1, filled to a part of its height. */
export function partFull(depth: number): { area: number; radius: number } {
  const angle = 2 * Math.acos(1 - 2 * depth);
  const area = (angle - Math.sin(angle)) / 8;
  return { area, radius: area / (angle / 2) };
}
