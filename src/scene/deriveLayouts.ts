import { gather } from '../geometry';
import { hasSameFields } from './hasSameFields';
import { createListKeeper } from './memoizeByIdentity';
import type { Appliance, Layout, Line, PlacedTable, Station, Worktop } from './types';

/** The lines without their places; the same list as before while no more than their places changed. Lines and machines are in one order. */
export const deriveLayouts = (lines: readonly Line[], appliances: readonly Appliance[], worktops: readonly Worktop[]): Layout[] =>
  keep(gather(lines, (line, i) => (appliances[i] === undefined ? [] : [layoutOf(line, appliances[i], worktops)])));

const layoutOf = ({ configuration, hand, soiled, clean, stations }: Line, machine: Appliance, worktops: readonly Worktop[]): Layout => ({
  machine,
  configuration,
  hand,
  soiled: worktopOf(soiled, worktops),
  clean: worktopOf(clean, worktops),
  stations: stations.map(({ kind, subject, length, racks }) => ({ kind, subject, length, racks })),
});

const worktopOf = (placed: PlacedTable | null, worktops: readonly Worktop[]) =>
  placed === null ? null : (worktops.find(({ table }) => table.id === placed.table.id) ?? null);

const keep = createListKeeper<Layout>(
  (one, other) =>
    one.machine === other.machine &&
    one.hand === other.hand &&
    one.soiled === other.soiled &&
    one.clean === other.clean &&
    hasSameFields(one.configuration, other.configuration) &&
    areSameStations(one.stations, other.stations),
);

const areSameStations = (one: Layout['stations'], other: Layout['stations']) =>
  one.length === other.length && one.every((station, i) => hasSameFields(station, other[i] as Omit<Station, 'place'>));
