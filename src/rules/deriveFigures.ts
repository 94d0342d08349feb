import type { Scene } from '../scene';
import type { Figure, FigureReading, FigureRule } from './figure';
import { readFigure } from './readFigure';
import { readNote } from './support/readings';

/** Derives every figure that has a meaning for the scene, in the order of the rules. */
export const deriveFigures = (scene: Scene, rules: readonly FigureRule[]): Figure[] =>
  rules.flatMap((rule) => readFigure(rule, scene).map((reading) => toFigure(rule, reading)));

function toFigure(rule: FigureRule, reading: FigureReading): Figure {
  const { part = null, subjects, value, how } = reading;
  const name = part === null ? rule.id : `${rule.id}/${part}`;
  return {
    id: subjects.length === 0 ? name : `${name}:${subjects.join(':')}`,
    figure: rule.id,
    part,
    title: rule.title,
    group: rule.group,
    unit: rule.unit,
    subjects,
    value,
    ask: reading.ask ?? null,
    refusal: reading.refusal ?? null,
    notes: reading.notes ?? [],
    note: readNote(reading),
    how: how,
  };
}
