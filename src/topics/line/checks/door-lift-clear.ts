import { boundsOf, penetration } from '../../../geometry';
import { pathOf } from '../../../plan';
import { areaPlace, bodyName, type Check, hoodName, type Measurement, machineName, sentence } from '../../../rules';
import { type PlacedHood, type PlacedMachine, type Scene, type Solid, solidsIn } from '../../../scene';
import type { Formatter } from '../../../units';
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

/** What hangs lowest over a machine. */
interface Above {
  height: number;
  name: string;
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
    say: (f) => sentence(describe(machineName(scene, machine), lowest.name, value, machine, f)),
    repairs: () => (offender === null ? [] : raiseShelf(scene, offender, doorLiftHeight + clearances.above)),
    ...common,
  };
}

function findLowest(scene: Scene, machine: PlacedMachine): Above | null {
  const { ceilingHeight } = scene.room;
  const ceiling: Above[] = ceilingHeight === null ? [] : [{ height: ceilingHeight, name: 'the ceiling', solid: null, isHollow: false }];
  const bodies = solidsIn(scene, boundsOf(machine.footprint))
    .filter((solid) => isOther(scene, machine, solid))
    .flatMap((solid) => undersideOver(scene, machine, solid));
  // What stands in the machine's own body is said elsewhere.
  const above = bodies.filter(({ height }) => height >= machine.sheet.height - DRAWING_TOLERANCE);
  return [...ceiling, ...above].reduce<Above | null>((low, next) => (low === null || next.height < low.height ? next : low), null);
}

/** A run leaves its machine through the collar, beside the doors. */
const isOther = (scene: Scene, { machine, sheet }: PlacedMachine, solid: Solid) =>
  solid.owner !== machine.id && solid.zTo > sheet.height && isBody(solid) && !isAtCollar(scene, solid, machine.id);

/** A hood is hollow: doors rise into it as far as its top, unless its edge crosses their way. */
function undersideOver(scene: Scene, { footprint }: PlacedMachine, solid: Solid): Above[] {
  if (!solid.pieces.some((piece) => isOver(penetration(piece, footprint)))) return [];
  const isHollow = solid.kind === 'hood' && solid.pieces.some((piece) => isUnder(piece, footprint));
  const name = bodyName(scene, solid);
  return [{ height: isHollow ? solid.zTo : solid.zFrom, name: isHollow ? `the top of ${name}` : name, solid, isHollow }];
}

/** A height that decides and is not known. What is known to be too low needs no more. */
function findUnknown(scene: Scene, machine: PlacedMachine, lowest: Above | null): Pick<Measurement, 'ask' | 'say'> | null {
  if (lowest !== null && lowest.height < machine.sheet.doorLiftHeight - 1e-6) return null;
  const hood = findHoodsOver(scene, machine).find((over) => over.hood.hood.lipHeight === null)?.hood;
  if (hood !== undefined) return askLip(scene, hood);
  return scene.room.ceilingHeight === null && lowest?.isHollow !== true ? askCeiling() : null;
}

function askLip(scene: Scene, hood: PlacedHood): Pick<Measurement, 'ask' | 'say'> {
  const name = hoodName(scene, hood);
  return {
    ask: { input: `lip height of ${name}`, path: pathOf(scene.plan, 'hoods', hood.hood.id, 'lipHeight') },
    say: () => sentence(`how far the doors can rise under ${name} is not known. Give the height of its lip.`),
  };
}

const askCeiling = (): Pick<Measurement, 'ask' | 'say'> => ({
  ask: { input: 'ceiling height', path: ['room', 'ceilingHeight'] },
  say: () => 'The height of the ceiling is not known. Measure it over the machine.',
});

function describe(machine: string, above: string, value: number, { sheet }: PlacedMachine, f: Formatter): string {
  const doors = `the open doors of ${machine} rise to ${f.length(sheet.doorLiftHeight)}`;
  const wanted = sheet.clearances.above;
  if (value < -1e-6) return `${doors}; ${above} is ${f.length(-value)} lower. Raise it, or take it away from over the machine.`;
  const room = `${f.length(value)} is left under ${above}`;
  return value < wanted - 1e-6 ? `${doors}; ${room}, ${f.length(wanted)} is wanted.` : `${doors}; ${room}.`;
}
