import type { Thing } from '../../../plan';
import { boundOf, type Check, count, lengthOf, type Measurement, ownerName, type Source, sentence, thingsPlace } from '../../../rules';
import { type PlacedThing, type Scene, thingPath } from '../../../scene';
import { BOARD_LENGTH, BOWL_DEPTH, BOWL_SIZE, SINK_BOARDS, SINK_BOWLS } from '../formulas/cleanlinessLimits';

export const check: Check = {
  id: 'three-compartments',
  order: 840,
  title: 'The sink washes, rinses and sanitises',
  group: 'sanitary',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'California Health and Safety Code',
    section: '§114099: three compartments, two drainboards, bowls that take the largest item',
    confidence: 'read',
  },
  why: 'By hand ware is washed, rinsed and sanitised in three bowls; what comes and what goes stands on boards of their own. The largest item must go under.',
  measure: (scene) =>
    scene.things.filter(({ thing }) => thing.kind === 'three-compartment-sink').flatMap((placed) => measureSink(scene, placed)),
};

const USUAL: Source = {
  kind: 'published',
  document: 'California county plan-check guides',
  section: 'bowls of 18 × 18 × 12 in and boards of 18 in',
  confidence: 'memory',
};

type Basins = NonNullable<Thing['basins']>;
type Field = keyof Basins;

const WORDS: Record<Field, string> = {
  count: 'number of bowls',
  length: 'length of a bowl',
  width: 'width of a bowl',
  depth: 'depth of a bowl',
  leftBoard: 'length of the left drainboard',
  rightBoard: 'length of the right drainboard',
  waste: 'way in which its bowls empty',
  sanitizing: 'way in which it sanitises',
  heater: 'heater in the bowl that sanitises',
};

/** Bowls and boards are law; their usual sizes are from memory, and never more than a watch. */
function measureSink(scene: Scene, placed: PlacedThing): Measurement[] {
  const { thing } = placed;
  const name = ownerName(scene, thing.id);
  const about = (
    part: string,
    needs: Field[],
    measure: (basins: Basins) => Omit<Measurement, 'part' | 'subjects' | 'place'>,
  ): Measurement => {
    const common = { part, subjects: [thing.id], place: thingsPlace(placed) };
    const missing = needs.find((field) => (thing.basins?.[field] ?? null) === null);
    if (missing === undefined && thing.basins !== null) return { ...common, ...measure(thing.basins) };
    const path = thingPath(placed, 'basins', ...(thing.basins === null ? [] : [missing ?? 'count']));
    const what = thing.basins === null ? 'bowls and boards' : WORDS[missing ?? 'count'];
    const input = thing.basins === null ? `${what} of the sink` : what;
    return { value: null, limit: null, ask: { input, path }, say: () => `Say the ${what} of ${name}.`, ...common };
  };
  return [
    about('bowls', ['count'], (basins) => countOf(`${name} has`, basins.count ?? 0, 'bowl', boundOf(SINK_BOWLS))),
    about('boards', ['leftBoard', 'rightBoard'], ({ leftBoard, rightBoard }) =>
      countOf(`${name} has`, [leftBoard, rightBoard].filter((board) => (board ?? 0) > 0).length, 'drainboard', boundOf(SINK_BOARDS)),
    ),
    about('bowl-size', ['length', 'width'], (basins) =>
      sizeOf(`the bowls of ${name} are`, Math.min(basins.length ?? 0, basins.width ?? 0), lengthOf(BOWL_SIZE), 'wide'),
    ),
    about('bowl-depth', ['depth'], (basins) => sizeOf(`the bowls of ${name} are`, basins.depth ?? 0, lengthOf(BOWL_DEPTH), 'deep')),
    ...(hasBoard(thing.basins)
      ? [
          about('board-length', ['leftBoard', 'rightBoard'], (basins) =>
            sizeOf(`the shorter drainboard of ${name} is`, shorterBoard(basins), lengthOf(BOARD_LENGTH), 'long'),
          ),
        ]
      : []),
  ];
}

const shorterBoard = ({ leftBoard, rightBoard }: Basins) => Math.min(...[leftBoard ?? 0, rightBoard ?? 0].filter((board) => board > 0));

const hasBoard = (basins: Thing['basins']) =>
  basins !== null && basins.leftBoard !== null && basins.rightBoard !== null && basins.leftBoard + basins.rightBoard > 0;

const countOf = (start: string, value: number, one: string, limit: number): Omit<Measurement, 'part' | 'subjects' | 'place'> => ({
  value,
  limit,
  say: () =>
    sentence(
      value >= limit
        ? `${start} ${count(value, one)}; ${limit} are needed.`
        : `${start} ${count(value, one)}; ${limit} are needed. Take one that has them.`,
    ),
});

const sizeOf = (start: string, value: number, limit: number, way: string): Omit<Measurement, 'part' | 'subjects' | 'place'> => ({
  value,
  limit,
  unit: 'mm',
  severity: 'watch',
  source: USUAL,
  say: (f) =>
    sentence(
      value >= limit - 1e-6
        ? `${start} ${f.length(value)} ${way}; ${f.length(limit)} is usual.`
        : `${start} ${f.length(value)} ${way}; ${f.length(limit)} is usual. See that the largest item finds room.`,
    ),
});
