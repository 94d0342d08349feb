import type { StationKind } from '../../scene';

export const STATION_NAMES: Record<StationKind, string> = {
  'drop-off': 'drop-off',
  scrap: 'scrap',
  'pre-rinse': 'pre-rinse',
  'soiled-landing': 'soiled landing',
  machine: 'machine',
  'clean-landing': 'clean landing',
  storage: 'storage',
};
