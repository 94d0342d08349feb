import type { FigureReading, FigureRule } from '../../../rules';
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

function deriveReading(placed: PlacedThing): FigureReading {
  const { thing } = placed;
  const found = bowlsOf(thing);
  if ('bowls' in found) return { subjects: [thing.id], ...computeBowl(found.bowls), note: BRIM };
  return askBowls(placed, found.missing);
}

const BRIM = 'Full to the rim, as county forms count it. The demand for hot water takes each bowl once an hour.';
