import { createMessages, type FigureReading, type NoParams } from '../../../../rules';
import type { Scene } from '../../../../scene';

export interface RoomExhaustMessages {
  'waived-exhaust-enough/ask-room-exhaust': NoParams;
}

const say = createMessages<RoomExhaustMessages>();

/** The general exhaust of the room as the plan states it, or what asks for it. */
export function roomExhaustReading({ plan }: Scene): FigureReading {
  const value = plan.air.roomExhaust;
  if (value !== null) return { subjects: [], value, how: null };
  return { subjects: [], value, ask: { input: say('waived-exhaust-enough/ask-room-exhaust'), path: ['air', 'roomExhaust'] }, how: null };
}
