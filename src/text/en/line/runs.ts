import type { DataSheet } from '../../../catalog';
import type { ConfigurationPossibleMessages } from '../../../topics/line/checks/configuration-possible';
import type { ControlsInsideTurnMessages } from '../../../topics/line/checks/controls-inside-turn';
import type { DoorLiftClearMessages, Overhead } from '../../../topics/line/checks/door-lift-clear';
import type { LineCompleteMessages } from '../../../topics/line/checks/line-complete';
import type { OneWayFlowMessages } from '../../../topics/line/checks/one-way-flow';
import type { MoveControlsMessages } from '../../../topics/line/checks/support/controls';
import type { RackCycleMessages } from '../../../topics/line/figures/support/rackCycle';
import type { Wording } from '../../wording';
import { nameWords } from '../names';
import { configurationWords, count, list, sentence } from '../words';

/** The words of the way of the racks: what the tables make, stations, crossings, and the machine in it. */
export const runs: Wording<
  ConfigurationPossibleMessages &
    LineCompleteMessages &
    OneWayFlowMessages &
    ControlsInsideTurnMessages &
    MoveControlsMessages &
    DoorLiftClearMessages &
    RackCycleMessages
> = {
  'configuration-possible/possible': ({ line, configuration }) => sentence(`${nameWords(line)} is ${configurationWords(configuration)}.`),
  'configuration-possible/no-table': ({ machine }) =>
    sentence(`no table meets ${nameWords(machine)}. Join a soiled table to one door and a clean table to another.`),
  'configuration-possible/one-table': ({ machine, only }) =>
    sentence(`only the ${only} table meets ${nameWords(machine)}. Join a ${only === 'soiled' ? 'clean' : 'soiled'} table to another door.`),
  'configuration-possible/back': ({ machine }) =>
    sentence(`a table meets the back of ${nameWords(machine)}, where no rack passes. Move it to the left, the right or the front.`),
  'configuration-possible/same-side': ({ machine }) =>
    sentence(`two tables meet the same side of ${nameWords(machine)}. Move one of them to another door.`),
  'configuration-possible/three-sides': ({ machine }) =>
    sentence(`tables meet three sides of ${nameWords(machine)}. Take one away: a rack goes in at one door and out at another.`),
  'configuration-possible/no-door': ({ machine }) =>
    sentence(`a table meets a side of ${nameWords(machine)} that has no door. Move it to a side with a door.`),
  'configuration-possible/two-roles': ({ machine }) =>
    sentence(`the tables at ${nameWords(machine)} are not one soiled and one clean. Give one of them the other role.`),

  'line-complete/complete': ({ line }) => sentence(`${nameWords(line)} has its drop-off, scrap opening and clean storage.`),
  'line-complete/lacks': ({ line, missing }) =>
    sentence(
      `${nameWords(line)} has ${list(missing.map((what) => `no ${STATIONS[what]}`))}. Give ${missing.length === 1 ? 'it' : 'each'} a place.`,
    ),

  'one-way-flow/no-crossing': ({ machine }) => sentence(`the way of soiled ware to ${nameWords(machine)} crosses no way of clean ware.`),
  'one-way-flow/crosses': ({ places }) =>
    `Soiled and clean ware cross at ${count(places, 'place')}. Give drop-off and clean storage their own sides.`,
  'one-way-flow/no-shared-floor': () => 'Soiled and clean ware go over no floor in common.',
  'one-way-flow/shares-floor': ({ length, places }, f) =>
    `Soiled and clean ware share ${f.length(length)} of floor at ${count(places, 'place')}. Move the drop-off or the clean storage, or part them by time and by a cart of their own.`,

  'controls-inside-turn/inside': () => 'The controls are at the corner inside the turn.',
  'controls-inside-turn/at-front': () => 'The controls are at the front, before the operator.',
  'controls-inside-turn/outside': ({ fromCorner, change }, f) =>
    `The controls are outside the turn, ${f.length(fromCorner)} from its corner. ${MOVE_CONTROLS[change]}`,
  'controls-inside-turn/not-at-front': ({ change }) =>
    `The controls are not at the front, where the operator stands. ${MOVE_CONTROLS[change]}`,
  'controls-inside-turn/no-such-position': () => 'The data sheet has no such position of the controls. Choose one that it has.',
  'controls-inside-turn/ask-position': () => 'position of the controls',
  'repair/move-controls': ({ position, change }) =>
    `Move the controls ${change === 'on-site' ? 'on site' : 'in the order'}: ${position.charAt(0).toLowerCase()}${position.slice(1)}`,

  'door-lift-clear/blocked': ({ machine, rise, above, by }, f) =>
    sentence(
      `the open doors of ${nameWords(machine)} rise to ${f.length(rise)}; ${overheadWords(above)} is ${f.length(by)} lower. Raise it, or take it away from over the machine.`,
    ),
  'door-lift-clear/tight': ({ machine, rise, above, room, wanted }, f) =>
    sentence(
      `the open doors of ${nameWords(machine)} rise to ${f.length(rise)}; ${f.length(room)} is left under ${overheadWords(above)}, ${f.length(wanted)} is wanted.`,
    ),
  'door-lift-clear/clear': ({ machine, rise, above, room }, f) =>
    sentence(`the open doors of ${nameWords(machine)} rise to ${f.length(rise)}; ${f.length(room)} is left under ${overheadWords(above)}.`),
  'door-lift-clear/lip-not-known': ({ hood }) =>
    sentence(`how far the doors can rise under ${nameWords(hood)} is not known. Give the height of its lip.`),
  'door-lift-clear/ceiling-not-known': () => 'The height of the ceiling is not known. Measure it over the machine.',
  'door-lift-clear/ask-lip': ({ hood }) => `lip height of ${nameWords(hood)}`,
  'door-lift-clear/ask-ceiling': () => 'ceiling height',

  'racks-per-hour/corner': ({ loadS }) => `No listing states the time to change racks at a corner; ${loadS} s of the data sheet are taken.`,
};

const STATIONS: Readonly<Record<LineCompleteMessages['line-complete/lacks']['missing'][number], string>> = {
  'drop-off': 'drop-off',
  scrap: 'scrap opening',
  storage: 'clean storage',
};

const MOVE_CONTROLS: Readonly<Record<DataSheet['controlsChange'], string>> = {
  'on-site': 'Move them on site before the tables go in.',
  factory: 'They cannot be moved on site: change the order.',
};

/** `the ceiling`, `the hood`, `the top of the hood`. */
function overheadWords(above: Overhead): string {
  if (above === 'ceiling') return 'the ceiling';
  return above.isTop ? `the top of ${nameWords(above.of)}` : nameWords(above.of);
}
