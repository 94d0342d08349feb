import type { Thing } from '../../../plan';
import {
  boundOf,
  type Check,
  createMessages,
  lengthOf,
  type Measurement,
  type Name,
  type NoParams,
  nameThing,
  type Source,
  thingsPlace,
} from '../../../rules';
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
type Field = Exclude<keyof Basins, 'waste' | 'sanitizing' | 'heater'>;
type Found = Omit<Measurement, 'part' | 'subjects' | 'place'>;

/** What is said of a sink. Lengths in mm. */
export interface ThreeCompartmentsMessages {
  'three-compartments/bowls-unknown': { sink: Name };
  'three-compartments/ask-bowls': NoParams;
  'three-compartments/field-unknown': { sink: Name; field: Field };
  'three-compartments/ask-field': { field: Field };
  'three-compartments/enough': Counted;
  'three-compartments/too-few': Counted;
  'three-compartments/large-enough': Sized;
  'three-compartments/too-small': Sized;
}

interface Counted {
  sink: Name;
  of: 'bowl' | 'drainboard';
  has: number;
  needed: number;
}

interface Sized {
  sink: Name;
  /** What was measured: the shorter side of a bowl, its depth, the length of the shorter drainboard. */
  of: 'bowl-size' | 'bowl-depth' | 'board-length';
  size: number;
  usual: number;
}

const say = createMessages<ThreeCompartmentsMessages>();

/** Bowls and boards are law; their usual sizes are from memory, and never more than a watch. */
function measureSink(scene: Scene, placed: PlacedThing): Measurement[] {
  const { thing } = placed;
  const sink = nameThing(scene, placed);
  const about = (part: string, needs: Field[], measure: (basins: Basins) => Found): Measurement => ({
    part,
    subjects: [thing.id],
    place: thingsPlace(placed),
    ...measureKnown(placed, sink, needs, measure),
  });
  return [
    about('bowls', ['count'], (basins) => countOf({ sink, of: 'bowl', has: basins.count ?? 0, needed: boundOf(SINK_BOWLS) })),
    about('boards', ['leftBoard', 'rightBoard'], (basins) =>
      countOf({ sink, of: 'drainboard', has: countBoards(basins), needed: boundOf(SINK_BOARDS) }),
    ),
    about('bowl-size', ['length', 'width'], ({ length, width }) =>
      sizeOf({ sink, of: 'bowl-size', size: Math.min(length ?? 0, width ?? 0), usual: lengthOf(BOWL_SIZE) }),
    ),
    about('bowl-depth', ['depth'], ({ depth }) => sizeOf({ sink, of: 'bowl-depth', size: depth ?? 0, usual: lengthOf(BOWL_DEPTH) })),
    ...(hasBoard(thing.basins)
      ? [
          about('board-length', ['leftBoard', 'rightBoard'], (basins) =>
            sizeOf({ sink, of: 'board-length', size: shorterBoard(basins), usual: lengthOf(BOARD_LENGTH) }),
          ),
        ]
      : []),
  ];
}

/** Measures where all that it needs is known; asks for the first of it that is not. */
function measureKnown(placed: PlacedThing, sink: Name, needs: readonly Field[], measure: (basins: Basins) => Found): Found {
  const { basins } = placed.thing;
  const open = { value: null, limit: null };
  if (basins === null) {
    const ask = { input: say('three-compartments/ask-bowls'), path: thingPath(placed, 'basins') };
    return { ...open, ask, message: say('three-compartments/bowls-unknown', { sink }) };
  }
  const field = needs.find((need) => basins[need] === null);
  if (field === undefined) return measure(basins);
  const ask = { input: say('three-compartments/ask-field', { field }), path: thingPath(placed, 'basins', field) };
  return { ...open, ask, message: say('three-compartments/field-unknown', { sink, field }) };
}

const countBoards = ({ leftBoard, rightBoard }: Basins) => [leftBoard, rightBoard].filter((board) => (board ?? 0) > 0).length;

const shorterBoard = ({ leftBoard, rightBoard }: Basins) => Math.min(...[leftBoard ?? 0, rightBoard ?? 0].filter((board) => board > 0));

const hasBoard = (basins: Thing['basins']) =>
  basins !== null && basins.leftBoard !== null && basins.rightBoard !== null && basins.leftBoard + basins.rightBoard > 0;

const countOf = (counted: Counted): Found => ({
  value: counted.has,
  limit: counted.needed,
  message: say(counted.has >= counted.needed ? 'three-compartments/enough' : 'three-compartments/too-few', counted),
});

const sizeOf = (sized: Sized): Found => ({
  value: sized.size,
  limit: sized.usual,
  unit: 'mm',
  severity: 'watch',
  source: USUAL,
  message: say(sized.size >= sized.usual - 1e-6 ? 'three-compartments/large-enough' : 'three-compartments/too-small', sized),
});
