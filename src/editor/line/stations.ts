import type { Fitting, Settings, Table } from '../../plan';
import type { StationKind } from '../../scene';
import { type FittingShape, newFitting } from './newFitting';

/** Stations that are a place on a table. */
export type FittingStation = 'drop-off' | 'scrap' | 'pre-rinse' | 'soiled-landing' | 'clean-landing';

/** The table that bears a station; null for the machine and for storage, which stand by themselves. */
export const ROLE_OF: Readonly<Record<StationKind, Table['role'] | null>> = {
  'drop-off': 'soiled',
  scrap: 'soiled',
  'pre-rinse': 'soiled',
  'soiled-landing': 'soiled',
  machine: null,
  'clean-landing': 'clean',
  storage: null,
};

/** Order of stations on their table, from the joint outward. */
export const RANK: Readonly<Record<FittingStation, number>> = {
  'soiled-landing': 0,
  'pre-rinse': 1,
  scrap: 2,
  'drop-off': 3,
  'clean-landing': 0,
};

export const isFittingStation = (kind: StationKind): kind is FittingStation => kind in RANK;

/** A station's fitting. A landing holds the racks that the settings ask for, and a pre-rinse sink has its spray. */
export function shapeOf(kind: FittingStation, { rackPitch, racksBefore, racksAfter }: Settings): FittingShape {
  const shape = newFitting(FITTING_OF[kind], 0);
  if (shape.kind === 'sink') return { ...shape, spray: true };
  if (shape.kind !== 'landing') return shape;
  const racks = kind === 'soiled-landing' ? racksBefore : racksAfter;
  return { ...shape, length: Math.max(racks, 1) * rackPitch };
}

const FITTING_OF: Readonly<Record<FittingStation, Fitting['kind']>> = {
  'drop-off': 'drop-off',
  scrap: 'scrap',
  'pre-rinse': 'sink',
  'soiled-landing': 'landing',
  'clean-landing': 'landing',
};

/** The station that a fitting is, on a table of this role; null for an overshelf. */
export function stationOf({ kind }: Fitting, role: Table['role']): FittingStation | null {
  if (role === 'clean') return kind === 'landing' ? 'clean-landing' : null;
  const kinds: Partial<Record<Fitting['kind'], FittingStation>> = {
    landing: 'soiled-landing',
    sink: 'pre-rinse',
    scrap: 'scrap',
    'drop-off': 'drop-off',
  };
  return kinds[kind] ?? null;
}
