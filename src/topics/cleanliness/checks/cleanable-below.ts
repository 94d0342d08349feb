import { pathOf, type Settings, type ThingKind } from '../../../plan';
import {
  type Check,
  type Measurement,
  machineName,
  machinePlace,
  ownerName,
  type Place,
  printedLength,
  sentence,
  tableName,
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

interface Standing {
  id: string;
  name: string;
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
      name: machineName(scene, placed),
      place: machinePlace(placed),
      depth: Math.min(placed.sheet.width, placed.sheet.depth),
      below: placed.machine.hookUp.clearBelow,
      path: machinePath(placed, 'hookUp', 'clearBelow'),
    })),
    ...scene.tables.map((placed) => ({
      id: placed.table.id,
      name: tableName(scene, placed),
      place: tablePlace(placed),
      depth: placed.table.depth,
      below: placed.table.make.clearBelow,
      path: pathOf(plan, 'tables', placed.table.id, 'make', 'clearBelow'),
    })),
    ...scene.things
      .filter(({ thing }) => FIXED.has(thing.kind) && thing.ware !== 'clean')
      .map((placed) => ({
        id: placed.thing.id,
        name: ownerName(scene, placed.thing.id),
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
      ...(below === null ? { ask: { input: `free height under ${name}`, path } } : {}),
      say: (f) => {
        if (below === null) return `Say how much is free under ${name}.`;
        if (below === 0) return sentence(`${name} stands on the floor: it must be sealed to it all around.`);
        const has = `under ${name} ${f.length(below)} is free`;
        return sentence(
          below >= limit - 1e-6
            ? `${has}; ${f.length(limit)} is needed to clean there.`
            : `${has}, ${f.length(limit - below)} too little to clean there. Give it longer legs, or seal it to the floor.`,
        );
      },
    },
  ];
}
