import type { Thing } from '../../src/plan';

/** Three bowls of 18 × 18 × 12 in with a board of 18 in on either side, over an air gap. */
export const THREE_BOWLS: NonNullable<Thing['basins']> = {
  count: 3,
  length: 457.2,
  width: 457.2,
  depth: 304.8,
  leftBoard: 457.2,
  rightBoard: 457.2,
  waste: 'indirect',
  sanitizing: 'chemical',
  heater: null,
};
