import { rememberReads, type Scene } from '../scene';
import type { FigureReading, FigureRule } from './types';

/** The readings of one figure: what is shown of it and what is held against a limit are the same numbers, worked out once. */
export function readFigure(rule: FigureRule, scene: Scene): readonly FigureReading[] {
  const remembered = known.get(rule) ?? rememberReads(rule.derive);
  known.set(rule, remembered);
  return remembered(scene);
}

const known = new WeakMap<FigureRule, (scene: Scene) => readonly FigureReading[]>();
