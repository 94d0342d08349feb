import type { JointFlushMessages } from '../../../topics/line/checks/joint-flush';
import type { Wording } from '../../wording';
import { nameWords } from '../names';
import { sentence, sideWords } from '../words';

/** The words of the joints between tables and machine. */
export const joints: Wording<JointFlushMessages> = {
  'joint-flush/no-door': ({ table, machine, side }) =>
    sentence(`${nameWords(table)} meets ${nameWords(machine)} at ${sideWords(side)}, which has no door. Move it to a side with a door.`),
  'joint-flush/overlaps': ({ table, machine, overlap }, f) =>
    sentence(`${nameWords(table)} runs ${f.length(overlap)} into ${nameWords(machine)}. Move it out until they touch.`),
  'joint-flush/closed': ({ table, machine, gap, most }, f) =>
    sentence(
      `${nameWords(table)} meets ${nameWords(machine)} ${isNone(gap) ? 'flush' : `with a gap of ${f.length(gap)}`}; silicone seals ${f.length(most)}.`,
    ),
  'joint-flush/open': ({ table, machine, gap, most }, f) =>
    sentence(
      `a gap of ${f.length(gap)} is left between ${nameWords(table)} and ${nameWords(machine)}; silicone seals ${f.length(most)}. Close it up.`,
    ),
  'joint-flush/in-line': ({ table, offset, most }, f) =>
    sentence(
      `${nameWords(table)} is ${isNone(offset) ? 'in line' : `${f.length(offset)} out of line`} with the door; ${f.length(most)} is allowed.`,
    ),
  'joint-flush/out-of-line': ({ table, offset }, f) =>
    sentence(`${nameWords(table)} stands ${f.length(offset)} out of line with the door; racks would catch. Move it sideways.`),
  'joint-flush/square': ({ table, machine, angleDeg, mostDeg }, f) =>
    sentence(
      `${nameWords(table)} is ${angleDeg < 0.05 ? 'square' : `${f.angle(angleDeg)} off square`} to ${nameWords(machine)}; ${f.angle(mostDeg)} is allowed.`,
    ),
  'joint-flush/off-square': ({ table, angleDeg }, f) =>
    sentence(`${nameWords(table)} stands ${f.angle(angleDeg)} off square; the joint opens at one corner. Turn it square.`),
  'joint-flush/step-unknown': ({ table }) =>
    sentence(`the deck height of ${nameWords(table)} at the joint is not known. Measure it at the machine.`),
  'joint-flush/ask-step': ({ table }) => `deck height of ${nameWords(table)} at the joint`,
  'joint-flush/level': ({ table, step, most }, f) =>
    sentence(
      `${nameWords(table)} is ${isNone(step) ? 'level with' : `${f.length(Math.abs(step))} ${stepWord(step)} than`} the track; ${f.length(most)} is allowed.`,
    ),
  'joint-flush/step': ({ table, step }, f) =>
    sentence(
      `${nameWords(table)} is ${f.length(Math.abs(step))} ${stepWord(step)} than the track; racks would catch. ${step > 0 ? 'Lower' : 'Raise'} it at its feet.`,
    ),
  'joint-flush/repair-snap-flush': ({ table }) => `Snap ${nameWords(table)} flush`,
  'joint-flush/repair-level-deck': ({ table, step }, f) =>
    `${step > 0 ? 'Lower' : 'Raise'} ${nameWords(table)} ${f.length(Math.abs(step))}`,
};

/** Nothing that a tape shows. */
const isNone = (length: number) => Math.abs(length) < 0.5;

const stepWord = (step: number) => (step > 0 ? 'higher' : 'lower');
