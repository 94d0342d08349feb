import { createListKeeper } from './memoizeByIdentity';
import type { Appliance, Configuration, Layout, Line } from './types';

/** The lines without their places; the same list as before while no more than their places changed. Lines and machines are in one order. */
export const deriveLayouts = (lines: readonly Line[], appliances: readonly Appliance[]): Layout[] =>
  keep(lines.flatMap((line, i) => (appliances[i] === undefined ? [] : [layoutOf(line, appliances[i])])));

const layoutOf = ({ configuration, hand, soiled, clean }: Line, machine: Appliance): Layout => ({
  machine,
  configuration,
  hand,
  only: soiled === null ? (clean === null ? null : 'clean') : clean === null ? 'soiled' : null,
});

const keep = createListKeeper<Layout>(
  (one, other) =>
    one.machine === other.machine &&
    one.hand === other.hand &&
    one.only === other.only &&
    isSameConfiguration(one.configuration, other.configuration),
);

const isSameConfiguration = (one: Configuration, other: Configuration) =>
  one.kind === other.kind &&
  (one.kind !== 'corner' || one.side === (other as typeof one).side) &&
  (one.kind !== 'none' || one.reason === (other as typeof one).reason);
