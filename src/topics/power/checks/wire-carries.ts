import type { Machine } from '../../../plan';
import {
  type Check,
  connectionPlace,
  createMessages,
  editHookUp,
  type Measurement,
  type Message,
  type Name,
  nameMachine,
  type Repair,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { askHookUp } from '../figures/support/askHookUp';
import { rule as wireNeededFigure } from '../figures/wire-needed';
import { boundAmpacity, type Terminal } from '../formulas/ampacity';
import { SMALL_WIRE_BREAKERS, terminalOf } from '../formulas/support/conductor';
import { gaugeOf, WIRE_SIZES } from '../formulas/support/wire';

export const check: Check = {
  id: 'wire-carries',
  order: 660,
  title: 'The wire carries what its breaker lets through',
  group: 'power',
  unit: 'A',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'NEC',
    section: 'Table 310.16, single values for copper; 240.4(D) and 110.14(C), as restated',
    confidence: 'secondary',
  },
  why: 'The breaker protects the wire. Behind one that is too large the wire burns before it trips. Preliminary: the table of the code itself and the connection plate inside the control compartment govern, and a licensed electrician decides.',
  measure: (scene) => scene.machines.map((placed) => measureMachine(scene, placed)),
};

/** What is said of a wire. */
export interface WireCarriesMessages {
  'wire-carries/unknown': { ask: Message };
  'wire-carries/not-public': Copper;
  'wire-carries/enough': Carried;
  'wire-carries/too-thin': Carried;
  'wire-carries/repair-take-wire': Pick<Copper, 'wire'>;
}

interface Copper {
  wire: Wire;
  terminal: Terminal;
}

interface Carried extends Copper {
  machine: Name;
  carriesA: number;
  breakerA: number;
}

const say = createMessages<WireCarriesMessages>();

type Wire = NonNullable<Machine['hookUp']['wire']>;

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const { wire, breakerA, markedFor75C } = placed.machine.hookUp;
  if (breakerA === null) return askFor(placed, 'breakerA');
  if (wire === null) return askFor(placed, 'wire');
  const [cool, hot] = [knownAt(wire, '60C', breakerA), knownAt(wire, '75C', breakerA)];
  // Where both columns say the same it does not matter whether the machine is marked.
  if (markedFor75C === null && breakerA <= 100 && cool.holds !== hot.holds) return askFor(placed, 'markedFor75C');
  const terminal = terminalOf(breakerA, markedFor75C === true);
  return judgeWire(scene, placed, breakerA, terminal === '75C' ? hot : cool, { wire, terminal });
}

function askFor(placed: PlacedMachine, field: 'wire' | 'breakerA' | 'markedFor75C'): Measurement {
  const ask = askHookUp(placed, field);
  return {
    value: null,
    limit: placed.machine.hookUp.breakerA,
    ask,
    message: say('wire-carries/unknown', { ask: ask.input }),
    ...about(placed),
  };
}

/** The most that a breaker on the wire may be, as far as it is public, and whether it is enough; null where that is not known. */
interface Known {
  carriesA: number;
  holds: boolean | null;
}

function knownAt(wire: Wire, terminal: Terminal, breakerA: number): Known {
  const { least, most } = boundAmpacity(wire, terminal);
  const small = SMALL_WIRE_BREAKERS[wire] ?? Number.POSITIVE_INFINITY;
  const carriesA = Math.min(least, small);
  if (carriesA >= breakerA) return { carriesA, holds: true };
  return { carriesA, holds: breakerA > small || breakerA >= most ? false : null };
}

function judgeWire(scene: Scene, placed: PlacedMachine, breakerA: number, { carriesA, holds }: Known, copper: Copper): Measurement {
  if (holds === null) return { value: null, limit: breakerA, message: say('wire-carries/not-public', copper), ...about(placed) };
  const carried = { ...copper, machine: nameMachine(scene, placed), carriesA, breakerA };
  return {
    value: carriesA,
    limit: breakerA,
    message: say(carriesA < breakerA ? 'wire-carries/too-thin' : 'wire-carries/enough', carried),
    ...(holds ? {} : { repairs: { ids: ['take-wire'], find: () => takeWire(scene, placed) } }),
    ...about(placed),
  };
}

const about = (placed: PlacedMachine) => ({ subjects: [placed.machine.id], place: connectionPlace(placed, 'power') });

/** The wire that the figure names; nothing where its size is for the code itself. */
function takeWire(scene: Scene, placed: PlacedMachine): Repair[] {
  const gauge = readingsFor(wireNeededFigure, scene, placed)[0]?.value;
  const needed = WIRE_SIZES.find((size) => gaugeOf(size) === gauge);
  if (needed === undefined) return [];
  return [
    {
      id: 'take-wire',
      label: say('wire-carries/repair-take-wire', { wire: needed }),
      edit: (draft) => editHookUp(draft, placed.machine.id, { wire: needed }),
    },
  ];
}
