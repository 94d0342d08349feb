import type { Scene } from '../scene';
import { readerOf } from './readFigure';
import { FIGURES } from './registry';
import type { FigureReading } from './types';

/** The readings of a figure by its id, for what holds them against a limit or draws them. Throws for an id that no figure has. */
export function readingsOf(scene: Scene, id: string): readonly FigureReading[] {
  const read = BY_ID.get(id);
  if (read === undefined) throw new Error(`there is no figure “${id}”`);
  return read(scene);
}

const BY_ID = new Map(FIGURES.map((rule) => [rule.id, readerOf(rule)]));
