import { type Fitting, pathOf } from '../../../plan';
import { boundOf, type Check, count, fittingPlace, isUnder, lengthOf, type Measurement, type Source, sentence } from '../../../rules';
import type { LaidFitting, PlacedTable, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { fittingName, RACK_SLIDE } from '../../line';
import {
  PRE_RINSE_DEPTH,
  PRE_RINSE_SIZE,
  SCRAP_WIDTH,
  TROUGH_COVER,
  TROUGH_DEPTH,
  TROUGH_FALL,
  TROUGH_INLET,
} from '../formulas/cleanlinessLimits';

export const check: Check = {
  id: 'pre-rinse-size',
  order: 870,
  title: 'A rack finds room at the pre-rinse, and scraps in the trough',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFGS 11400A',
    section:
      '2.4.2.6: sink of 18 × 18 in, 188 mm deep; scrap trough 8 in (200 mm) wide, from 4 in (100 mm) deep, falling 1 %, a cover of 20 in to each 36 in, a water inlet at the shallow end and every 48 in',
    confidence: 'read',
  },
  why: 'A rack that is sprayed over a bowl smaller than itself, with no slide to carry it, tips and wets the operator. A flat trough keeps its scraps; water washes them along it, and covers carry a rack across. It is a guide for military kitchens and good practice elsewhere.',
  measure: (scene) => scene.tables.flatMap((table) => table.fittings.flatMap((fitting) => measureFitting(scene, table, fitting))),
};

type Sink = Extract<Fitting, { kind: 'sink' }>;
type Scrap = Extract<Fitting, { kind: 'scrap' }>;
type About = Pick<Measurement, 'subjects' | 'place' | 'severity'>;

function measureFitting(scene: Scene, placed: PlacedTable, { fitting }: LaidFitting): Measurement[] {
  const { table } = placed;
  const about: About = { subjects: [fitting.id, table.id], place: fittingPlace(placed, fitting), severity: 'watch' };
  const path = (key: string) => {
    const index = table.fittings.findIndex(({ id }) => id === fitting.id);
    return pathOf(scene.plan, 'tables', table.id, 'fittings', index, key);
  };
  if (fitting.kind === 'scrap') return measureScrap(about, fitting, path);
  return fitting.kind === 'sink' && fitting.spray ? measureSink(about, fitting, path, scene.plan.settings.rackSize) : [];
}

type Path = (string | number)[];
type PathTo = (key: string) => Path;

function measureSink(about: About, sink: Sink, path: PathTo, rackSize: number): Measurement[] {
  const name = fittingName(sink);
  const across = Math.min(sink.length, sink.width);
  return [
    held(about, 'size', name, across, lengthOf(PRE_RINSE_SIZE), 'on its shorter side'),
    held(about, 'depth', name, sink.bowlDepth, lengthOf(PRE_RINSE_DEPTH), 'deep'),
    isUnder(across, rackSize) ? measureSlide(about, sink, path, across, rackSize) : holdsRack(about, name, across, rackSize),
  ];
}

const held = (about: About, part: string, name: string, value: number, limit: number, way: string): Measurement => ({
  part,
  value,
  limit,
  say: (f) =>
    sentence(
      isUnder(value, limit)
        ? `${name} is ${f.length(value)} ${way}, ${f.length(limit - value)} less than is wanted. Take a larger one.`
        : `${name} is ${f.length(value)} ${way}; ${f.length(limit)} is wanted.`,
    ),
  ...about,
});

const IN_THE_BOWL: Source = { kind: 'geometry', text: 'A bowl as wide as the rack takes it, and all that is sprayed off it.' };

const holdsRack = (about: About, name: string, across: number, rackSize: number): Measurement => ({
  part: 'rack',
  value: across,
  limit: rackSize,
  source: IN_THE_BOWL,
  say: (f) => sentence(`a rack of ${f.length(rackSize)} finds room in the bowl of ${name}.`),
  ...about,
});

const SLIDE: Source = {
  kind: 'published',
  document: 'UFGS 11400A',
  section: '2.4.2.2: rack slide over the pre-rinse sink, its frame 20½ in (520 mm) square for racks of 20 in',
  confidence: 'read',
};
/** A frame is so much larger than its rack. */
const FRAME_OVER_RACK = lengthOf(RACK_SLIDE) - 508;

/** A smaller bowl has a slide over it that carries the rack. */
function measureSlide(about: About, sink: Sink, path: PathTo, across: number, rackSize: number): Measurement {
  const limit = rackSize + FRAME_OVER_RACK;
  const { rackSlide } = sink;
  const name = fittingName(sink);
  return {
    part: 'rack',
    value: rackSlide,
    limit,
    source: SLIDE,
    say: (f) =>
      sentence(slideWords(`the bowl of ${name} is ${f.length(across)} wide and a rack ${f.length(rackSize)}`, rackSlide, limit, f)),
    ...about,
    ...(rackSlide === null ? { ask: { input: 'rack slide over the bowl', path: path('rackSlide') } } : {}),
  };
}

