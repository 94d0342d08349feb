import { containsPoint, type Point, type Polygon } from '../../../../geometry';
import { pathOf } from '../../../../plan';
import { createMessages, type Measurement, type Message, type Name, pointPlace } from '../../../../rules';
import { type PlacedRoom, type Scene, thingPath, thingsOver } from '../../../../scene';
import { floorLegs } from '../../../room';

type Receptor = PlacedRoom['floorDrains'][number];

/** What is said of a floor drain and what stands over it; lengths in mm. */
export interface ReceptorReachMessages {
  'receptor-reach/ask-clear-below': { cover: Name };
  'receptor-reach/not-known': { cover: Name };
  'receptor-reach/in-reach': { owner: Name };
  'receptor-reach/covered': { owner: Name; cover: Name; least: number };
  'receptor-reach/under-machine': { owner: Name; least: number };
}

const message = createMessages<ReceptorReachMessages>();

/** What empties into a receptor. */
interface Owner {
  id: string;
  name: Name;
}

/** Something that stands over a receptor. */
interface Cover {
  id: string;
  name: Name;
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
    const ask = { input: message('receptor-reach/ask-clear-below', { cover: open.name }), path: open.path };
    return { subjects, value: null, ask, message: message('receptor-reach/not-known', { cover: open.name }), ...about };
  }
  return {
    subjects,
    value: low === undefined,
    severity: low?.severity ?? 'stop',
    message: messageOf(owner.name, low),
    ...about,
  };
}

function messageOf(owner: Name, low: Cover | undefined): Message {
  if (low === undefined) return message('receptor-reach/in-reach', { owner });
  // Which of the machines it is does not matter.
  if (low.name.kind === 'machine') return message('receptor-reach/under-machine', { owner, least: CLEANED });
  return message('receptor-reach/covered', { owner, cover: low.name, least: CLEANED });
}

function coversOf(scene: Scene, centre: Point): Cover[] {
  const { machines, tables, room, plan } = scene;
  const isOver = (...polygons: readonly Polygon[]) => polygons.some((polygon) => containsPoint(polygon, centre));
  const whole = (id: string, name: Name, severity: Cover['severity']): Cover => ({ id, name, clearBelow: 0, path: [], severity });
  return [
    ...room.columns.filter(({ polygon }) => isOver(polygon)).map(({ column }) => whole(column.id, { kind: 'column' }, 'stop')),
    // On legs or not, a machine that stands over a drain hides it.
    ...machines
      .filter(({ footprint }) => isOver(footprint))
      .map(({ machine }) => whole(machine.id, { kind: 'machine', mark: null }, 'watch')),
    ...thingsOver(scene, centre)
      .filter(({ thing: { kind } }) => kind !== 'cart' && kind !== 'bin')
      .map((placed): Cover => {
        const { id, clearBelow } = placed.thing;
        const name: Name = { kind: 'thing', name: placed.name, isOwn: false, mark: null };
        return { id, name, clearBelow, path: thingPath(placed, 'clearBelow'), severity: 'stop' };
      }),
    ...tables
      .filter(({ deck }) => isOver(...deck))
      .map(({ table: { id, role, make } }): Cover => {
        return {
          id,
          name: { kind: 'table', role, mark: null },
          clearBelow: make.clearBelow,
          path: pathOf(plan, 'tables', id, 'make', 'clearBelow'),
          severity: 'stop',
        };
      }),
  ];
}
