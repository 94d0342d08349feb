import { distance } from '../../../geometry';
import type { FloorDrain } from '../../../plan';
import { boundOf, type Check, connectionPlace, judge, type Measurement, machineName, refusalSentence, sentence } from '../../../rules';
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
  if (nearest === undefined)
    return [{ value: null, ask: { input: 'floor drain', path: ['room', 'floorDrains'] }, say: () => NO_DRAIN, ...common }];
  const fit = drains.find(({ drain: { waste } }) => waste.trapped === true && waste.vented === true);
  const open = drains.find((near) => isWithin(near) && missingOf(near) !== null);
  const isNear = fit !== undefined && isWithin(fit);
  if (!isNear && open !== undefined) return [askFor(common, open)];
  const machine = sentence(machineName(scene, placed));
  if (fit === undefined) {
    return [{ unit: 'yes-no', relation: 'equals', value: false, say: () => `${machine} ${sayUnfit(nearest)}`, ...common, limit: true }];
  }
  return [
    {
      value: fit.distanceM,
      say: (f) => {
        const stands = `${machine} is connected directly, ${f.length(fit.distanceM * 1000)} from a floor drain that is trapped and vented`;
        return isNear
          ? `${stands}; up to ${f.length(MOST * 1000)} it may be, where local law allows it.`
          : `${stands}, and may be ${f.length(MOST * 1000)} at most. Let it run over an air gap, or set such a drain nearer.`;
      },
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
  const ask = { input: ASKS[field].input, path: ['room', 'floorDrains', near.index, 'waste', field] };
  return { value: null, ask, say: () => ASKS[field].say, ...common, subjects: [...common.subjects, near.drain.id] };
}

const NO_DRAIN = 'The machine is connected directly, and no floor drain is drawn: draw the trapped one beside it.';
const ASKS = {
  trapped: {
    input: 'trap of the floor drain',
    say: 'The machine is connected directly: say whether the floor drain beside it has a trap.',
  },
  vented: {
    input: 'vent of the floor drain’s trap',
    say: 'The machine is connected directly: say whether the trap of the floor drain beside it is vented.',
  },
};

/** Why the nearest drain does not serve, where none does. */
function sayUnfit({ drain: { waste }, distanceM }: Near): string {
  const { trapped, vented } = waste;
  const ruled = judgeDirectDrain({ distanceM, trapped: trapped === true, vented: vented === true });
  return `is connected directly, but ${ruled.pass ? 'no floor drain serves' : refusalSentence(ruled.refusal)}. Let it run over an air gap, or set a trapped and vented floor drain beside it.`;
}
