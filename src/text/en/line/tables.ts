import type { FittingsApartMessages } from '../../../topics/line/checks/fittings-apart';
import type { LandingRacksMessages } from '../../../topics/line/checks/landing-racks';
import type { PreRinseSideMessages } from '../../../topics/line/checks/pre-rinse-side';
import type { Back, RackFitsTableMessages } from '../../../topics/line/checks/rack-fits-table';
import type { DeckNode, Lift, RaiseDeckMessages } from '../../../topics/line/checks/support/deck';
import type { LengthenMessages } from '../../../topics/line/checks/support/lengthen';
import type { MoveFittingMessages } from '../../../topics/line/checks/support/moveFitting';
import type { PreRinseMessages } from '../../../topics/line/checks/support/preRinse';
import type { WareSinkMessages } from '../../../topics/line/checks/support/wareSinks';
import type { Spot, TableFallsMessages } from '../../../topics/line/checks/table-falls';
import type { Formatter } from '../../../units';
import type { Wording } from '../../wording';
import { nameWords } from '../names';
import { count, list, numberWord, sentence } from '../words';

/** The words of the tables: their fall, the room on them, their sinks and other fittings. */
export const tables: Wording<
  TableFallsMessages &
    RaiseDeckMessages &
    LandingRacksMessages &
    LengthenMessages &
    RackFitsTableMessages &
    FittingsApartMessages &
    MoveFittingMessages &
    PreRinseSideMessages &
    PreRinseMessages &
    WareSinkMessages
