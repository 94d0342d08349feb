import { pathOf, type Settings, type ThingKind } from '../../../plan';
import {
  type Check,
  createMessages,
  type Measurement,
  type Message,
  machinePlace,
  type Name,
  nameMachine,
  nameTable,
  nameThing,
  type Place,
  printedLength,
  tablePlace,
  thingsPlace,
} from '../../../rules';
import { machinePath, type Scene, thingPath } from '../../../scene';
import { floorLegs } from '../../room';

export const check: Check = {
  id: 'cleanable-below',
  order: 890,
  title: 'The floor below can be cleaned',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section:
      '4-402.12, as 7 Pa. Code 46.652(c): legs of 6 in, 4 in where no floor is more than 6 in from the access; or sealed to the floor',
    confidence: 'read',
  },
  why: 'Soil and water gather below what stands on the floor and can’t be moved. The height lets a brush and an eye under it. Feet that adjust by 1 in take up an uneven floor, and what has pipes or wires has flanged feet that are anchored (UFGS 11400A, 2.3.5): it must not walk or tip when it is cleaned.',
  measure: (scene) => listStanding(scene).flatMap((item) => measureItem(item, scene.plan.settings.units)),
};

/** What is said of what stands on the floor. Heights in mm. */
export interface CleanableBelowMessages {
  'cleanable-below/unknown': { item: Name };
  'cleanable-below/ask-free-height': { item: Name };
  'cleanable-below/on-floor': { item: Name };
  'cleanable-below/enough': { item: Name; free: number; least: number };
  'cleanable-below/too-little': { item: Name; free: number; missing: number };
}

const say = createMessages<CleanableBelowMessages>();

interface Standing {
  id: string;
  name: Name;
  place: Place;
  /** The shorter side: what is cleaned from one side, at its farthest. */
  depth: number;
  below: number | null;
  path: (string | number)[];
}

/** Things that stand fast on the floor. What holds clean ware has a stricter check of its own; carts and bins are rolled away. */
const FIXED: ReadonlySet<ThingKind> = new Set<ThingKind>(['three-compartment-sink', 'shelving', 'work-table']);

function listStanding(scene: Scene): Standing[] {
  const { plan } = scene;
  return [
    ...scene.machines.map((placed) => ({
      id: placed.machine.id,
      name: nameMachine(scene, placed),
      place: machinePlace(placed),
      depth: Math.min(placed.sheet.width, placed.sheet.depth),
      below: placed.machine.hookUp.clearBelow,
      path: machinePath(placed, 'hookUp', 'clearBelow'),
    })),
    ...scene.tables.map((placed) => ({
      id: placed.table.id,
      name: nameTable(scene, placed),
      place: tablePlace(placed),
      depth: placed.table.depth,
      below: placed.table.make.clearBelow,
      path: pathOf(plan, 'tables', placed.table.id, 'make', 'clearBelow'),
    })),
    ...scene.things
      .filter(({ thing }) => FIXED.has(thing.kind) && thing.ware !== 'clean')
      .map((placed) => ({
        id: placed.thing.id,
        name: nameThing(scene, placed),
        place: thingsPlace(placed),
        depth: Math.min(placed.thing.width, placed.thing.depth),
        below: placed.thing.clearBelow,
        path: thingPath(placed, 'clearBelow'),
      })),
  ];
}

/** What stands on the floor itself must be sealed to it, which no field of the plan says: a watch. */
function measureItem({ id, name, place, depth, below, path }: Standing, units: Settings['units']): Measurement[] {
  const least = floorLegs({ farthestM: Math.min(5, depth / 1000) });
  if (!least.ok) return [];
  // Beside 6 and 4 in the code prints 15 and 10 cm.
  const leastMm = least.value * 1000;
  const limit = printedLength(leastMm, Math.floor(leastMm / 10) * 10, units);
  return [
    {
      subjects: [id],
      place,
      value: below,
      limit,
      ...(below === 0 ? { severity: 'watch' as const } : {}),
      ...(below === null ? { ask: { input: say('cleanable-below/ask-free-height', { item: name }), path } } : {}),
      message: sayFree(name, below, limit),
    },
  ];
}

function sayFree(item: Name, free: number | null, least: number): Message {
  if (free === null) return say('cleanable-below/unknown', { item });
  if (free === 0) return say('cleanable-below/on-floor', { item });
  return free >= least - 1e-6
    ? say('cleanable-below/enough', { item, free, least })
    : say('cleanable-below/too-little', { item, free, missing: least - free });
}
