import { type Fitting, pathOf } from '../../../plan';
import {
  boundOf,
  type Check,
  createMessages,
  fittingPlace,
  isUnder,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameFitting,
  type Source,
} from '../../../rules';
import type { LaidFitting, PlacedTable, Scene } from '../../../scene';
import { RACK_SLIDE } from '../../line';
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

/** What is said of the pre-rinse and the scrap trough. Lengths in mm, slopes as height per length. */
export interface PreRinseSizeMessages {
  'pre-rinse-size/large-enough': Sized & { wanted: number };
  'pre-rinse-size/too-small': Sized & { missing: number };
  'pre-rinse-size/rack-fits': { sink: Name; rack: number };
  'pre-rinse-size/slide-unknown': Bowl;
  'pre-rinse-size/ask-slide': NoParams;
  'pre-rinse-size/no-slide': Bowl & { wanted: number };
  'pre-rinse-size/slide-too-narrow': Bowl & { slide: number; missing: number };
  'pre-rinse-size/slide-carries': Bowl & { slide: number };
  'pre-rinse-size/trough-depth-unknown': NoParams;
  'pre-rinse-size/ask-trough-depth': NoParams;
  'pre-rinse-size/trough-too-shallow': { depth: number; wanted: number };
  'pre-rinse-size/trough-deep-enough': { depth: number; wanted: number };
  'pre-rinse-size/trough-fall-unknown': NoParams;
  'pre-rinse-size/ask-trough-fall': NoParams;
  'pre-rinse-size/trough-too-flat': { slope: number; wanted: number };
  'pre-rinse-size/trough-steep-enough': { slope: number; wanted: number };
  'pre-rinse-size/covers-unknown': NoParams;
  'pre-rinse-size/ask-covers': NoParams;
  'pre-rinse-size/too-few-covers': Trough & { coverLength: number };
  'pre-rinse-size/covers-enough': Trough & { coverLength: number };
  'pre-rinse-size/inlets-unknown': NoParams;
  'pre-rinse-size/ask-inlets': NoParams;
  'pre-rinse-size/too-few-inlets': Trough;
  'pre-rinse-size/inlets-enough': Trough;
}

interface Sized {
  fitting: Name;
  size: number;
  /** What was measured. */
  way: 'shorter-side' | 'depth';
}

interface Bowl {
  sink: Name;
  width: number;
  rack: number;
}

interface Trough {
  length: number;
  has: number;
  wanted: number;
  /** One to each of these lengths. */
  stretch: number;
}

const say = createMessages<PreRinseSizeMessages>();

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
  const name = nameFitting(sink);
  const across = Math.min(sink.length, sink.width);
  return [
    held(about, 'size', name, across, lengthOf(PRE_RINSE_SIZE), 'shorter-side'),
    held(about, 'depth', name, sink.bowlDepth, lengthOf(PRE_RINSE_DEPTH), 'depth'),
    isUnder(across, rackSize) ? measureSlide(about, sink, path, across, rackSize) : holdsRack(about, name, across, rackSize),
  ];
}

const held = (about: About, part: string, fitting: Name, value: number, limit: number, way: Sized['way']): Measurement => ({
  part,
  value,
  limit,
  message: isUnder(value, limit)
    ? say('pre-rinse-size/too-small', { fitting, size: value, way, missing: limit - value })
    : say('pre-rinse-size/large-enough', { fitting, size: value, way, wanted: limit }),
  ...about,
});

const IN_THE_BOWL: Source = { kind: 'geometry', text: 'A bowl as wide as the rack takes it, and all that is sprayed off it.' };