function slideWords(start: string, slide: number | null, limit: number, f: Formatter): string {
  if (slide === null) return `${start}: say how wide the rack slide over it is, 0 for none.`;
  if (slide === 0) return `${start}, with no rack slide over it. Have one of ${f.length(limit)} made, or take a larger bowl.`;
  return isUnder(slide, limit)
    ? `${start}; its rack slide of ${f.length(slide)} is ${f.length(limit - slide)} too narrow. Have it made wider.`
    : `${start}; a rack slide of ${f.length(slide)} carries it.`;
}

function measureScrap(about: About, scrap: Scrap, path: PathTo): Measurement[] {
  const name = fittingName(scrap);
  const width = held(about, 'scrap', name, Math.min(scrap.length, scrap.width), lengthOf(SCRAP_WIDTH), 'on its shorter side');
  return scrap.troughDepth === 0 ? [width] : [width, ...measureTrough(about, scrap, path)];
}

function measureTrough(about: About, scrap: Scrap, path: PathTo): Measurement[] {
  const { troughDepth, troughSlope } = scrap;
  const least = lengthOf(TROUGH_DEPTH);
  const depth: Measurement = {
    part: 'trough-depth',
    value: troughDepth,
    limit: least,
    say: (f) => {
      if (troughDepth === null) return 'Say how deep the scrap trough is at its shallow end, 0 for a plain opening.';
      const is = `The scrap trough is ${f.length(troughDepth)} deep at its shallow end`;
      return isUnder(troughDepth, least)
        ? `${is}; from ${f.length(least)} on, scraps are washed along it. Have it made deeper.`
        : `${is}; ${f.length(least)} is wanted.`;
    },
    ...about,
    ...(troughDepth === null ? { ask: { input: 'depth of the scrap trough', path: path('troughDepth') } } : {}),
  };
  return troughDepth === null ? [depth] : [depth, measureFall(about, troughSlope, path), ...measureFittings(about, scrap, path)];
}

function measureFall(about: About, slope: number | null, path: PathTo): Measurement {
  const least = boundOf(TROUGH_FALL);
  return {
    part: 'trough-fall',
    unit: 'ratio',
    value: slope,
    limit: least,
    say: (f) => {
      if (slope === null) return 'Say how much the scrap trough falls to where it empties.';
      const falls = slope === 0 ? 'The scrap trough is level' : `The scrap trough falls ${f.slope(slope)}`;
      return isUnder(slope, least)
        ? `${falls}; ${f.slope(least)} carries scraps along. Have it fall more.`
        : `${falls}; ${f.slope(least)} is wanted.`;
    },
    ...about,
    ...(slope === null ? { ask: { input: 'fall of the scrap trough', path: path('troughSlope') } } : {}),
  };
}

/** So many of a kind, one to each stretch of the trough; the last stretch may be shorter. */
interface Spaced {
  part: string;
  key: 'troughCovers' | 'troughInlets';
  stretch: number;
  /** `cover`. */
  one: string;
  /** After "2 are wanted, ". */
  how: (f: Formatter) => string;
}

const COVER = lengthOf(TROUGH_COVER);
const INLET = lengthOf(TROUGH_INLET);
/** A cover carries a rack across. */
const COVER_LENGTH = 508;

const SPACED: readonly Spaced[] = [
  {
    part: 'trough-covers',
    key: 'troughCovers',
    stretch: COVER,
    one: 'cover',
    how: (f) => `one of ${f.length(COVER_LENGTH)} to each ${f.length(COVER)}`,
  },
  {
    part: 'trough-inlets',
    key: 'troughInlets',
    stretch: INLET,
    one: 'water inlet',
    how: (f) => `the first at its shallow end, the next after ${f.length(INLET)} at most`,
  },
];

const measureFittings = (about: About, scrap: Scrap, path: PathTo): Measurement[] =>
  SPACED.map((spaced) => measureSpaced(about, spaced, Math.max(scrap.length, scrap.width), scrap[spaced.key], path(spaced.key)));

function measureSpaced(about: About, spaced: Spaced, along: number, has: number | null, path: Path): Measurement {
  const { part, stretch, one, how } = spaced;
  const least = Math.ceil(along / stretch - DUST);
  return {
    part,
    unit: 'count',
    value: has,
    limit: least,
    say: (f) => {
      if (has === null) return `Say how many ${one}s the scrap trough has.`;
      const is = `The scrap trough is ${f.length(along)} long and has ${count(has, one)}`;
      return has < least ? `${is}; ${count(least, one)} ${least === 1 ? 'is' : 'are'} wanted, ${how(f)}.` : `${is}: ${how(f)}.`;
    },
    ...about,
    ...(has === null ? { ask: { input: `number of ${one}s of the scrap trough`, path } } : {}),
  };
}

/** A trough of just a stretch. */
const DUST = 1e-9;
