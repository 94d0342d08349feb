import type { ThingKind } from '../../../plan';
import {
  type Check,
  createMessages,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  nameThing,
  printedLength,
  thingsPlace,
} from '../../../rules';
import { type PlacedThing, type Scene, thingPath } from '../../../scene';
import { CLEAN_WARE_HEIGHT } from '../formulas/cleanWare';

const HEIGHT = lengthOf(CLEAN_WARE_HEIGHT);
/** Beside the 6 in the food code prints 15 cm. */
const PRINTED = 150;

export const check: Check = {
  id: 'clean-off-floor',
  order: 910,
  title: 'Clean ware is kept off the floor',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Sonoma County CA, floor plan guidelines',
    section: 'lowest shelf 6 in above the floor; the Food Code’s 4-903.11(A)(3), from memory, says the same',
    confidence: 'read',
  },
  why: 'What stands lower is splashed when the floor is washed. Nor does clean ware stand under a waste line without a shield, under open stairs, or in a locker, toilet or machine room (Food Code 4-903.12, as WAC 246-215-04925).',
  measure: (scene) =>
    scene.things.filter(({ thing }) => thing.ware === 'clean' && HOLDERS.has(thing.kind)).map((item) => measureShelf(scene, item)),
};

/** What is said of what holds clean ware. Heights in mm. */
export interface CleanOffFloorMessages {
  'clean-off-floor/unknown': { holder: Name };
  'clean-off-floor/ask-lowest-shelf': { holder: Name };
  'clean-off-floor/high-enough': { holder: Name; height: number; least: number };
  'clean-off-floor/too-low': { holder: Name; height: number; missing: number };
}

const say = createMessages<CleanOffFloorMessages>();

const HOLDERS: ReadonlySet<ThingKind> = new Set<ThingKind>(['shelving', 'cart', 'work-table']);

function measureShelf(scene: Scene, placed: PlacedThing): Measurement {
  const { thing } = placed;
  const holder = nameThing(scene, placed);
  const below = thing.clearBelow;
  const limit = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  return {
    subjects: [thing.id],
    place: thingsPlace(placed),
    value: below,
    limit,
    ...(below === null
      ? { ask: { input: say('clean-off-floor/ask-lowest-shelf', { holder }), path: thingPath(placed, 'clearBelow') } }
      : {}),
    message: sayShelf(holder, below, limit),
  };
}

function sayShelf(holder: Name, height: number | null, least: number): Message {
  if (height === null) return say('clean-off-floor/unknown', { holder });
  return height >= least - 1e-6
    ? say('clean-off-floor/high-enough', { holder, height, least })
    : say('clean-off-floor/too-low', { holder, height, missing: least - height });
}
