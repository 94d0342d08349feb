import { memoizeByIdentity, type PlacedMachine, type Scene } from '../scene';
import type { FigureReading, FigureRule } from './figure';

/** The readings of one figure: what is shown of it and what is held against a limit are the same numbers, worked out once. */
export const readFigure = (rule: FigureRule, scene: Scene): readonly FigureReading[] => readerOf(rule)(scene);

/** The same for any scene. */
export const readerOf = memoizeByIdentity((rule: FigureRule) => memoizeByIdentity<[Scene], readonly FigureReading[]>(rule.derive));

/** What a figure says of one thing, for another figure that rests on it; of its parts the one that is named. Throws when it says nothing. */
export function readOf(rule: FigureRule, scene: Scene, subject: string, part?: string): FigureReading {
  const found = readFigure(rule, scene).find((reading) => reading.subjects[0] === subject && reading.part === part);
  if (found === undefined) throw new Error(`figure “${rule.id}” says nothing of ${subject}`);
  return found;
}

/** What a figure says of one machine. */
export const readingsFor = (rule: FigureRule, scene: Scene, { machine }: PlacedMachine): FigureReading[] =>
  readFigure(rule, scene).filter(({ subjects }) => subjects[0] === machine.id);
