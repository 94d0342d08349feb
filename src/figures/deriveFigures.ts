import { withoutRowIds } from '../engineering';
import type { Scene } from '../scene';
import { readHow } from './compute';
import { readFigure } from './readFigure';
import type { Figure, FigureReading, FigureRule, How } from './types';

/** Derives every figure that has a meaning for the scene, in the order of the rules. */
export function deriveFigures(scene: Scene, rules: readonly FigureRule[]): Figure[] {
  return rules.flatMap((rule) => readFigure(rule, scene).map((reading) => figureOf(rule, reading)));
}

/** A reading that is remembered stays the same figure. */
function figureOf(rule: FigureRule, reading: FigureReading): Figure {
  const figure = known.get(reading) ?? createFigure(rule, reading);
  known.set(reading, figure);
  return figure;
}

const known = new WeakMap<FigureReading, Figure>();

function createFigure({ id, title, group, unit }: FigureRule, reading: FigureReading): Figure {
  const { part, subjects, value, ask, refusal, how, note } = reading;
  let told: How | null = null;
  return {
    id: [part === undefined ? id : `${id}/${part}`, ...subjects].join(':'),
    figure: id,
    part: part ?? null,
    title,
    group,
    unit,
    subjects,
    value,
    ask: ask ?? null,
    refusal: refusal ?? null,
    get how() {
      if (how !== null) told ??= asRead(readHow(how));
      return told;
    },
    note: note ?? null,
  };
}

const asRead = (how: How): How => ({ ...how, source: how.source.map((source) => ({ ...source, text: withoutRowIds(source.text) })) });
