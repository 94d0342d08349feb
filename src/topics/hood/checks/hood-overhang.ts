import { needsHood, SIDES, type Side } from '../../../catalog';
import {
  type Check,
  createMessages,
  editHood,
  type Measurement,
  type Message,
  type Name,
  nameHood,
  nameMachine,
  type Repair,
  segmentPlace,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { findHoodsOver, fitHood, type HoodOver, isSquareTo, leastOverhang, OVERHANG, type Overhang } from './support/hoods';

export const check: Check = {
  id: 'hood-overhang',
  order: 210,
  title: 'The hood overhangs the machine',
  group: 'air',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'International Mechanical Code',
    section: '507.1.6 (507.4.1 in 2015–2021), canopy size: 6 in beyond the appliance on all open sides',
    confidence: 'secondary',
  },
  why: 'Vapour rolls out at the edges as the doors rise. A hood no larger than the machine misses it. A side with a table is open too; only a wall closes a side. Its inner seams are tight and smooth, so that what condenses in it drips on nothing.',
  measure: (scene) => scene.machines.filter(({ sheet }) => needsHood(sheet) === true).flatMap((machine) => measureMachine(scene, machine)),
};

/** What is said of how far a hood stands out. `by`: how far its edge is to be brought out. */
export interface HoodOverhangMessages {
  'hood-overhang/enough': Beyond & { overhang: number; least: number };
  'hood-overhang/too-little': Beyond & { overhang: number; by: number };
  'hood-overhang/ends-short': Beyond & { short: number; by: number };
  'hood-overhang/repair-fit-hood': { width: number; depth: number };
}

interface Beyond {
  hood: Name;
  machine: Name;
  side: Side;
}

const say = createMessages<HoodOverhangMessages>();

/** Of several hoods over one machine the best is measured. */
function measureMachine(scene: Scene, machine: PlacedMachine): Measurement[] {
  const over = findHoodsOver(scene, machine)[0];
  if (over === undefined) return [];
  const open = SIDES.filter((side) => !machine.sides[side].isAgainstWall);
  return open.map((side) => measureSide(scene, machine, over, side));
}

function measureSide(scene: Scene, machine: PlacedMachine, over: HoodOver, side: Side): Measurement {
  const value = over.overhang[side];
  const isShort = value < OVERHANG - 1e-6;
  return {
    part: side,
    subjects: [over.hood.hood.id, machine.machine.id],
    place: segmentPlace(machine.sides[side].edge),
    value,
    limit: OVERHANG,
    message: describe({ hood: nameHood(scene, over.hood), machine: nameMachine(scene, machine), side }, value),
    ...(isShort ? { repairs: { ids: ['fit-hood'], find: () => [fitOver(machine, over)] } } : {}),
  };
}

function describe(beyond: Beyond, overhang: number): Message {
  if (overhang >= OVERHANG - 1e-6) return say('hood-overhang/enough', { ...beyond, overhang, least: OVERHANG });
  const by = OVERHANG - overhang;
  return overhang < 0
    ? say('hood-overhang/ends-short', { ...beyond, short: -overhang, by })
    : say('hood-overhang/too-little', { ...beyond, overhang, by });
}

/** Brings out the edges that fall short; those that hold stay, where the hood is square to the machine. */
function fitOver(machine: PlacedMachine, { hood: placed, overhang }: HoodOver): Repair {
  const fitted = fitHood(machine, isSquareTo(machine, placed) ? widen(machine, overhang) : leastOverhang(machine));
  return {
    id: 'fit-hood',
    label: say('hood-overhang/repair-fit-hood', { width: fitted.width, depth: fitted.depth }),
    edit: (draft) => editHood(draft, placed.hood.id, (item) => Object.assign(item, fitted)),
  };
}

/** A closed side keeps its edge unless that falls short of the machine. */
function widen(machine: PlacedMachine, overhang: Overhang): Overhang {
  const least = leastOverhang(machine);
  const of = (side: Side) =>
    machine.sides[side].isAgainstWall && overhang[side] >= 0 ? overhang[side] : Math.max(overhang[side], least[side]);
  return { left: of('left'), right: of('right'), front: of('front'), back: of('back') };
}
