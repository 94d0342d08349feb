import type { Codes } from '../../plan';
import type { BreakerSizeMessages } from '../../topics/power/checks/breaker-size';
import type { PowerAgreesMessages } from '../../topics/power/checks/power-agrees';
import type { SignalsDriveContactorsMessages } from '../../topics/power/checks/signals-drive-contactors';
import type { VoltageDropMessages } from '../../topics/power/checks/voltage-drop';
import type { WireCarriesMessages } from '../../topics/power/checks/wire-carries';
import type { WorkingSpaceMessages } from '../../topics/power/checks/working-space';
import type { BreakerSizeFigureMessages } from '../../topics/power/figures/breaker-size';
import type { LoadCurrentMessages } from '../../topics/power/figures/load-current';
import type { HookUpMessages } from '../../topics/power/figures/support/askHookUp';
import type { PowerMessages } from '../../topics/power/figures/support/power';
import type { ToGroundMessages } from '../../topics/power/figures/support/toGround';
import type { VoltageDropFigureMessages } from '../../topics/power/figures/voltage-drop';
import type { WireNeededMessages } from '../../topics/power/figures/wire-needed';
import type { WorkingDepthMessages } from '../../topics/power/figures/working-depth';
import { type Formatter, formatNumber, UNIT_SPACE } from '../../units';
import { figureWords } from '../quantities/figureWords';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { list, phaseWords, powerWords, sentence } from './words';

/** The words of power: version, breaker, wire, signals, room to work. */
export const power: Wording<
  PowerMessages &
    HookUpMessages &
    ToGroundMessages &
    PowerAgreesMessages &
    BreakerSizeMessages &
    SignalsDriveContactorsMessages &
    VoltageDropMessages &
    WireCarriesMessages &
    WorkingSpaceMessages &
    BreakerSizeFigureMessages &
    LoadCurrentMessages &
    VoltageDropFigureMessages &
    WireNeededMessages &
    WorkingDepthMessages
