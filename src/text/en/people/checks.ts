import type { AccessibleApproachMessages } from '../../../topics/people/checks/accessible-approach';
import type { ControlsReachableMessages } from '../../../topics/people/checks/controls-reachable';
import type { DoorApproachMessages } from '../../../topics/people/checks/door-approach';
import type { DoorPassableMessages } from '../../../topics/people/checks/door-passable';
import type { HeadroomMessages } from '../../../topics/people/checks/headroom';
import type { LightEnoughMessages } from '../../../topics/people/checks/light-enough';
import type { RackLiftMessages } from '../../../topics/people/checks/rack-lift';
import type { ReachOverTableMessages } from '../../../topics/people/checks/reach-over-table';
import type { WaysToStationsMessages } from '../../../topics/people/checks/ways-to-stations';
import type { WorkingHeightMessages } from '../../../topics/people/checks/working-height';
import { type Formatter, formatNumber } from '../../../units';
import type { Wording } from '../../wording';
import { nameWords } from '../names';
import { aisleWords, passWords, pinchWords, sentence } from '../words';
import { REACHED } from './reached';

/** What the checks of people find. */
export const checks: Wording<
  ControlsReachableMessages &
    WaysToStationsMessages &
    HeadroomMessages &
    DoorPassableMessages &
    DoorApproachMessages &
    AccessibleApproachMessages &
    ReachOverTableMessages &
    WorkingHeightMessages &
    RackLiftMessages &
    LightEnoughMessages
