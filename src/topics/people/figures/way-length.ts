import { pathLength } from '../../../geometry';
import { createMessages, type FigureReading, type FigureRule, measured, type NoParams } from '../../../rules';
import type { Line } from '../../../scene';

export const rule: FigureRule = {
  id: 'way-length',
  order: 890,
  title: 'Way along the line',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap(deriveLine),
};

export interface WayLengthMessages {
  'way-length/soiled': NoParams;
  'way-length/rack': NoParams;
  'way-length/clean': NoParams;
}

const say = createMessages<WayLengthMessages>();

/** A way that the line lacks has no length. */
const deriveLine = ({ machine, ways }: Line): FigureReading[] =>
  PARTS.filter((part) => ways[part].length > 1).map((part) => ({
    part,
    subjects: [machine.machine.id],
    value: pathLength(ways[part]) / 1000,
    how: HOW,
    notes: [say(`way-length/${part}`)],
  }));

const HOW = measured('L = sum of the straight pieces of the way');

const PARTS = ['soiled', 'rack', 'clean'] as const;
