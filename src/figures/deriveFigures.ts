import { withoutRowIds } from '../engineering';
import type { Scene } from '../scene';
import { readHow } from './compute';
import { readFigure } from './readFigure';
import type { Figure, FigureReading, FigureRule, How } from './types';

/** Derives every figure that has a meaning for the scene, in the order of the rules. */
export function deriveFigures(scene: Scene, rules: readonly FigureRule[]): Figure[] {
  return rules.flatMap((rule) => figuresOf(rule, scene));
}

/** Readings that are remembered stay the same figures. */
function figuresOf(rule: FigureRule, scene: Scene): readonly Figure[] {
  const readings = readFigure(rule, scene);
  const last = known.get(rule);
  if (last?.readings === readings) return last.figures;
  const figures = readings.map((reading) => createFigure(rule, reading));
  known.set(rule, { readings, figures });
  return figures;
}

const known = new WeakMap<FigureRule, { readings: readonly FigureReading[]; figures: readonly Figure[] }>();

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
