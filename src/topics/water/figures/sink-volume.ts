import { createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { PlacedThing } from '../../../scene';
import { askBowls, bowlsOf, computeBowl } from './support/sinkBowls';

export const rule: FigureRule = {
  id: 'sink-volume',
  order: 190,
  title: 'Water of one bowl of the sink',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.things.filter(({ thing }) => thing.kind === 'three-compartment-sink').map(deriveReading),
};

/** How full it is taken to be. */
export interface SinkVolumeMessages {
  'sink-volume/to-the-rim': NoParams;
}

const message = createMessages<SinkVolumeMessages>();

function deriveReading(placed: PlacedThing): FigureReading {
  const { thing } = placed;
  const found = bowlsOf(thing);
  if ('bowls' in found) return { subjects: [thing.id], ...computeBowl(found.bowls), notes: [message('sink-volume/to-the-rim')] };
  return askBowls(placed, found.missing);
}
