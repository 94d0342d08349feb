import type { Machine } from '../../../plan';
import { type Check, connectionPlace, editHookUp, type Measurement, machineName, type Repair, readingsFor } from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import type { Formatter } from '../../../units';
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

type Wire = NonNullable<Machine['hookUp']['wire']>;

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const { wire, breakerA, markedFor75C } = placed.machine.hookUp;
  const ask = (field: 'wire' | 'breakerA' | 'markedFor75C', input: string): Measurement => ({
    value: null,
    limit: breakerA,
    ask: { input, path: machinePath(placed, 'hookUp', field) },
    say: () => `To know whether the wire carries what the breaker lets through, say the ${input}.`,
    ...about(placed),
  });
  if (breakerA === null) return ask('breakerA', 'rating of the breaker');
  if (wire === null) return ask('wire', 'size of the wire');
  const [cool, hot] = [knownAt(wire, '60C', breakerA), knownAt(wire, '75C', breakerA)];
  // Where both columns say the same it does not matter whether the machine is marked.
  if (markedFor75C === null && breakerA <= 100 && cool.holds !== hot.holds) return ask('markedFor75C', 'mark for terminals of 75 °C');
  const isHot = terminalOf(breakerA, markedFor75C === true) === '75C';
  return judgeWire(scene, placed, breakerA, isHot ? hot : cool, { wire, at: isHot ? '75 °C' : '60 °C' });
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

function judgeWire(scene: Scene, placed: PlacedMachine, breakerA: number, { carriesA, holds }: Known, words: WireWords): Measurement {
  const machine = machineName(scene, placed);
  if (holds === null) {
    const say = () =>
      `What ${words.wire} AWG carries at ${words.at} only the code’s own table says; have a licensed electrician look it up for the breaker.`;
    return { value: null, limit: breakerA, say, ...about(placed) };
  }
  return {
    value: carriesA,
    limit: breakerA,
    say: (f) => sayWire(machine, breakerA, carriesA, words, f),
    repairs: () => (holds ? [] : takeWire(scene, placed)),
    ...about(placed),
  };
}

interface WireWords {
  wire: Wire;
  /** The terminals' temperature. */
  at: string;
}

function sayWire(machine: string, breakerA: number, carriesA: number, { wire, at }: WireWords, f: Formatter): string {
  const stands = `The wire of ${machine}, copper ${wire} AWG at terminals of ${at}, may stand behind ${f.current(carriesA)}; the breaker is ${f.current(breakerA)}`;
  return carriesA < breakerA ? `${stands}. Take thicker wire; a licensed electrician decides.` : `${stands}.`;
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
      label: () => `Take ${needed} AWG`,
      edit: (draft) => editHookUp(draft, placed.machine.id, { wire: needed }),
    },
  ];
}
