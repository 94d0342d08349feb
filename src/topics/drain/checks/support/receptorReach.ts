import { containsPoint, type Point, type Polygon } from '../../../../geometry';
import { pathOf } from '../../../../plan';
import { type Measurement, pointPlace } from '../../../../rules';
import { type PlacedRoom, type Scene, thingPath, thingsOver } from '../../../../scene';
import { floorLegs } from '../../../room';

type Receptor = PlacedRoom['floorDrains'][number];

/** What empties into a receptor. */
interface Owner {
  id: string;
  /** What it is, in a sentence. */
  name: () => string;
}

/** Something that stands over a receptor. */
interface Cover {
  id: string;
  /** What it is, in a sentence. */
  name: string;
  /** Free height under it; null while it is not known; 0 where nothing gets under. */
  clearBelow: number | null;
  path: (string | number)[];
  severity: 'stop' | 'watch';
}

/** Least height in millimetres under which a floor is cleaned: that of equipment on legs, FDA Food Code 4-402.12. */
const CLEANED = ((outcome) => (outcome.ok ? outcome.value * 1000 : Number.NaN))(floorLegs({ farthestM: 1 }));

/** Whether a hand and a brush get to the floor drain, from what stands over its middle. Carts and bins roll away. */
export function measureReach(scene: Scene, owner: Owner, { drain, centre }: Receptor): Measurement {
  const covers = coversOf(scene, centre);
  const low = covers.find(({ clearBelow }) => clearBelow !== null && clearBelow < CLEANED - 1e-6);
  const open = low === undefined ? covers.find(({ clearBelow }) => clearBelow === null) : undefined;
  const about = { part: 'reach', place: pointPlace(centre), unit: 'yes-no', relation: 'equals', limit: true } as const;
  const subjects = [owner.id, drain.id, ...((low ?? open) ? [(low ?? open)?.id ?? ''] : [])];
  if (open !== undefined) {
    const ask = { input: `free height under ${open.name}`, path: open.path };
    return { subjects, value: null, ask, say: () => `The floor drain lies under ${open.name}: say the free height below it.`, ...about };
  }
  return {
    subjects,
    value: low === undefined,
    severity: low?.severity ?? 'stop',
    say: (f) =>
      low === undefined
        ? `The floor drain of ${owner.name()} can be reached and cleaned.`
        : `The floor drain of ${owner.name()} lies under ${low.name}, where nobody can empty its strainer; it needs ${f.length(CLEANED)} free above it. Move one of the two.`,
    ...about,
  };
}

function coversOf(scene: Scene, centre: Point): Cover[] {
  const { machines, tables, room, plan } = scene;
  const isOver = (...polygons: readonly Polygon[]) => polygons.some((polygon) => containsPoint(polygon, centre));
  const whole = (id: string, name: string, severity: Cover['severity']): Cover => ({ id, name, clearBelow: 0, path: [], severity });
  return [
    ...room.columns.filter(({ polygon }) => isOver(polygon)).map(({ column }) => whole(column.id, 'a column', 'stop')),
    // On legs or not, a machine that stands over a drain hides it.
    ...machines.filter(({ footprint }) => isOver(footprint)).map(({ machine }) => whole(machine.id, 'a machine', 'watch')),
    ...thingsOver(scene, centre)
      .filter(({ thing: { kind } }) => kind !== 'cart' && kind !== 'bin')
      .map((placed): Cover => {
        const { id, clearBelow } = placed.thing;
        const name = `the ${placed.name.toLowerCase()}`;
        return { id, name, clearBelow, path: thingPath(placed, 'clearBelow'), severity: 'stop' };
      }),
    ...tables
      .filter(({ deck }) => isOver(...deck))
      .map(({ table: { id, role, make } }): Cover => {
        return {
          id,
          name: `the ${role} table`,
          clearBelow: make.clearBelow,
          path: pathOf(plan, 'tables', id, 'make', 'clearBelow'),
          severity: 'stop',
        };
      }),
  ];
}