> = {
  'power/caution': () =>
    'Preliminary: the connection plate inside the control compartment governs, and a licensed electrician decides by local code.',
  'power/ask-version': () => 'electrical version of the machine',
  'power/ask-supply': ({ field }) => `${field} of the supply`,
  'power/ask-to-ground': () => 'voltage to ground',
  'power/ask-breaker': () => 'rating of the breaker',
  'power/ask-wire': () => 'size of the wire',
  'power/ask-wire-way': () => 'way of the wires from the panel to the machine',
  'power/ask-mark': () => 'mark for terminals of 75 °C',

  'power-agrees/voltage': ({ voltage }) => `${voltage} V`,
  'power-agrees/phase': ({ phase }) => phaseWords(phase),
  'power-agrees/undecided': ({ made }) => `No electrical version is chosen. The machine is made for ${list(made.map(madeWords), 'or')}.`,
  'power-agrees/not-made': ({ ordered, made }) =>
    `The order says ${madeWords(ordered)}; the machine is made for ${list(made.map(madeWords), 'or')}. Change the order.`,
  'power-agrees/order-agrees': ({ drawn }, _f, tell) => `Order and machine agree: ${tell(drawn)}.`,
  'power-agrees/order-differs': ({ ordered, drawn }, _f, tell) =>
    `The order says ${tell(ordered)}; the machine drawn is ${tell(drawn)}. It cannot be changed on site: settle it with a licensed electrician before ordering.`,
  'power-agrees/supply-unknown': ({ field, drawn }) =>
    `The ${field} in the building is not known; the machine drawn needs ${madeWords(drawn)}.`,
  'power-agrees/supply-agrees': ({ drawn }) => `Supply and machine agree: ${madeWords(drawn)}.`,
  'power-agrees/supply-near': ({ found, drawn }) =>
    `The building supplies ${madeWords(found)}; the machine drawn needs ${madeWords(drawn)}. See that its plate lists that voltage.`,
  'power-agrees/supply-differs': ({ found, drawn }) =>
    `The building supplies ${madeWords(found)}; the machine drawn needs ${madeWords(drawn)}. Choose another version, or have a licensed electrician bring that supply.`,
  'power-agrees/repair-choose': ({ version, isOpened }) =>
    `Draw the machine for ${madeWords(version)}${isOpened ? '; its breaker and wire are open again' : ''}`,

  'breaker-size/needed': () => 'the breaker that the machine needs',
  'breaker-size/enough': (params, f) => `${breakerWords(params, f)}.`,
  'breaker-size/too-small': (params, f) =>
    `${breakerWords(params, f)}. Take the larger, with wire to suit; a licensed electrician decides by the plate inside the control compartment.`,
  'breaker-size/standard': ({ machine, breakerA }, f) =>
    `The breaker of ${nameWords(machine)}, ${f.current(breakerA)}, is a standard rating.`,
  'breaker-size/not-standard': ({ breakerA, nextA }, f) =>
    `${f.current(breakerA)} is no standard rating of a breaker; the next is ${f.current(nextA)}. Ask the electrician which is meant.`,
  'breaker-size/repair-take-breaker': ({ breakerA, wire }, f) =>
    `Take a breaker of ${f.current(breakerA)}${wire === null ? '' : ` and ${wire} AWG`}`,
  'breaker-size/for-load': ({ load }) => FOR_LOAD[load],

  'wire-carries/unknown': ({ ask }, _f, tell) => `To know whether the wire carries what the breaker lets through, say the ${tell(ask)}.`,
  'wire-carries/not-public': ({ wire, terminal }) =>
    `What ${wire} AWG carries at ${TERMINALS[terminal]} only the code’s own table says; have a licensed electrician look it up for the breaker.`,
  'wire-carries/enough': (params, f) => `${wireWords(params, f)}.`,
  'wire-carries/too-thin': (params, f) => `${wireWords(params, f)}. Take thicker wire; a licensed electrician decides.`,
  'wire-carries/repair-take-wire': ({ wire }) => `Take ${wire} AWG`,
  'wire-needed/for-breaker': ({ breaker }) => (breaker === 'next' ? 'For the next standard breaker.' : 'For the breaker of the plan.'),
  'wire-needed/terminals': ({ terminal }) =>
    terminal === '60C'
      ? 'Terminals of 60 °C, as up to 100 A unless the machine is marked for 75 °C.'
      : 'Terminals of 75 °C, as the machine is marked, or above 100 A.',

  'voltage-drop/lost': () => 'the voltage lost in the wires',
  'voltage-drop/little': (params, f) => `${dropWords(params, f)}; ${percent(params.most)} is recommended at most.`,
  'voltage-drop/much': (params, f) =>
    `${dropWords(params, f)}; ${percent(params.most)} is recommended at most. Take thicker wire or a shorter way; a licensed electrician decides.`,
  'voltage-drop/way': ({ from }) => WIRE_WAYS[from],
  'voltage-drop/resistive': () => 'As for heaters, power factor 1, and by the resistance of copper at 75 °C from memory.',

  'signals-drive-contactors/ask-driven': ({ signal }) => `device that the ${SIGNALS[signal]} drives`,
  'signals-drive-contactors/unknown': (params) => `Say what ${signalWords(params)} drives: a contactor, a motor or nothing.`,
  'signals-drive-contactors/fit': (params) =>
    sentence(`${signalWords(params)} drives ${params.drives === 'nothing' ? 'nothing' : 'a contactor'}.`),
  'signals-drive-contactors/motor': (params) =>
    sentence(
      `${signalWords(params)} drives ${MOTORS[params.signal]} directly; it can carry a coil alone. Have a licensed electrician set a contactor between.`,
    ),
  'signals-drive-contactors/repair-set-contactor': () => 'Set a contactor between',

  'working-space/room': ({ machine }) => `the room to work before ${partWords(machine)}`,
  'working-space/enough': ({ machine, free, needed, width }, f) =>
    sentence(`${f.length(free)} is free before ${partWords(machine)}; ${f.length(needed)} is needed, ${f.length(width)} wide.`),
  'working-space/short': ({ by, machine, free, needed, width, missing }, f) =>
    sentence(
      `${nameWords(by)} leaves ${f.length(free)} before ${partWords(machine)}; ${f.length(needed)} is needed, ${f.length(width)} wide and not for storage. Make ${f.length(missing)} more room.`,
    ),
  'working-space/door-opens': ({ width }, f) =>
    sentence(`the door of the panel board, as of one leaf ${f.length(width)} wide, can open by 90°.`),
  'working-space/door-short': ({ by, free, width }, f) =>
    sentence(
      `${nameWords(by)} leaves ${f.length(free)} before the panel board; its door, as of one leaf ${f.length(width)} wide, must open by 90°. Make room, or see that it has narrower leaves.`,
    ),
  'working-depth/opposite': ({ condition }) => OPPOSITE[condition],
  'working-depth/as-stated': () =>
    'For the voltage to ground that the plan states: a 120/208 V supply from a star point is 120 V to ground, one of 277/480 V 277 V.',
  'working-depth/any-earthing': () => 'However the supply is grounded: from a star point 208 V are 120 V to ground, from a corner 208 V.',

  'load-current/as-heaters': () => 'As for heaters alone, power factor 1; motors draw somewhat more.',
  'load-current/data-sheet': () => 'As the data sheet states it.',
  'load-current/beside': ({ currentA }) => `The data sheet states ${formatNumber(currentA, 1)} A.`,
};

