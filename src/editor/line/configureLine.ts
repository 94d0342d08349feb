import { findDataSheet, type LineConfiguration, lineSides, type Plan, reverseHand, setConfiguration } from '../../plan';
import { deriveScene } from '../../scene';
import { type CommandResult, carryOut, refusal } from './commandResult';

const NAMES: Readonly<Record<LineConfiguration, string>> = {
  straight: 'straight-through',
  'left-front': 'a corner, left and front',
  'right-front': 'a corner, right and front',
};

/** Joins the machine's tables for another configuration; the hand stays, and the controls go to the inside of the turn. */
export function convertConfiguration(plan: Plan, machine: string, to: LineConfiguration): CommandResult {
  const host = plan.machines.find(({ id }) => id === machine);
  const sheet = host && findDataSheet(plan, host.sheet);
  if (sheet === undefined) return refusal('This machine is no longer in the plan.');
  const { soiled, clean } = lineSides(to, 'left-to-right');
  const missing = [soiled.side, clean.side].find((side) => !sheet.doors.includes(side));
  if (missing !== undefined) return refusal(`This machine has no door on its ${missing}.`);
  return carryOut(plan, `Make the line ${NAMES[to]}`, setConfiguration(machine, to), [machine]);
}

/** Lets the soiled and the clean table change places. */
export function swapHand(plan: Plan, machine: string): CommandResult {
  const line = deriveScene(plan).lines.find((item) => item.machine.machine.id === machine);
  if (line?.hand == null) return refusal('The line has no hand yet: it needs a soiled and a clean table on two sides of the machine.');
  return carryOut(plan, 'Swap the hand', reverseHand(machine), [machine]);
}
