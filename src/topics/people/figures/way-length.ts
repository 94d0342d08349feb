import { pathLength } from '../../../geometry';
import { type FigureReading, type FigureRule, measured } from '../../../rules';
import type { Line } from '../../../scene';

export const rule: FigureRule = {
  id: 'way-length',
  order: 890,
  title: 'Way along the line',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap(deriveLine),
};

/** A way that the line lacks has no length. */
const deriveLine = ({ machine, ways }: Line): FigureReading[] =>
  PARTS.filter(({ part }) => ways[part].length > 1).map(({ part, note }) => ({
    part,
    subjects: [machine.machine.id],
    value: pathLength(ways[part]) / 1000,
    how: HOW,
    note,
  }));

const HOW = measured('L = sum of the straight pieces of the way');

const PARTS = [
  { part: 'soiled', note: 'From the drop-off to the machine.' },
  { part: 'rack', note: 'Through the machine, from table to table.' },
  { part: 'clean', note: 'From the machine to the storage.' },
] as const;
