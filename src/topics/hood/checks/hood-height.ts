import { needsHood } from '../../../catalog';
import { pathOf } from '../../../plan';
import { areaPlace, type Check, editHood, hoodName, type Measurement, machineName, type Repair, sentence } from '../../../rules';
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

/** A hood with its lip, over a machine. */
interface Hung {
  scene: Scene;
  machine: PlacedMachine;
  hood: PlacedHood;
  lip: number;
  name: string;
}

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement[] {
  return findHoodsOver(scene, machine).flatMap(({ hood }) => {
    const lip = hood.hood.lipHeight;
    if (lip === null) return [askLip(scene, machine, hood)];
    const hung: Hung = { scene, machine, hood, lip, name: hoodName(scene, hood) };
    return [measureLip(hung), ...measureHead(hung)];
  });
}

function askLip(scene: Scene, machine: PlacedMachine, hood: PlacedHood): Measurement {
  const name = hoodName(scene, hood);
  return {
    value: null,
    limit: LIP_ABOVE_DECK,
    ask: { input: `lip height of ${name}`, path: pathOf(scene.plan, 'hoods', hood.hood.id, 'lipHeight') },
    say: (f) => sentence(`the height of ${name}’s lip is not known. It may hang at most ${f.length(LIP_ABOVE_DECK)} above the deck.`),
    ...about(machine, hood, 'lip'),
  };
}

function measureLip(hung: Hung): Measurement {
  const { scene, machine, hood, lip, name } = hung;
  const value = lip - machine.sheet.deckHeight;
  const tooHigh = value - LIP_ABOVE_DECK;
  const of = `the lip of ${name} is`;
  return {
    value,
    limit: LIP_ABOVE_DECK,
    say: (f) =>
      sentence(
        tooHigh <= 1e-6
          ? `${of} ${f.length(value)} above the deck of ${machineName(scene, machine)}; ${f.length(LIP_ABOVE_DECK)} at most.`
          : `${of} ${f.length(value)} above the deck of ${machineName(scene, machine)}, ${f.length(tooHigh)} too high. Lower it.`,
      ),
    repairs: () => (tooHigh > 1e-6 ? hangAt(hung, machine.sheet.deckHeight + LIP_ABOVE_DECK) : []),
    ...about(machine, hood, 'lip'),
  };
}

/** Only where the operator stands under the hood. */
function measureHead(hung: Hung): Measurement[] {
  const { scene, machine, hood, lip, name } = hung;
  if (!isOverStand(scene, machine, hood)) return [];
  const tooLow = HEAD_HEIGHT - lip;
  return [
    {
      value: lip,
      limit: HEAD_HEIGHT,
      relation: 'at-least',
      severity: 'watch',
      source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(1): a projection leaves 6 ft 8 in', confidence: 'secondary' },
      say: (f) =>
        sentence(
          tooLow <= 1e-6
            ? `the lip of ${name} is ${f.length(lip)} above the floor, clear of heads; ${f.length(HEAD_HEIGHT)} at least.`
            : `the lip of ${name} is ${f.length(lip)} above the floor where the operator stands, ${f.length(tooLow)} too low for heads. Raise it, or pad its edge.`,
        ),
      repairs: () => (tooLow > 1e-6 ? hangAt(hung, HEAD_HEIGHT) : []),
      ...about(machine, hood, 'head'),
    },
  ];
}

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
      label: (f) => `${height < lip ? 'Lower' : 'Raise'} ${name} to ${f.length(height)} above the floor`,
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
