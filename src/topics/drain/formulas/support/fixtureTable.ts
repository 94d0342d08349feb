import { type FormulaSource, inches } from '../../../../rules';
import { isAtMost, toSI } from '../../../../units';

/** Codes whose fixture values are held. `municipal-old` is an old city code; `ipc-trap` goes by the size of the trap. */
export const FIXTURE_CODES = ['upc', 'ipc', 'ipc-trap', 'municipal-old'] as const;
export type FixtureCode = (typeof FIXTURE_CODES)[number];

/** Drainage fixture units of one fixture in one code. */
export interface FixtureValue {
  code: FixtureCode;
  fixture: string;
  units: number;
  /** Least trap or waste; null where the value goes by the drain itself. */
  trapM: number | null;
}

const SOURCES: Readonly<Record<FixtureCode, FormulaSource>> = {
  upc: {
    text: 'UPC fixture table, in a public file; it has no row for a commercial dish machine',
    documents: ['upc'],
    confidence: 'secondary',
  },
  ipc: { text: 'IPC 709.1, quoted on a question page', documents: ['ipc'], confidence: 'secondary' },
  'ipc-trap': { text: 'IPC 709.2, fixtures not listed, by trap', documents: ['ipc'], confidence: 'memory' },
  'municipal-old': {
    text: 'A municipal plumbing code of about 1965, ecode360 40219343',
    documents: ['municipal-plumbing'],
    confidence: 'read',
  },
};

const rowsOf = (code: FixtureCode, rows: readonly (readonly [string, number, number | null])[]): FixtureValue[] =>
  rows.map(([fixture, units, trap]) => ({ code, fixture, units, trapM: trap === null ? null : inches(trap) }));

/** Single values; the whole tables are the codes' own. */
export const FIXTURE_VALUES: readonly FixtureValue[] = [
  ...rowsOf('municipal-old', [
    ['dish-machine', 4, 2],
    ['dish-machine-to-30-gal', 2, 2],
    ['dish-machine-to-100-gal', 6, 3],
    ['three-compartment-sink', 4, 2],
    ['disposer', 4, 2],
    ['floor-drain-2', 3, null],
    ['floor-drain-3', 4, null],
    ['floor-drain-4', 6, null],
  ]),
  ...rowsOf('upc', [
    ['disposer', 3, 2],
    ['sink-with-food-waste', 3, 1.5],
    ['special-sink-1.5', 3, 1.5],
    ['special-sink-2', 4, 2],
    ['special-sink-3', 6, 3],
    ['floor-drain', 2, 2],
    ['domestic-dish-machine', 2, 1.5],
  ]),
  ...rowsOf('ipc', [['floor-drain', 2, 2]]),
  ...rowsOf('ipc-trap', [
    ['trap-2', 3, 2],
    ['trap-3', 5, 3],
    ['trap-4', 6, 4],
  ]),
];

/** Value of a fixture in a code; null where the code has none at hand, which is for the code itself to say. */
export const findFixtureValue = (code: FixtureCode, fixture: string): FixtureValue | null =>
  FIXTURE_VALUES.find((one) => one.code === code && one.fixture === fixture) ?? null;

export const fixtureSource = (code: FixtureCode): FormulaSource => SOURCES[code];

/** Which row of the old municipal table a dish machine is, by what its tank holds in m³; null above 100 gal, which the table does not have. */
export function dishMachineRow(tankM3: number): 'dish-machine-to-30-gal' | 'dish-machine-to-100-gal' | null {
  if (isAtMost(tankM3, toSI(30, 'gal'))) return 'dish-machine-to-30-gal';
  return isAtMost(tankM3, toSI(100, 'gal')) ? 'dish-machine-to-100-gal' : null;
}

/**
 * Fixture units of a dish machine by the old municipal table, which has a row for any and rows for those of restaurants by their
 * tank: the one that counts more. Null above 100 gal, where the table ends.
 */
export function dishMachineUnits(tankM3: number): number | null {
  const row = dishMachineRow(tankM3);
  if (row === null) return null;
  return Math.max(unitsOf('dish-machine'), unitsOf(row));
}

const unitsOf = (fixture: string) => findFixtureValue('municipal-old', fixture)?.units ?? Number.NaN;

/** Which row of the old municipal table a floor drain is, by the nominal size of its pipe; the nearest that the table has. */
export function floorDrainRow(sizeM: number): 'floor-drain-2' | 'floor-drain-3' | 'floor-drain-4' {
  if (isAtMost(inches(4), sizeM)) return 'floor-drain-4';
  return isAtMost(inches(3), sizeM) ? 'floor-drain-3' : 'floor-drain-2';
}
