import type { FloorDrain } from '../../../../plan';
import { nominalSize } from '../../formulas/nominalSize';
import { type FixtureCode, findFixtureValue, floorDrainRow } from '../../formulas/support/fixtureTable';

/** Fixture units of a row that a table is known to have. */
export const fixtureUnits = (code: FixtureCode, fixture: string): number => findFixtureValue(code, fixture)?.units ?? Number.NaN;

/** Codes that count all that empties into a floor drain: those that a plan may choose, and the table of an old city code, which Chicago borrows from. */
export const UNIT_CODES = ['ipc', 'upc', 'municipal-old', 'chicago'] as const;
export type UnitCode = (typeof UNIT_CODES)[number];

/** What a code counts for what stands beside a machine; where it has no row at hand that of another table. */
export interface FixtureRows {
  /** A ware sink that stands by itself, and a sink in a table. */
  sink: number;
  fitted: number;
  floorDrain: (drain: FloorDrain) => number;
  from: readonly FixtureCode[];
}

const bySize = ({ waste: { bore } }: FloorDrain): number => {
  const size = nominalSize({ boreM: (bore ?? 0) / 1000 });
  return fixtureUnits('municipal-old', floorDrainRow(size.ok ? size.value : 0));
};

const OLD_TABLE: FixtureRows = {
  sink: fixtureUnits('municipal-old', 'three-compartment-sink'),
  fitted: fixtureUnits('upc', 'sink-with-food-waste'),
  floorDrain: bySize,
  from: ['municipal-old', 'upc'],
};

export const FIXTURE_ROWS: Readonly<Record<UnitCode, FixtureRows>> = {
  ipc: {
    sink: fixtureUnits('ipc-trap', 'trap-2'),
    fitted: fixtureUnits('ipc-trap', 'trap-2'),
    floorDrain: () => fixtureUnits('ipc', 'floor-drain'),
    from: ['ipc', 'ipc-trap'],
  },
  upc: {
    sink: fixtureUnits('upc', 'sink-with-food-waste'),
    fitted: fixtureUnits('upc', 'sink-with-food-waste'),
    floorDrain: () => fixtureUnits('upc', 'floor-drain'),
    from: ['upc'],
  },
  chicago: OLD_TABLE,
  'municipal-old': OLD_TABLE,
};
