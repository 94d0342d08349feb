import type { Reached } from '../../../topics/people/figures/support/farthestReach';

/** What hands reach for over a table. */
export const REACHED: Readonly<Record<Reached, string>> = {
  rack: 'the far edge of a rack',
  bowl: 'the far edge of the bowl',
  scrap: 'the far edge of the scrap opening',
  overshelf: 'the near edge of the overshelf',
};
