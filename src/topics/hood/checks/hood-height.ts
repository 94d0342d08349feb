import { needsHood } from '../../../catalog';
import { pathOf } from '../../../plan';
import {
  areaPlace,
  type Check,
  createMessages,
  editHood,
  type Measurement,
  type Name,
  nameHood,
  nameMachine,
  type Offer,
  type Repair,
} from '../../../rules';
import { HEAD_HEIGHT, type PlacedHood, type PlacedMachine, type Scene } from '../../../scene';
import { findHoodsOver, isOverStand, LIP_ABOVE_DECK } from './support/hoods';

export const check: Check = {
  id: 'hood-height',
  order: 220,
  title: 'The hood hangs low enough, and clear of heads',
  group: 'air',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'International Mechanical Code',
    section: '507.1.6 (507.12 in 2003), canopy height: front lower lip at most 4 ft above the cooking surface',
    confidence: 'secondary',
  },
  why: 'The higher the lip, the more vapour drifts out under it. The code speaks of a cooking surface; the deck is taken for it, which is stricter than the top of the open doors. The local official decides.',
  measure: (scene) => scene.machines.filter(({ sheet }) => needsHood(sheet) === true).flatMap((machine) => measureMachine(scene, machine)),
};

/** What is said of the lip of a hood. `height` is above the deck of the machine, or above the floor where heads are concerned. */
export interface HoodHeightMessages {
  'hood-height/not-known': { hood: Name; most: number };
  'hood-height/ask-lip': { hood: Name };
  'hood-height/low-enough': { hood: Name; machine: Name; height: number; most: number };
  'hood-height/too-high': { hood: Name; machine: Name; height: number; by: number };
  'hood-height/clear-of-heads': { hood: Name; height: number; least: number };
  'hood-height/too-low-for-heads': { hood: Name; height: number; by: number };
  'hood-height/repair-hang-hood': { hood: Name; from: number; to: number };
}

const say = createMessages<HoodHeightMessages>();

/** A hood with its lip, over a machine. */
interface Hung {
  scene: Scene;
  machine: PlacedMachine;
  hood: PlacedHood;
  lip: number;
  name: Name;
}

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement[] {
  return findHoodsOver(scene, machine).flatMap(({ hood }) => {
    const lip = hood.hood.lipHeight;
    if (lip === null) return [askLip(scene, machine, hood)];
    const hung: Hung = { scene, machine, hood, lip, name: nameHood(scene, hood) };
    return [measureLip(hung), ...measureHead(hung)];
  });
}

function askLip(scene: Scene, machine: PlacedMachine, hood: PlacedHood): Measurement {
  const name = nameHood(scene, hood);
  return {
    value: null,
    limit: LIP_ABOVE_DECK,
    ask: { input: say('hood-height/ask-lip', { hood: name }), path: pathOf(scene.plan, 'hoods', hood.hood.id, 'lipHeight') },
    message: say('hood-height/not-known', { hood: name, most: LIP_ABOVE_DECK }),
    ...about(machine, hood, 'lip'),
  };
}

function measureLip(hung: Hung): Measurement {
  const { scene, machine, hood, lip, name } = hung;
  const value = lip - machine.sheet.deckHeight;
  const tooHigh = value - LIP_ABOVE_DECK;
  const isTooHigh = tooHigh > 1e-6;
  const above = { hood: name, machine: nameMachine(scene, machine), height: value };
  return {
    value,
    limit: LIP_ABOVE_DECK,
    message: isTooHigh
      ? say('hood-height/too-high', { ...above, by: tooHigh })
      : say('hood-height/low-enough', { ...above, most: LIP_ABOVE_DECK }),
    ...(isTooHigh ? { repairs: offerHeight(hung, machine.sheet.deckHeight + LIP_ABOVE_DECK) } : {}),
    ...about(machine, hood, 'lip'),
  };
}

/** Only where the operator stands under the hood. */
function measureHead(hung: Hung): Measurement[] {
  const { scene, machine, hood, lip, name } = hung;
  if (!isOverStand(scene, machine, hood)) return [];
  const tooLow = HEAD_HEIGHT - lip;
  const isTooLow = tooLow > 1e-6;
  return [
    {
      value: lip,
      limit: HEAD_HEIGHT,
      relation: 'at-least',
      severity: 'watch',
      source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(1): a projection leaves 6 ft 8 in', confidence: 'secondary' },
      message: isTooLow
        ? say('hood-height/too-low-for-heads', { hood: name, height: lip, by: tooLow })
        : say('hood-height/clear-of-heads', { hood: name, height: lip, least: HEAD_HEIGHT }),
      ...(isTooLow ? { repairs: offerHeight(hung, HEAD_HEIGHT) } : {}),
      ...about(machine, hood, 'head'),
    },
  ];
}

const offerHeight = (hung: Hung, height: number): Offer => ({ ids: ['hang-hood'], find: () => hangAt(hung, height) });

/** Moves the lip, only to a height where lip, heads, doors and ceiling all agree. */
function hangAt({ scene, machine, hood: { hood }, lip, name }: Hung, height: number): Repair[] {
  const top = height + hood.height;
  const fits =
    height <= machine.sheet.deckHeight + LIP_ABOVE_DECK + 1e-6 &&
    top >= machine.sheet.doorLiftHeight + machine.sheet.clearances.above &&
    top <= (scene.room.ceilingHeight ?? top);
  if (!fits) return [];
  return [
    {
      id: 'hang-hood',
      label: say('hood-height/repair-hang-hood', { hood: name, from: lip, to: height }),
      edit: (draft) =>
        editHood(draft, hood.id, (item) => {
          item.lipHeight = height;
        }),
    },
  ];
}

const about = (machine: PlacedMachine, hood: PlacedHood, part: string) => ({
  part,
  subjects: [hood.hood.id, machine.machine.id],
  place: areaPlace(hood.polygon),
});
