import { pathOf, type Thing } from '../../plan';
import type { Scene } from '../../scene';
import { askFor } from '../support/readings';
import { bowlsOf, computeBowl } from '../support/sinkBowls';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'sink-volume',
  title: 'Water of one bowl of the sink',
  group: 'water',
  unit: 'm3',
  derive: (scene) =>
    scene.things.filter(({ thing }) => thing.kind === 'three-compartment-sink').map(({ thing }) => deriveReading(scene, thing)),
};

function deriveReading({ plan }: Scene, thing: Thing): FigureReading {
  const found = bowlsOf(thing);
  if ('bowls' in found) return { subjects: [thing.id], ...computeBowl(found.bowls), note: BRIM };
  const path = pathOf(plan, 'things', thing.id, 'basins', ...(found.missing === null ? [] : [found.missing]));
  return askFor([thing.id], found.missing === null ? 'bowls of the sink' : WORDS[found.missing], path);
}

const WORDS = { count: 'number of bowls', length: 'length of a bowl', width: 'width of a bowl', depth: 'depth of a bowl' };

const BRIM = 'Full to the rim, as county forms count it. The demand for hot water takes each bowl once an hour.';