const madeWords = ({ voltage, phase }: PowerAgreesMessages['power-agrees/supply-agrees']['drawn']) => powerWords(voltage, phase);

const breakerWords = ({ machine, breakerA, neededA, load }: BreakerSizeMessages['breaker-size/enough'], f: Formatter) =>
  `The breaker of ${nameWords(machine)} is ${f.current(breakerA)}; ${LOADS[load]} needs ${f.current(neededA)}`;

const LOADS: Readonly<Record<Codes['load'], string>> = {
  strictest: '125 % of its current, as of a load that lasts, the stricter,',
  continuous: '125 % of its current, as of a load that lasts,',
  'not-continuous': 'its current, as of a load that does not last,',
};

/** What counts as lasting is from memory. */
const FOR_LOAD: Readonly<Record<Codes['load'], string>> = {
  strictest:
    'For 125 % of the current, as a load that lasts 3 h or more: the sources do not settle whether a dish machine is one, and this is the stricter.',
  continuous: 'For 125 % of the current: the plan counts the machine as a load that lasts 3 h or more.',
  'not-continuous': 'For the current itself: the plan counts the machine as a load that does not last 3 h.',
};

const wireWords = ({ machine, wire, terminal, carriesA, breakerA }: WireCarriesMessages['wire-carries/enough'], f: Formatter) =>
  `The wire of ${nameWords(machine)}, copper ${wire} AWG at terminals of ${TERMINALS[terminal]}, may stand behind ${f.current(carriesA)}; the breaker is ${f.current(breakerA)}`;

const TERMINALS = { '60C': '60 °C', '75C': '75 °C' } as const;

const dropWords = ({ machine, lostV, ofV, share }: VoltageDropMessages['voltage-drop/little'], f: Formatter) =>
  `On the way to ${nameWords(machine)} the wires lose ${figureWords(lostV, 'V', f)} of ${f.voltage(ofV)}, ${percent(share)}`;

const percent = (share: number) => `${formatNumber(share * 100, 1)}${UNIT_SPACE}%`;

const WIRE_WAYS: Readonly<Record<VoltageDropFigureMessages['voltage-drop/way']['from'], string>> = {
  plan: 'Along the way that the plan states.',
  panel: 'From the top of the panel board to the machine at right angles; walls and ceilings may make it longer.',
  stub: 'From the power stub to the machine at right angles; what lies between panel board and stub is not in it.',
};

type Signal = SignalsDriveContactorsMessages['signals-drive-contactors/unknown'];

const signalWords = ({ signal, machine }: Signal) => `the ${SIGNALS[signal]} of ${nameWords(machine)}`;

const SIGNALS: Readonly<Record<Signal['signal'], string>> = {
  vent: 'vent signal',
  'rinse-aid': 'rinse-aid signal',
  detergent: 'detergent signal',
};

const MOTORS: Readonly<Record<Signal['signal'], string>> = { vent: 'a fan', 'rinse-aid': 'a pump', detergent: 'a pump' };

/** The controls of a machine; the panel board where there is none. */
const partWords = (machine: WorkingSpaceMessages['working-space/room']['machine']) =>
  machine === null ? 'the panel board' : `the controls of ${nameWords(machine)}`;

const OPPOSITE: Readonly<Record<WorkingDepthMessages['working-depth/opposite']['condition'], string>> = {
  A: 'Nothing live and nothing grounded opposite.',
  B: 'Something grounded opposite; concrete, brick and tile count as grounded.',
  C: 'Live parts on both sides.',
};
