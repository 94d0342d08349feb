import type { StationKind } from '../../scene';

export const STATION_NAMES: Record<StationKind, string> = {
  'drop-off': 'Drop-off',
  scrap: 'Scrap',
  'pre-rinse': 'Pre-rinse',
  'soiled-landing': 'Soiled landing',
  machine: 'Machine',
  'clean-landing': 'Clean landing',
  storage: 'Storage',
};

/** On which side of the machine a station lies. */
export function sideOf(kind: StationKind): 'soiled' | 'machine' | 'clean' {
  if (kind === 'machine') return 'machine';
  return kind === 'clean-landing' || kind === 'storage' ? 'clean' : 'soiled';
}
