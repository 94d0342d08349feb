import {
  type Check,
  type FigureReading,
  holdReading,
  type Measurement,
  machinesPlace,
  readFigure,
  type Source,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as makeUpDifferenceFigure } from '../figures/make-up-difference';
import { rule as roomTemperatureSteadyFigure } from '../figures/room-temperature-steady';
import {
  MAKE_UP_DIFFERENCE,
  MAKE_UP_DIFFERENCE_HELPING,
  MAKE_UP_TEMPERATURE,
  MAKE_UP_TEMPERED,
  WORK_TEMPERATURE,
} from '../formulas/airLimits';

export const check: Check = {
  id: 'make-up-tempered',
  order: 470,
  title: 'Make-up air is tempered',
  group: 'air',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Minnesota Rules 1346.0508',
    section: 'at least 50 °F at the diffuser; 65 °F in UFC 3-410-01FA (2003), 4-10.1, superseded',
    confidence: 'read',
  },
  why: 'Cold make-up air makes people close its openings, and then the hood starves. A dish room that is too warm wears its people out.',
  measure: (scene) => (scene.machines.length === 0 ? [] : measureRoom(scene)),
};

function measureRoom(scene: Scene): Measurement[] {
  const about = {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: machinesPlace(scene),
  };
  const hasMakeUp = scene.plan.air.makeUp !== 0;
  return [
    ...(hasMakeUp ? [measureTemperature(scene, about), ...measureDifference(scene, about)] : []),
    measureWorkArea(scene, about),
    ...measureSteady(scene, about),
  ];
}

type About = Pick<Measurement, 'place'> & { subjects: string[] };

function measureTemperature(scene: Scene, about: About): Measurement {
  const [least, better] = [MAKE_UP_TEMPERATURE.min ?? 0, MAKE_UP_TEMPERED.min ?? 0];
  return holdReading(stated(scene, 'makeUpC', 'temperature of the make-up air'), {
    part: 'make-up',
    name: 'whether the make-up air is warm enough',
    limit: least,
    watchLimit: better,
    say: (value, f) =>
      value >= better - TOLERANCE
        ? `The make-up air comes in at ${f.temperature(value)}; ${f.temperature(better)} is looked for.`
        : `The make-up air comes in at ${f.temperature(value)}, and ${f.temperature(value < least ? least : better)} is looked for. Heat it first.`,
    ...about,
  });
}

/** More than the first difference only where it helps the heating or the cooling. Nothing while the temperature of the make-up air asks. */
function measureDifference(scene: Scene, about: About): Measurement[] {
  if (scene.plan.air.makeUpC === null) return [];
  const [most, always] = [MAKE_UP_DIFFERENCE_HELPING.max ?? 0, MAKE_UP_DIFFERENCE.max ?? 0];
  return readFigure(makeUpDifferenceFigure, scene).map((reading) =>
    holdReading(reading, {
      part: 'difference',
      name: 'how far the make-up air is from the room',
      limit: most,
      watchLimit: always,
      relation: 'at-most',
      unit: 'K',
      source: {
        kind: 'published',
        document: 'NYC Mechanical Code',
        section: '508.1.1: within 10 °F of the room, or 25 °F where it helps the heating or cooling load',
        confidence: 'read',
      },
      say: (value, f) => {
        const apart = `Make-up air and room are ${f.temperatureDifference(value)} apart`;
        if (value <= always + TOLERANCE) return `${apart}; ${f.temperatureDifference(always)} is the most.`;
        if (value <= most + TOLERANCE)
          return `${apart}: more than ${f.temperatureDifference(always)} is let pass only where it helps the heating or the cooling.`;
        return `${apart}, and ${f.temperatureDifference(most)} is the most even where it helps the load. Heat or cool it nearer to the room.`;
      },
      ...about,
    }),
  );
}

/** Criteria that are superseded: only a watch. */
function measureWorkArea(scene: Scene, about: About): Measurement {
  const most = WORK_TEMPERATURE.max ?? 0;
  return holdReading(stated(scene, 'roomC', 'temperature of the room'), {
    part: 'work-area',
    name: 'whether people can work in the room',
    limit: most,
    relation: 'at-most',
    severity: 'watch',
    source: WORK_SOURCE,
    say: (value, f) =>
      value <= most + TOLERANCE
        ? `The room is at ${f.temperature(value)}; ${f.temperature(most)} is the most for work.`
        : `The room is at ${f.temperature(value)}, more than ${f.temperature(most)} for work. Draw more at the machine, or cool the make-up air.`,
    ...about,
  });
}

/** The room as its machines warm it where nothing cools it. Nothing while an input of the figure is missing: others ask for the same. */
function measureSteady(scene: Scene, about: About): Measurement[] {
  const most = WORK_TEMPERATURE.max ?? 0;
  return readFigure(roomTemperatureSteadyFigure, scene)
    .filter(({ value }) => value !== null)
    .map((reading) =>
      holdReading(reading, {
        part: 'warmed',
        name: 'how warm the room grows',
        limit: most,
        relation: 'at-most',
        severity: 'watch',
        source: WORK_SOURCE,
        say: (value, f) => {
          const grows = `Without cooling the machines warm the room to ${f.temperature(value)}`;
          if (value <= most + TOLERANCE) return `${grows}; ${f.temperature(most)} is the most for work.`;
          return `${grows}, more than ${f.temperature(most)} for work. Draw more air through the room, or cool it.`;
        },
        ...about,
      }),
    );
}

const WORK_SOURCE: Source = {
  kind: 'published',
  document: 'UFC 3-410-01FA (15 May 2003), superseded',
  section: '4-10.1: work areas not above 85 °F',
  confidence: 'read',
};

function stated({ plan }: Scene, field: 'makeUpC' | 'roomC', input: string): FigureReading {
  const value = plan.air[field];
  return { subjects: [], value, ...(value === null ? { ask: { input, path: ['air', field] } } : {}), how: null };
}
