import { createId, type Hood } from '../../../../plan';
import { createMessages, type Repair } from '../../../../rules';
import type { PlacedMachine, Scene } from '../../../../scene';
import { fitHood, LIP_ABOVE_DECK, leastOverhang } from './hoods';

export interface PlaceHoodMessages {
  'hood-where-needed/repair-place-hood': { width: number; depth: number; lipHeight: number };
}

const say = createMessages<PlaceHoodMessages>();

/** Usual height of a canopy's body; less where the ceiling is low. */
const BODY = 600;
const LEAST_BODY = 300;

/** A hood of the least size over a machine that has none, where doors and ceiling leave room for one. */
export function placeHood({ room }: Scene, machine: PlacedMachine): Repair[] {
  const { deckHeight, doorLiftHeight, clearances } = machine.sheet;
  const lipHeight = deckHeight + LIP_ABOVE_DECK;
  const height = Math.min(BODY, (room.ceilingHeight ?? Number.POSITIVE_INFINITY) - lipHeight);
  if (height < LEAST_BODY || lipHeight + height < doorLiftHeight + clearances.above) return [];
  const hood: Omit<Hood, 'id'> = { lipHeight, height, exhaust: null, cavityAir: null, ...fitHood(machine, leastOverhang(machine)) };
  return [
    {
      id: 'place-hood',
      label: say('hood-where-needed/repair-place-hood', { width: hood.width, depth: hood.depth, lipHeight }),
      edit: (draft) => {
        draft.hoods.push({ id: createId(draft, 'hood'), ...hood });
      },
    },
  ];
}