> = {
  'controls-reachable/free': () => 'No table lies before the controls.',
  'controls-reachable/covered': ({ table }) =>
    sentence(`${nameWords(table)} lies over the controls; nobody can work them there. Move the controls.`),
  'controls-reachable/partly-covered': ({ table, covered, width }, f) =>
    sentence(`${nameWords(table)} lies over ${f.length(covered)} of the controls’ ${f.length(width)}. Move the table or the controls.`),
  'controls-reachable/no-stand': () => 'There is no free place to stand inside the turn near the controls. Clear the floor before them.',
  'controls-reachable/near': ({ reach, most }, f) =>
    `The controls are ${f.length(reach)} from where the operator stands; a short person reaches ${f.length(most)}.`,
  'controls-reachable/far': ({ reach, most }, f) =>
    `The controls are ${f.length(reach)} from where the operator can stand; a short person reaches ${f.length(most)}. Clear a place nearer to them.`,
  'controls-reachable/at-good-height': ({ height }, f) =>
    `The controls are reached ${f.length(height)} above the floor, without stooping or climbing.`,
  'controls-reachable/low': ({ height, fingertips }, f) =>
    `The controls end ${f.length(height)} above the floor; the fingers of a tall person hang at ${f.length(fingertips)}, so they are worked stooping. Have them fitted higher.`,
  'controls-reachable/high': ({ height, highest }, f) =>
    `The controls begin ${f.length(height)} above the floor; from where the operator stands a short person reaches up to ${f.length(highest)}. Have them fitted lower, or give a sound step.`,
  'ways-to-stations/wide': ({ place, width }, f) => `The way to ${PLACES[place]} is at least ${f.length(width)} wide.`,
  'ways-to-stations/barred': ({ place }) => `Nobody comes to ${PLACES[place]}: clear the floor before it.`,
  'ways-to-stations/barred-before': ({ place, thing }) =>
    `Nobody comes to ${PLACES[place]}: clear the floor before ${nameWords(thing)}, or turn its front to the room.`,
  'ways-to-stations/below-aisle': ({ place, width, pinch, aisle }, f) =>
    `The way to ${PLACES[place]} narrows to ${f.length(width)}${pinchWords(pinch, f)}; ${aisleWords(aisle, f)}.`,
  'ways-to-stations/narrow': ({ place, width, pinch, pass }, f) =>
    `The way to ${PLACES[place]} narrows to ${f.length(width)}${pinchWords(pinch, f)}; ${passWords(pass, f)}. Make room there.`,
  'ways-to-stations/wide-beside-carts': ({ width }, f) =>
    `With the carts rolled out by their depth, ${f.length(width)} or more is left to pass.`,
  'ways-to-stations/narrow-beside-carts': ({ place, width, pass }, f) =>
    `With the carts rolled out by their depth, ${f.length(width)} is left on the way to ${PLACES[place]}; ${passWords(pass, f)}. Give the carts a place aside.`,
  'headroom/aside': (lip, f) => `${lipWords(lip, f)}, and nobody must pass under it.`,
  'headroom/high': ({ needed, ...lip }, f) => `${lipWords(lip, f)}; heads need ${f.length(needed)}.`,
  'headroom/low': ({ missing, ...lip }, f) =>
    `${lipWords(lip, f)} where people must pass, ${f.length(missing)} too low for heads. Raise it, or free a way beside it.`,
  'door-passable/wide': ({ width, needed }, f) => `The door is ${f.length(width)} wide; ${f.length(needed)} is needed.`,
  'door-passable/narrow': (door, f) => `${narrowWords(door, f)}. Widen it; another hinge can give the last inches.`,
  'door-passable/second': (door, f) => `${narrowWords(door, f)}: a wheelchair comes in by another one.`,
  'door-passable/second-no-exit': ({ exit, ...door }, f) =>
    `${narrowWords(door, f)}: a wheelchair comes in by another one, and nobody may count on it to get out: that takes ${f.length(exit)}.`,
  'door-passable/leaf-wide': ({ leaf, needed }, f) => `One leaf of the door alone opens ${f.length(leaf)}; ${f.length(needed)} is needed.`,
  'door-passable/leaf-narrow': ({ leaf, missing, needed }, f) =>
    `One leaf of the door alone, of two alike, opens ${f.length(leaf)}, ${f.length(missing)} less than ${f.length(needed)}. See that one of them is wider, or that both open together by themselves.`,
  'door-passable/high': ({ height, needed }, f) => `The door is ${f.length(height)} high; ${f.length(needed)} is needed.`,
  'door-passable/low': ({ height, missing, needed }, f) =>
    `The door is ${f.length(height)} high, ${f.length(missing)} less than ${f.length(needed)}. Raise its head.`,
  'door-approach/depth-free': ({ side, asked }, f) => `Before the door ${f.length(asked)} of floor is free, ${OPENED[side]}.`,
  'door-approach/depth-short': ({ side, asked, free }, f) =>
    `Before the door only ${f.length(free)} of floor is free; ${approachWords(side, asked, f)}. Clear the floor before it.`,
  'door-approach/latch-free': ({ side, asked }, f) => `Beside the latch of the door ${f.length(asked)} of floor is free, ${OPENED[side]}.`,
  'door-approach/latch-short': ({ side, asked, free }, f) =>
    `Beside the latch of the door only ${f.length(free)} of floor is free; ${approachWords(side, asked, f)}${side === 'push' ? ' if it has a closer and a latch' : ''}. Clear the floor there, or hang the door on its other jamb.`,
  'accessible-approach/walls-unknown': ({ areaMm2 }, f) =>
    `The room has ${f.area(areaMm2)}. Say whether what bounds it is fixed: then its ways are exempt.`,
  'accessible-approach/ask-walls': () => 'walls: fixed all around or not',
  'accessible-approach/exempt': ({ areaMm2 }, f) =>
    `With ${f.area(areaMm2)} within fixed walls the ways inside are exempt; the approach and a door must comply.`,
  'accessible-approach/no-way-in': () => 'Draw where people come in: the ways inside must be accessible.',
  'accessible-approach/ways-wide': ({ needed, ...room }, f) => `${notExemptWords(room, f)} Its ways are ${f.length(needed)} wide or wider.`,
  'accessible-approach/ways-pinched': ({ width, needed, mostLong, ...room }, f) =>
    `${notExemptWords(room, f)} Its narrowest way has ${f.length(width)}; under ${f.length(needed)} it may be ${f.length(mostLong)} long. Measure how long it is.`,
  'accessible-approach/ways-narrow': ({ width, needed, ...room }, f) =>
    `${notExemptWords(room, f)} Its narrowest way has ${f.length(width)}; ${f.length(needed)} is needed. Make room, or see whether the work itself needs it so.`,
  'accessible-approach/space': ({ width, length, near, turns }, f) =>
    `A wheelchair stands on ${f.length(width)} by ${f.length(length)} within ${f.length(near)} of the operator’s place, and ${TURNS[turns ?? 'none']}.`,
  'accessible-approach/no-space': ({ width, length, near }, f) =>
    `No free floor of ${f.length(width)} by ${f.length(length)}, which a wheelchair takes, is left within ${f.length(near)} of the operator’s place. Clear a place: a work area must have one.`,
  'reach-over-table/within': ({ table, reach, to, most }, f) =>
    `At ${nameWords(table)} hands reach ${f.length(reach)}, to ${REACHED[to]}; a person with a short reach has ${f.length(most)}.`,
  'reach-over-table/beyond': ({ table, reach, to, missing }, f) =>
    `At ${nameWords(table)} hands reach ${f.length(reach)}, to ${REACHED[to]}, ${f.length(missing)} more than a person with a short reach. Bring it nearer to the edge.`,
  'working-height/what': ({ table }) => `how high people work at ${nameWords(table)}`,
  'working-height/high': ({ table, height, from, to }, f) =>
    `The deck of ${nameWords(table)} is at ${f.length(height)}; standing, people work at ${f.length(from)} to ${f.length(to)}. Lower it, or give them a step.`,
  'working-height/low': ({ table, height, from, to }, f) =>
    `The deck of ${nameWords(table)} is at ${f.length(height)}; standing, people work at ${f.length(from)} to ${f.length(to)}. Raise it.`,
  'working-height/within': ({ table, height, from, to }, f) =>
    `The deck of ${nameWords(table)} is at ${f.length(height)}, within ${f.length(from)} to ${f.length(to)}.`,
  'rack-lift/what': () => 'whether a rack is too heavy to lift to the shelf',
  'rack-lift/light': ({ aboveShoulder, ...lift }, f) =>
    `${liftWords(lift, f)}${shoulderWords(aboveShoulder, f)}; in a hot, humid room less.`,
  'rack-lift/heavy': (lift, f) =>
    `${liftWords(lift, f)}. Load racks less, raise the shelf, use a dolly of the deck’s height, or lift by two.`,
  'rack-lift/heavy-overshelf': ({ aboveShoulder, ...lift }, f) =>
    `${liftWords(lift, f)}${shoulderWords(aboveShoulder, f)}. Keep empty or light racks there, hang the shelf lower, or lift by two.`,
  'light-enough/unknown': () => 'Measure the light at the machine, 30 in above the floor, and say it.',
  'light-enough/ask-light': () => 'light at the machine',
  'light-enough/dark': ({ light, needed }, f) =>
    `The light at the machine is ${f.illuminance(light)}; ${f.illuminance(needed)} is needed. Add a lamp that stands steam.`,
  'light-enough/below-rule': ({ light, by, asked }, f) =>
    `The light at the machine is ${f.illuminance(light)}; ${LIGHT_RULES[by]} for ${f.illuminance(asked)}. Add a lamp that stands steam.`,
  'light-enough/bright': ({ light, by, asked }, f) =>
    `The light at the machine is ${f.illuminance(light)}; ${LIGHT_RULES[by]} for ${f.illuminance(asked)}.`,
};

