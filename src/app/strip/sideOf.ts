import type { StationKind } from '../../scene';

/** On which side of the machine a station lies. */
export function sideOf(kind: StationKind): 'soiled' | 'machine' | 'clean' {
  if (kind === 'machine') return 'machine';
  return kind === 'clean-landing' || kind === 'storage' ? 'clean' : 'soiled';
}