const holdsRack = (about: About, sink: Name, across: number, rackSize: number): Measurement => ({
  part: 'rack',
  value: across,
  limit: rackSize,
  source: IN_THE_BOWL,
  message: say('pre-rinse-size/rack-fits', { sink, rack: rackSize }),
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
  return {
    part: 'rack',
    value: rackSlide,
    limit,
    source: SLIDE,
    message: saySlide({ sink: nameFitting(sink), width: across, rack: rackSize }, rackSlide, limit),
    ...about,
    ...(rackSlide === null ? { ask: { input: say('pre-rinse-size/ask-slide'), path: path('rackSlide') } } : {}),
  };
}

function saySlide(bowl: Bowl, slide: number | null, wanted: number): Message {
  if (slide === null) return say('pre-rinse-size/slide-unknown', bowl);
  if (slide === 0) return say('pre-rinse-size/no-slide', { ...bowl, wanted });
  return isUnder(slide, wanted)
    ? say('pre-rinse-size/slide-too-narrow', { ...bowl, slide, missing: wanted - slide })
    : say('pre-rinse-size/slide-carries', { ...bowl, slide });
}

function measureScrap(about: About, scrap: Scrap, path: PathTo): Measurement[] {
  const width = held(about, 'scrap', nameFitting(scrap), Math.min(scrap.length, scrap.width), lengthOf(SCRAP_WIDTH), 'shorter-side');
  return scrap.troughDepth === 0 ? [width] : [width, ...measureTrough(about, scrap, path)];
}

function measureTrough(about: About, scrap: Scrap, path: PathTo): Measurement[] {
  const { troughDepth, troughSlope } = scrap;
  const least = lengthOf(TROUGH_DEPTH);
  const depth: Measurement = {
    part: 'trough-depth',
    value: troughDepth,
    limit: least,
    message: sayDepth(troughDepth, least),
    ...about,
    ...(troughDepth === null ? { ask: { input: say('pre-rinse-size/ask-trough-depth'), path: path('troughDepth') } } : {}),
  };
  return troughDepth === null ? [depth] : [depth, measureFall(about, troughSlope, path), ...measureFittings(about, scrap, path)];
}

function sayDepth(depth: number | null, wanted: number): Message {
  if (depth === null) return say('pre-rinse-size/trough-depth-unknown');
  return say(isUnder(depth, wanted) ? 'pre-rinse-size/trough-too-shallow' : 'pre-rinse-size/trough-deep-enough', { depth, wanted });
}

function measureFall(about: About, slope: number | null, path: PathTo): Measurement {
  const least = boundOf(TROUGH_FALL);
  return {
    part: 'trough-fall',
    unit: 'ratio',
    value: slope,
    limit: least,
    message: sayFall(slope, least),
    ...about,
    ...(slope === null ? { ask: { input: say('pre-rinse-size/ask-trough-fall'), path: path('troughSlope') } } : {}),
  };
}

function sayFall(slope: number | null, wanted: number): Message {
  if (slope === null) return say('pre-rinse-size/trough-fall-unknown');
  return say(isUnder(slope, wanted) ? 'pre-rinse-size/trough-too-flat' : 'pre-rinse-size/trough-steep-enough', { slope, wanted });
}

/** So many of a kind, one to each stretch of the trough; the last stretch may be shorter. */
interface Spaced {
  kind: 'covers' | 'inlets';
  key: 'troughCovers' | 'troughInlets';
  stretch: number;
  message: (trough: Trough, isShort: boolean) => Message;
}

const COVER = lengthOf(TROUGH_COVER);
const INLET = lengthOf(TROUGH_INLET);
/** A cover carries a rack across. */
const COVER_LENGTH = 508;

const SPACED: readonly Spaced[] = [
  {
    kind: 'covers',
    key: 'troughCovers',
    stretch: COVER,
    message: (trough, isShort) => {
      const said = { ...trough, coverLength: COVER_LENGTH };
      return say(isShort ? 'pre-rinse-size/too-few-covers' : 'pre-rinse-size/covers-enough', said);
    },
  },
  {
    kind: 'inlets',
    key: 'troughInlets',
    stretch: INLET,
    message: (trough, isShort) => say(isShort ? 'pre-rinse-size/too-few-inlets' : 'pre-rinse-size/inlets-enough', trough),
  },
];

const measureFittings = (about: About, scrap: Scrap, path: PathTo): Measurement[] =>
  SPACED.map((spaced) => measureSpaced(about, spaced, Math.max(scrap.length, scrap.width), scrap[spaced.key], path(spaced.key)));

function measureSpaced(about: About, spaced: Spaced, along: number, has: number | null, path: Path): Measurement {
  const { kind, stretch, message } = spaced;
  const wanted = Math.ceil(along / stretch - DUST);
  return {
    part: `trough-${kind}`,
    unit: 'count',
    value: has,
    limit: wanted,
    message: has === null ? say(`pre-rinse-size/${kind}-unknown`) : message({ length: along, has, wanted, stretch }, has < wanted),
    ...about,
    ...(has === null ? { ask: { input: say(`pre-rinse-size/ask-${kind}`), path } } : {}),
  };
}

/** A trough of just a stretch. */
const DUST = 1e-9;
