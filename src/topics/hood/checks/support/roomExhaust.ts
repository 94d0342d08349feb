import type { FigureReading } from '../../../../rules';
import type { Scene } from '../../../../scene';

/** The general exhaust of the room as the plan states it, or what asks for it. */
export function roomExhaustReading({ plan }: Scene): FigureReading {
  const value = plan.air.roomExhaust;
  if (value !== null) return { subjects: [], value, how: null };
  return { subjects: [], value, ask: { input: 'general exhaust of the room', path: ['air', 'roomExhaust'] }, how: null };
}
