import type { Machine } from '../../../../plan';
import { type Ask, createMessages, type Message, type NoParams } from '../../../../rules';
import { machinePath, type PlacedMachine } from '../../../../scene';

type HookUp = Machine['hookUp'];

/** What people call what is asked for. */
export interface HookUpMessages {
  'power/ask-breaker': NoParams;
  'power/ask-wire': NoParams;
  'power/ask-wire-way': NoParams;
  'power/ask-mark': NoParams;
}

const say = createMessages<HookUpMessages>();

const INPUTS = {
  breakerA: say('power/ask-breaker'),
  wire: say('power/ask-wire'),
  wireWay: say('power/ask-wire-way'),
  markedFor75C: say('power/ask-mark'),
} as const satisfies Partial<Record<keyof HookUp, Message>>;

/** One field of how the circuit of a machine is made. */
export const askHookUp = (placed: PlacedMachine, field: keyof typeof INPUTS): Ask & { input: Message } => ({
  input: INPUTS[field],
  path: machinePath(placed, 'hookUp', field),
});
