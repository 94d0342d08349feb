import type { ThingKind } from '../../../plan';
import { type Check, lengthOf, type Measurement, ownerName, printedLength, sentence, thingsPlace } from '../../../rules';
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

const HOLDERS: ReadonlySet<ThingKind> = new Set<ThingKind>(['shelving', 'cart', 'work-table']);

function measureShelf(scene: Scene, placed: PlacedThing): Measurement {
  const { thing } = placed;
  const name = ownerName(scene, thing.id);
  const below = thing.clearBelow;
  const limit = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  return {
    subjects: [thing.id],
    place: thingsPlace(placed),
    value: below,
    limit,
    ...(below === null ? { ask: { input: `height of the lowest shelf of ${name}`, path: thingPath(placed, 'clearBelow') } } : {}),
    say: (f) => {
      if (below === null) return `Say how high the lowest shelf of ${name} is.`;
      const stands = `on ${name} clean ware stands ${f.length(below)} above the floor`;
      return sentence(
        below >= limit - 1e-6
          ? `${stands}; ${f.length(limit)} is needed.`
          : `${stands}, ${f.length(limit - below)} too low. Raise the lowest shelf.`,
      );
    },
  };
}
