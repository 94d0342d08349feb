import { askFor, createMessages, type FigureReading, type NoParams } from '../../../../rules';
import type { PlacedMachine, Scene } from '../../../../scene';

/** What the inputs are called. */
export interface FeedMessages {
  'feed/ask-cold-water': NoParams;
  'feed/ask-hot-water': NoParams;
}

const message = createMessages<FeedMessages>();

/** Which water the machine gets: what it is connected to, or what it is made for while that is not known. */
export const feedOf = ({ machine, sheet }: PlacedMachine): 'hot' | 'cold' => machine.hookUp.water ?? sheet.waterFeed;

/** The water that the machine is fed with, in °C, or the reading that asks for it. */
export function needFeed({ plan }: Scene, placed: PlacedMachine): { feedC: number } | { ask: FigureReading } {
  const feed = feedOf(placed);
  const field = feed === 'hot' ? 'hotWaterC' : 'coldWaterC';
  const feedC = plan.supply[field];
  if (feedC !== null) return { feedC };
  return { ask: askFor([placed.machine.id], message(`feed/ask-${feed}-water`), ['supply', field]) };
}
