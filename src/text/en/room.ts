import type { DoorSwingFreeMessages } from '../../topics/room/checks/door-swing-free';
import type { InsideRoomMessages } from '../../topics/room/checks/inside-room';
import type { NothingOverlapsMessages } from '../../topics/room/checks/nothing-overlaps';
import type { PassableWidthMessages } from '../../topics/room/checks/passable-width';
import type { ServiceClearancesMessages } from '../../topics/room/checks/service-clearances';
import type { MoveMessages } from '../../topics/room/checks/support/freePlace';
import type { RaiseShelfMessages } from '../../topics/room/checks/support/raiseShelf';
import type { RoomDoorMessages } from '../../topics/room/checks/support/roomDoor';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { aisleWords, count, passWords, pinchWords, sentence, sideWords } from './words';

/** The words of the room: what stands in it, its doors, its ways. */
export const room: Wording<
  InsideRoomMessages &
    DoorSwingFreeMessages &
    NothingOverlapsMessages &
    ServiceClearancesMessages &
    PassableWidthMessages &
    RoomDoorMessages &
    MoveMessages &
    RaiseShelfMessages
> = {
  'inside-room/out': ({ thing, by }, f) => sentence(`${nameWords(thing)} reaches ${f.length(by)} out of the room. Move it in.`),
  'inside-room/above-ceiling': ({ body, by }, f) =>
    sentence(`${nameWords(body)} reaches ${f.length(by)} above the ceiling. Lower it, or make it lower.`),
  'inside-room/within-walls': () => 'Everything stands inside the walls.',
  'inside-room/within-walls-and-ceiling': () => 'Everything stands inside the walls and under the ceiling.',
  'door-swing-free/free': () => 'The door swings free.',
  'door-swing-free/in-swing': ({ body, depth }, f) =>
    sentence(`${nameWords(body)} stands ${f.length(depth)} in the swing of the door. Move it, or hang the door the other way.`),
  'nothing-overlaps/overlap': ({ one, other, depth }, f) =>
    sentence(`${nameWords(one)} and ${nameWords(other)} stand ${f.length(depth)} in each other. Move one of them.`),
  'nothing-overlaps/apart': ({ things }) => `Nothing stands in something else: ${count(things, 'thing')} compared.`,
  'service-clearances/free': ({ machine, side, free, needed }, f) =>
    sentence(`${f.length(free)} is free before ${nameWords(machine)} at ${sideWords(side)}; service needs ${f.length(needed)}.`),
  'service-clearances/taken': ({ by, machine, side, free, needed, missing }, f) =>
    sentence(
      `${nameWords(by)} leaves ${f.length(free)} before ${nameWords(machine)} at ${sideWords(side)}; service needs ${f.length(needed)}. Make ${f.length(missing)} more room.`,
    ),
  'passable-width/no-door': () => 'The room has no door that people walk through. Draw where they come in.',
  'passable-width/door-wide': ({ width, pass }, f) => `The door leaves ${f.length(width)} to pass; ${passWords(pass, f)}.`,
  'passable-width/door-narrow': ({ width, pass, missing }, f) =>
    `The widest door leaves only ${f.length(width)} to pass; ${passWords(pass, f)}. Widen it by ${f.length(missing)}.`,
  'passable-width/way-wide': ({ width }, f) => `The way to the operator’s place is at least ${f.length(width)} wide.`,
  'passable-width/way-below-aisle': ({ width, pinch, aisle }, f) =>
    `The way to the operator’s place narrows to ${f.length(width)}${pinchWords(pinch, f)}; ${aisleWords(aisle, f)}.`,
  'passable-width/way-narrow': ({ width, pinch, pass }, f) =>
    `The way to the operator’s place narrows to ${f.length(width)}${pinchWords(pinch, f)}; ${passWords(pass, f)}. Make room there.`,
  'room/ask-door': () => 'door of the room',
  'repair/move': ({ thing, by }, f) => `Move ${nameWords(thing)} ${f.length(by)}`,
  'repair/raise-shelf': ({ shelf, height }, f) => `Raise ${nameWords(shelf)} to ${f.length(height)} above the floor`,
};
