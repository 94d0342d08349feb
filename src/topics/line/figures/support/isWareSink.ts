import type { PlacedThing } from '../../../../scene';

/** Whether ware is washed in it: a three-compartment sink, or another thing with bowls that is no hand sink. */
export const isWareSink = ({ kind, basins }: PlacedThing['thing']): boolean =>
  kind === 'three-compartment-sink' || (basins !== null && kind !== 'hand-sink');
