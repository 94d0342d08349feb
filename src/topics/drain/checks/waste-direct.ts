import { distance } from '../../../geometry';
import type { FloorDrain } from '../../../plan';
import {
  boundOf,
  type Check,
  connectionPlace,
  createMessages,
  judge,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  type Refusal,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { outletOf } from '../figures/support/drains';
import { DIRECT_DRAIN_DISTANCE, judgeDirectDrain } from '../formulas/indirectWaste';

export const check: Check = {
  id: 'waste-direct',
  order: 610,
  title: 'A direct connection is near a floor drain that is trapped and vented',
  group: 'drain',
  unit: 'm',
  relation: 'at-most',
  source: { kind: 'published', document: 'FDA Food Code', section: '5-402.11(C), as South Carolina 61-25 has it', confidence: 'read' },
  why: 'Only where local law allows it may a dish machine be connected directly, and then within 5 ft of a floor drain with a trap and a vent, which shows a backed-up sewer before it reaches the ware. One city had it on a branch of its own with that floor drain in line, just downstream.',
  measure: (scene) =>
    scene.machines.filter(({ machine }) => machine.hookUp.waste === 'direct').flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of a direct connection; lengths in mm. */
export interface WasteDirectMessages {
  'waste-direct/ask-drain': NoParams;
  'waste-direct/no-drain': NoParams;
  'waste-direct/ask-trapped': NoParams;
  'waste-direct/trapped-not-known': NoParams;
  'waste-direct/ask-vented': NoParams;
  'waste-direct/vented-not-known': NoParams;
  'waste-direct/unfit': { machine: Name; refusal: Refusal | null };
  'waste-direct/near': { machine: Name; way: number; most: number };
  'waste-direct/too-far': { machine: Name; way: number; most: number };
}

const message = createMessages<WasteDirectMessages>();

/** A floor drain, and how far it is from the outlet. */
interface Near {
  drain: FloorDrain;
  index: number;
  distanceM: number;
}

const MOST = boundOf(DIRECT_DRAIN_DISTANCE);
const isWithin = ({ distanceM }: Near) => judge(DIRECT_DRAIN_DISTANCE, distanceM) === 'pass';

/** To the nearest drain that is trapped and vented. One that is near and of which it is not known is asked for. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const outlet = outletOf(placed);
  if (outlet === undefined) return [];
  const common = { place: connectionPlace(placed, 'drain'), limit: MOST, subjects: [placed.machine.id] };
  const drains: Near[] = scene.room.floorDrains
    .map(({ drain, centre }, index) => ({ drain, index, distanceM: distance(centre, outlet) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  const [nearest] = drains;
  if (nearest === undefined) return [{ value: null, ask: NO_DRAIN, message: message('waste-direct/no-drain'), ...common }];
  const fit = drains.find(({ drain: { waste } }) => waste.trapped === true && waste.vented === true);
  const open = drains.find((near) => isWithin(near) && missingOf(near) !== null);
  const isNear = fit !== undefined && isWithin(fit);
  if (!isNear && open !== undefined) return [askFor(common, open)];
  const machine = nameMachine(scene, placed);
  if (fit === undefined) {
    return [{ unit: 'yes-no', relation: 'equals', value: false, message: messageOfUnfit(machine, nearest), ...common, limit: true }];
  }
  return [
    {
      value: fit.distanceM,
      message: message(isNear ? 'waste-direct/near' : 'waste-direct/too-far', { machine, way: fit.distanceM * 1000, most: MOST * 1000 }),
      ...common,
      subjects: [...common.subjects, fit.drain.id],
    },
  ];
}

/** What must be said of a drain before it can count; null where all is known, or where one thing rules it out anyway. */
function missingOf({ drain: { waste } }: Near): 'trapped' | 'vented' | null {
  if (waste.trapped === false || waste.vented === false) return null;
  if (waste.trapped === null) return 'trapped';
  return waste.vented === null ? 'vented' : null;
}

function askFor(common: Pick<Measurement, 'place' | 'limit' | 'subjects'>, near: Near): Measurement {
  const field = missingOf(near) ?? 'trapped';
  const ask = { input: message(`waste-direct/ask-${field}`), path: ['room', 'floorDrains', near.index, 'waste', field] };
  return {
    value: null,
    ask,
    message: message(`waste-direct/${field}-not-known`),
    ...common,
    subjects: [...common.subjects, near.drain.id],
  };
}

const NO_DRAIN = { input: message('waste-direct/ask-drain'), path: ['room', 'floorDrains'] };

/** Why the nearest drain does not serve, where none does. */
function messageOfUnfit(machine: Name, { drain: { waste }, distanceM }: Near) {
  const { trapped, vented } = waste;
  const ruled = judgeDirectDrain({ distanceM, trapped: trapped === true, vented: vented === true });
  return message('waste-direct/unfit', { machine, refusal: ruled.pass ? null : ruled.refusal });
}
