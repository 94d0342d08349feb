import { boundsOf, penetration } from '../../../geometry';
import { pathOf } from '../../../plan';
import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameBody,
  nameHood,
  nameMachine,
} from '../../../rules';
import { type PlacedHood, type PlacedMachine, type Scene, type Solid, solidsIn } from '../../../scene';
import { findHoodsOver } from '../../hood';
import { DRAWING_TOLERANCE, isAtCollar, isBody, isOver, isUnder, raiseShelf } from '../../room';

export const check: Check = {
  id: 'door-lift-clear',
  order: 160,
  title: 'The doors can rise',
  group: 'room',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'data-sheet', text: 'Height of the open doors, and free height above them.' },
  why: 'The doors of a door-type machine rise above its body. A low ceiling, a shelf or a duct over it keeps them half shut.',
  measure: (scene) => scene.machines.map((machine) => measureMachine(scene, machine)),
};

/** What is said of the open doors, which rise to `rise`, and what hangs lowest above them. */
export interface DoorLiftClearMessages {
  'door-lift-clear/blocked': Doors & { by: number };
  'door-lift-clear/tight': Doors & { room: number; wanted: number };
  'door-lift-clear/clear': Doors & { room: number };
  'door-lift-clear/lip-not-known': { hood: Name };
  'door-lift-clear/ceiling-not-known': NoParams;
  'door-lift-clear/ask-lip': { hood: Name };
  'door-lift-clear/ask-ceiling': NoParams;
}

interface Doors {
  machine: Name;
  rise: number;
  above: Overhead;
}

/** The ceiling, the underside of a body, or the top of a hollow one into which the doors rise. */
export type Overhead = 'ceiling' | { of: Name; isTop: boolean };

const say = createMessages<DoorLiftClearMessages>();

/** What hangs lowest over a machine. */
interface Above {
  height: number;
  /** null for the ceiling. */
  solid: Solid | null;
  /** A hood over the whole machine: the ceiling is higher than its top. */
  isHollow: boolean;
}

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement {
  const { doorLiftHeight, clearances } = machine.sheet;
  const common = { place: areaPlace(machine.footprint), limit: 0, watchLimit: clearances.above };
  const lowest = findLowest(scene, machine);
  const unknown = findUnknown(scene, machine, lowest);
  if (lowest === null || unknown !== null) return { subjects: [machine.machine.id], value: null, ...common, ...(unknown ?? askCeiling()) };
  const value = lowest.height - doorLiftHeight;
  const offender = value < clearances.above - 1e-6 ? lowest.solid : null;
  return {
    subjects: [machine.machine.id, ...(offender === null ? [] : [offender.owner])],
    value,
    message: describe(machine, { machine: nameMachine(scene, machine), rise: doorLiftHeight, above: nameAbove(scene, lowest) }, value),
    ...(offender === null
      ? {}
      : { repairs: { ids: ['raise-shelf'], find: () => raiseShelf(scene, offender, doorLiftHeight + clearances.above) } }),
    ...common,
  };
}

function findLowest(scene: Scene, machine: PlacedMachine): Above | null {
  const { ceilingHeight } = scene.room;
  const ceiling: Above[] = ceilingHeight === null ? [] : [{ height: ceilingHeight, solid: null, isHollow: false }];
  const bodies = solidsIn(scene, boundsOf(machine.footprint))
    .filter((solid) => isOther(scene, machine, solid))
    .flatMap((solid) => undersideOver(machine, solid));
  // What stands in the machine's own body is said elsewhere.
  const above = bodies.filter(({ height }) => height >= machine.sheet.height - DRAWING_TOLERANCE);
  return [...ceiling, ...above].reduce<Above | null>((low, next) => (low === null || next.height < low.height ? next : low), null);
}

/** A run leaves its machine through the collar, beside the doors. */
const isOther = (scene: Scene, { machine, sheet }: PlacedMachine, solid: Solid) =>
  solid.owner !== machine.id && solid.zTo > sheet.height && isBody(solid) && !isAtCollar(scene, solid, machine.id);

/** A hood is hollow: doors rise into it as far as its top, unless its edge crosses their way. */
function undersideOver({ footprint }: PlacedMachine, solid: Solid): Above[] {
  if (!solid.pieces.some((piece) => isOver(penetration(piece, footprint)))) return [];
  const isHollow = solid.kind === 'hood' && solid.pieces.some((piece) => isUnder(piece, footprint));
  return [{ height: isHollow ? solid.zTo : solid.zFrom, solid, isHollow }];
}

const nameAbove = (scene: Scene, { solid, isHollow }: Above): Overhead =>
  solid === null ? 'ceiling' : { of: nameBody(scene, solid), isTop: isHollow };

type Unknown = Pick<Measurement, 'ask' | 'message'>;

/** A height that decides and is not known. What is known to be too low needs no more. */
function findUnknown(scene: Scene, machine: PlacedMachine, lowest: Above | null): Unknown | null {
  if (lowest !== null && lowest.height < machine.sheet.doorLiftHeight - 1e-6) return null;
  const hood = findHoodsOver(scene, machine).find((over) => over.hood.hood.lipHeight === null)?.hood;
  if (hood !== undefined) return askLip(scene, hood);
  return scene.room.ceilingHeight === null && lowest?.isHollow !== true ? askCeiling() : null;
}

function askLip(scene: Scene, hood: PlacedHood): Unknown {
  const name = nameHood(scene, hood);
  return {
    ask: { input: say('door-lift-clear/ask-lip', { hood: name }), path: pathOf(scene.plan, 'hoods', hood.hood.id, 'lipHeight') },
    message: say('door-lift-clear/lip-not-known', { hood: name }),
  };
}

const askCeiling = (): Unknown => ({
  ask: { input: say('door-lift-clear/ask-ceiling'), path: ['room', 'ceilingHeight'] },
  message: say('door-lift-clear/ceiling-not-known'),
});

function describe({ sheet }: PlacedMachine, doors: Doors, room: number): Message {
  const wanted = sheet.clearances.above;
  if (room < -1e-6) return say('door-lift-clear/blocked', { ...doors, by: -room });
  return room < wanted - 1e-6 ? say('door-lift-clear/tight', { ...doors, room, wanted }) : say('door-lift-clear/clear', { ...doors, room });
}