> = {
  'table-falls/falls': ({ table, rise, leastSlope }, f) =>
    sentence(`${nameWords(table)} falls ${f.length(rise)} toward the machine, nowhere less than ${f.slope(leastSlope)}.`),
  'table-falls/drains-into-sinks': ({ table, leastSlope }, f) =>
    sentence(`${nameWords(table)} drains into its sinks, nowhere less than ${f.slope(leastSlope)}.`),
  'table-falls/too-flat': ({ table, leastSlope, wanted, lifts }, f) =>
    sentence(`${nameWords(table)} falls only ${f.slope(leastSlope)}; ${f.slope(wanted)} drains well. ${adviseLifts(lifts, f)}`),
  'table-falls/falls-away': ({ table, fall, at, lifts }, f) =>
    sentence(
      `${nameWords(table)} falls ${f.length(fall)} away from the machine; water stands ${spotWords(at, f)}. ${adviseLifts(lifts, f)}`,
    ),
  'table-falls/level': ({ table, lifts }, f) => sentence(`${nameWords(table)} is level; water stands on it. ${adviseLifts(lifts, f)}`),
  'table-falls/water-stands': ({ table, depth, at, lifts }, f) =>
    sentence(
      `water stands${depth < 0.5 ? '' : ` ${f.length(depth)} deep`} on ${nameWords(table)} ${spotWords(at, f)}. ${adviseLifts(lifts, f)}`,
    ),
  'table-falls/not-known': ({ ask }, _f, tell) => `The ${tell(ask)} is not known, so its fall is not checked. Measure it.`,
  'table-falls/ask-fall': ({ table }) => `fall of ${nameWords(table)}`,
  'table-falls/ask-height': ({ table, at }) => `deck height at ${nodeWords(at)} of ${nameWords(table)}`,
  'repair/raise-deck': ({ lifts }, f) => liftWords(lifts, f),

  'landing-racks/room': (landing, f) => `${roomWords(landing, f)}.`,
  'landing-racks/too-little-room': (landing, f) => `${roomWords(landing, f)}. Lengthen it, or clear it.`,
  'repair/lengthen-table': ({ role, by }, f) => `Lengthen the ${role} table ${f.length(by)}`,

  'rack-fits-table/over-front': ({ table, over }, f) =>
    `A rack on ${nameWords(table)} reaches ${f.length(over)} over its front edge. Set that edge farther from the rack’s line.`,
  'rack-fits-table/binds-at-front': ({ table, room, wanted }, f) =>
    sentence(
      `${nameWords(table)} leaves ${f.length(room)} before a rack; with less than ${f.length(wanted)} it binds on the rim. Set the edge farther out.`,
    ),
  'rack-fits-table/front': ({ table, room, rolledRim }, f) =>
    sentence(
      `${nameWords(table)} leaves ${f.length(room)} before a rack.${rolledRim === null ? '' : ` Have its rim rolled outward: over the deck it would take ${f.length(rolledRim)}.`}`,
    ),
  'rack-fits-table/over-back': ({ table, back, over }, f) =>
    `A rack on ${nameWords(table)} reaches ${f.length(over)} beyond its ${BACKS[back]}. Make the table deeper.`,
  'rack-fits-table/rides-up-cove': ({ table, back, room, cove }, f) =>
    sentence(
      `${nameWords(table)} leaves ${f.length(room)} between a rack and its ${BACKS[back]}; the cove takes ${f.length(cove)}, and the rack rides up it. Make the table deeper.`,
    ),
  'rack-fits-table/back': ({ table, back, room }, f) =>
    sentence(`${nameWords(table)} leaves ${f.length(room)} between a rack and its ${BACKS[back]}.`),
  'rack-fits-table/opening-over-edge': ({ fitting, over, widest }, f) =>
    sentence(`${nameWords(fitting)} reaches ${f.length(over)} over the edge of its table. Take one of ${f.length(widest)} across at most.`),
  'rack-fits-table/opening': ({ fitting, room }, f) =>
    sentence(`${nameWords(fitting)} lies ${f.length(room)} within the edge of its table.`),

  'fittings-apart/shared': ({ one, other, table, length }, f) =>
    sentence(
      `${pairWords(nameWords(one), nameWords(other))} of ${nameWords(table)} take the same ${f.length(length)} of it. Move one of them.`,
    ),
  'fittings-apart/apart': ({ table, fittings }) =>
    sentence(`the ${numberWord(fittings)} fittings of ${nameWords(table)} lie clear of each other.`),
  'repair/move-fitting': ({ fitting, fromJoint }, f) =>
    `Move ${nameWords(fitting)} to ${fromJoint > 0.5 ? `${f.length(fromJoint)} from` : 'the start,'} the joint`,

  'pre-rinse-side/on-clean-table': () =>
    'The sink with the spray is on the clean table and would soil clean ware. Move it to the soiled table.',
  'pre-rinse-side/none': () => 'The line has no pre-rinse. Put a sink with a spray hose on the soiled table.',
  'pre-rinse-side/on-soiled-table': () => 'The pre-rinse sink is on the soiled table.',
  'repair/hang-spray': () => 'Hang a spray over the sink on the soiled table',
  'repair/take-spray-off': () => 'Take the spray off the sink on the clean table',
  'repair/move-spray': () => 'Move the spray to the sink on the soiled table',
  'repair/move-pre-rinse': ({ fromMachine }, f) => `Move the sink to the soiled table, ${f.length(fromMachine)} from the machine`,

  'ware-sink/ask-bowls': ({ sink }) => `bowls and boards of ${nameWords(sink)}, and how they empty`,
  'ware-sink/ask-waste': ({ sink, bowls }) =>
    bowls === 'one' ? `way in which the bowl of ${nameWords(sink)} empties` : `way in which the bowls of ${nameWords(sink)} empty`,
};

const adviseLifts = (lifts: readonly Lift[], f: Formatter) => `${lifts.length === 0 ? 'Raise the far end' : liftWords(lifts, f)}.`;

/** `Raise the far end 1 in and the turn ½ in`. */
const liftWords = (lifts: readonly Lift[], f: Formatter) => `Raise ${list(lifts.map(({ at, by }) => `${nodeWords(at)} ${f.length(by)}`))}`;

function nodeWords(at: DeckNode): string {
  if (typeof at === 'number') return `turn ${at}`;
  return { joint: 'the joint', turn: 'the turn', 'far-end': 'the far end' }[at];
}

function spotWords(at: Spot, f: Formatter): string {
  if (typeof at === 'object') return `${f.length(at.fromMachine)} from the machine`;
  return { machine: 'at the machine', turn: 'at the turn', 'far-end': 'at the far end' }[at];
}

const roomWords = ({ table, racks, length, wanted }: LandingRacksMessages['landing-racks/room'], f: Formatter) =>
  sentence(
    `${nameWords(table)} has room for ${count(racks, 'rack')} on ${f.length(length)}; ${wanted} ${wanted === 1 ? 'is' : 'are'} wanted`,
  );

const BACKS: Readonly<Record<Back, string>> = { backsplash: 'backsplash', edge: 'back edge' };

/** Two of a kind are not named twice. */
const pairWords = (one: string, other: string) => (one === other ? `${one} and another` : `${one} and ${other}`);
