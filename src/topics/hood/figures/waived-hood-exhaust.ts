import { needsHood } from '../../../catalog';
import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import { dataSheetPath, isUnderHood, type PlacedMachine, type Scene } from '../../../scene';
import { exhaustByFloor, exhaustByFloorRecord, waivedHoodExhaust, waivedHoodExhaustRecord } from '../formulas/waivedHood';

export const rule: FigureRule = {
  id: 'waived-hood-exhaust',
  order: 460,
  title: 'Exhaust of the room for machines without a hood',
  group: 'air',
  unit: 'm3/s',
  derive,
};

export interface WaivedHoodExhaustMessages {
  'waived-hood-exhaust/ask-listing': NoParams;
  /** Whether the plan says that the room is designed for it. */
  'waived-hood-exhaust/room-takes-it': NoParams;
  'waived-hood-exhaust/only-where-designed': NoParams;
  'waived-hood-exhaust/quick-method': NoParams;
}

const say = createMessages<WaivedHoodExhaustMessages>();

/** A machine with its own vent has a separate removal system and does not count, nor one that is listed as condensing. */
function derive(scene: Scene): FigureReading[] {
  if (scene.plan.air.hoodWaived === false) return [];
  const bare = scene.machines.filter((machine) => needsHood(machine.sheet) !== false && !isCovered(scene, machine));
  if (bare.length === 0) return [];
  const subjects = bare.map(({ machine }) => machine.id);
  const floorM2 = scene.room.areaMm2 / 1e6;
  return [
    deriveCode(scene, bare, floorM2),
    {
      part: 'quick-method',
      subjects,
      ...compute(exhaustByFloorRecord, exhaustByFloor, { floorM2 }),
      notes: [say('waived-hood-exhaust/quick-method')],
    },
  ];
}

function deriveCode(scene: Scene, bare: readonly PlacedMachine[], floorM2: number): FigureReading {
  const subjects = bare.map(({ machine }) => machine.id);
  const open = bare.find(({ sheet }) => needsHood(sheet) === null);
  if (open !== undefined) {
    return askFor(subjects, say('waived-hood-exhaust/ask-listing'), dataSheetPath(scene, open, 'vent', 'listedCondensing'));
  }
  const inputs = { floorM2, appliances: bare.length };
  return { subjects, ...compute(waivedHoodExhaustRecord, waivedHoodExhaust, inputs), notes: [noteFor(scene)] };
}

const isCovered = (scene: Scene, { machine }: PlacedMachine) => isUnderHood(scene, machine.id);

const noteFor = ({ plan }: Scene) =>
  plan.air.hoodWaived === true ? say('waived-hood-exhaust/room-takes-it') : say('waived-hood-exhaust/only-where-designed');
