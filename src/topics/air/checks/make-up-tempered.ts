import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  readFigure,
  type Source,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as makeUpDifferenceFigure } from '../figures/make-up-difference';
import { rule as roomTemperatureSteadyFigure } from '../figures/room-temperature-steady';
import { needAir } from '../figures/support/roomAir';
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

/** Temperatures in °C, their differences in K. */
export interface MakeUpTemperedMessages {
  'make-up-tempered/what-make-up': NoParams;
  'make-up-tempered/warm': { temperature: number; wanted: number };
  'make-up-tempered/cold': { temperature: number; wanted: number };
  'make-up-tempered/what-difference': NoParams;
  'make-up-tempered/near': { apart: number; most: number };
  /** `usual`: the most where it does not help. */
  'make-up-tempered/near-where-it-helps': { apart: number; usual: number };
  'make-up-tempered/apart': { apart: number; most: number };
  'make-up-tempered/what-work-area': NoParams;
  'make-up-tempered/room-good': { temperature: number; most: number };
  'make-up-tempered/room-warm': { temperature: number; most: number };
  'make-up-tempered/what-warmed': NoParams;
  'make-up-tempered/warmed-good': { temperature: number; most: number };
  'make-up-tempered/warmed-too-much': { temperature: number; most: number };
}

const say = createMessages<MakeUpTemperedMessages>();

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
  return holdReading(stated(scene, 'makeUpC'), {
    part: 'make-up',
    what: say('make-up-tempered/what-make-up'),
    limit: least,
    watchLimit: better,
    message: (temperature) =>
      temperature >= better - TOLERANCE
        ? say('make-up-tempered/warm', { temperature, wanted: better })
        : say('make-up-tempered/cold', { temperature, wanted: temperature < least ? least : better }),
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
      what: say('make-up-tempered/what-difference'),
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
      message: (apart) => sayDifference(apart, most, always),
      ...about,
    }),
  );
}

function sayDifference(apart: number, most: number, always: number): Message {
  if (apart <= always + TOLERANCE) return say('make-up-tempered/near', { apart, most: always });
  if (apart <= most + TOLERANCE) return say('make-up-tempered/near-where-it-helps', { apart, usual: always });
  return say('make-up-tempered/apart', { apart, most });
}

/** Criteria that are superseded: only a watch. */
function measureWorkArea(scene: Scene, about: About): Measurement {
  const most = WORK_TEMPERATURE.max ?? 0;
  return holdReading(stated(scene, 'roomC'), {
    part: 'work-area',
    what: say('make-up-tempered/what-work-area'),
    limit: most,
    relation: 'at-most',
    severity: 'watch',
    source: WORK_SOURCE,
    message: (temperature) =>
      say(temperature <= most + TOLERANCE ? 'make-up-tempered/room-good' : 'make-up-tempered/room-warm', { temperature, most }),
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
        what: say('make-up-tempered/what-warmed'),
        limit: most,
        relation: 'at-most',
        severity: 'watch',
        source: WORK_SOURCE,
        message: (temperature) =>
          say(temperature <= most + TOLERANCE ? 'make-up-tempered/warmed-good' : 'make-up-tempered/warmed-too-much', { temperature, most }),
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

function stated(scene: Scene, field: 'makeUpC' | 'roomC'): FigureReading {
  const air = needAir(scene, field);
  return 'reading' in air ? air.reading : { subjects: [], value: air.known, how: null };
}
