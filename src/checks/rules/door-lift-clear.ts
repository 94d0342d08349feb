import { penetration } from '../../geometry';
import type { PlacedMachine, Scene, Solid } from '../../scene';
import type { Formatter } from '../../units';
import { hoodName } from '../support/airNames';
import { DRAWING_TOLERANCE, isBody, isUnder } from '../support/bodies';
import { bodyName } from '../support/bodyNames';
import { machineName } from '../support/names';
import { pathOf } from '../support/paths';
import { areaPlace } from '../support/places';
import { raiseShelf } from '../support/raiseShelf';
import { sentence } from '../support/words';
import type { Check, Measurement } from '../types';

export const check: Check = {
  id: 'door-lift-clear',
  title: 'The doors can rise',
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
  solid: Solid | null;
}

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement {
  const { doorLiftHeight, clearances } = machine.sheet;
  const lowest = findLowest(scene, machine);
  const common = { subjects: [machine.machine.id], place: areaPlace(machine.footprint), limit: 0, watchLimit: clearances.above };
  const unknown = lowest !== null && lowest.height < doorLiftHeight ? null : findUnknown(scene, machine);
  if (lowest === null || unknown !== null) return { ...common, value: null, ...(unknown ?? askCeiling()) };
  const value = lowest.height - doorLiftHeight;
  const isShort = value < clearances.above - 1e-6;
  return {
    ...common,
    subjects: [machine.machine.id, ...(isShort && lowest.solid !== null ? [lowest.solid.owner] : [])],
    value,
    say: (f) => sentence(describe(machineName(scene, machine), lowest.name, value, machine, f)),
    repairs: isShort && lowest.solid !== null ? raiseShelf(scene, lowest.solid, doorLiftHeight + clearances.above) : [],
  };
}

function findLowest(scene: Scene, machine: PlacedMachine): Above | null {
  const { ceilingHeight } = scene.room;
  const ceiling: Above[] = ceilingHeight === null ? [] : [{ height: ceilingHeight, name: 'the ceiling', solid: null }];
  const bodies = scene.solids.filter((solid) => isAbove(scene, machine, solid)).flatMap((solid) => undersideOver(scene, machine, solid));
  return [...ceiling, ...bodies].reduce<Above | null>((low, above) => (low === null || above.height < low.height ? above : low), null);
}

/**
 * Bodies that hang above the machine's own. What stands in that body is said elsewhere, and a run
 * begins at its own machine's collar, beside the doors.
 */
function isAbove(scene: Scene, { machine, sheet, collar }: PlacedMachine, solid: Solid): boolean {
  if (!isBody(solid) || solid.owner === machine.id || solid.zFrom < sheet.height - DRAWING_TOLERANCE) return false;
  const isOwnRun = solid.kind === 'run' && scene.runs.some(({ run }) => run.id === solid.owner && run.machine === machine.id);
  return !isOwnRun || collar === null || solid.zFrom > collar.z + DRAWING_TOLERANCE;
}

/** A hood is hollow: doors rise into it as far as its top, unless its edge crosses their way. */
function undersideOver(scene: Scene, { footprint }: PlacedMachine, solid: Solid): Above[] {
  const over = solid.pieces.filter((piece) => penetration(piece, footprint).depth > DRAWING_TOLERANCE);
  if (over.length === 0) return [];
  const isHollow = solid.kind === 'hood' && over.some((piece) => isUnder(piece, footprint));
  const name = bodyName(scene, solid);
  return [{ height: isHollow ? solid.zTo : solid.zFrom, name: isHollow ? `the top of ${name}` : name, solid }];
}

/** A height that decides and is not known: a hood's lip before the ceiling. */
function findUnknown(scene: Scene, machine: PlacedMachine): Pick<Measurement, 'ask' | 'say'> | null {
  const hood = scene.hoods.find(
    ({ hood: { lipHeight }, covers }) => lipHeight === null && covers.some((cover) => cover.machine === machine.machine.id),
  );
  if (hood !== undefined) {
    const name = hoodName(scene, hood);
    const path = pathOf(scene.plan, 'hoods', hood.hood.id, 'lipHeight');
    const say = () => sentence(`how far the doors can rise under ${name} is not known. Give the height of its lip.`);
    return { ask: { input: `lip height of ${name}`, path }, say };
  }
  return scene.room.ceilingHeight === null ? askCeiling() : null;
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