const PLACES: Readonly<Record<WaysToStationsMessages['ways-to-stations/barred']['place'], string>> = {
  'drop-off': 'the drop-off',
  scrap: 'the scrap opening',
  'pre-rinse': 'the pre-rinse',
  'soiled-landing': 'the soiled landing',
  machine: 'the machine',
  'clean-landing': 'the clean landing',
  storage: 'the clean storage',
  'hand-sink': 'the hand sink',
};

const OPENED = { pull: 'where it is pulled open', push: 'where it is pushed open' } as const;

const ASKED_SIDES = { pull: 'on the side that pulls', push: 'on the side that pushes' } as const;

const TURNS: Readonly<Record<'circle' | 't-shape' | 'none', string>> = {
  circle: 'turns in a circle of 60 in',
  't-shape': 'turns in a T of arms 36 in wide',
  none: 'no circle or T to turn in is free there, which a work room need not have',
};

const ENDS: Readonly<Record<RackLiftMessages['rack-lift/heavy']['end'], string>> = {
  deck: 'taking it off the clean table',
  shelf: 'setting it down on the lowest shelf',
  overshelf: 'lifting it to the overshelf',
};

const LIGHT_RULES: Readonly<Record<LightEnoughMessages['light-enough/bright']['by'], string>> = {
  'food-code': 'the food code asks',
  local: 'some counties ask',
  military: 'the guide for military kitchens asks',
};

const lipWords = ({ hood, lip }: HeadroomMessages['headroom/aside'], f: Formatter) =>
  `The lip of ${nameWords(hood)} is ${f.length(lip)} above the floor`;

const narrowWords = ({ width, missing, needed }: DoorPassableMessages['door-passable/narrow'], f: Formatter) =>
  `The door is ${f.length(width)} wide, ${f.length(missing)} less than ${f.length(needed)}`;

const approachWords = (side: 'pull' | 'push', asked: number, f: Formatter) =>
  `where the room must be accessible ${f.length(asked)} is asked ${ASKED_SIDES[side]}`;

const notExemptWords = ({ areaMm2, isMovable }: { areaMm2: number; isMovable: boolean }, f: Formatter) =>
  `The room is not exempt: it has ${f.area(areaMm2)}${isMovable ? ' and its bounds can be moved' : ''}.`;

const liftWords = ({ rackKg, limitKg, end, index }: RackLiftMessages['rack-lift/heavy'], f: Formatter) =>
  `A loaded rack of ${f.mass(rackKg)} against ${f.mass(limitKg)} when ${ENDS[end]}${index === null ? '' : `, lifting index ${formatNumber(index, 2)}`}`;

const shoulderWords = (above: number | null, f: Formatter) =>
  above === null ? '' : `; it is ${f.length(above)} above a short person’s shoulder`;
