import type { Codes } from '../../../plan';
import {
  type Check,
  connectionPlace,
  editHookUp,
  holdAgainst,
  type Measurement,
  machineName,
  type Repair,
  readingsFor,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { rule as breakerSizeFigure } from '../figures/breaker-size';
import { STANDARD_BREAKERS } from '../formulas/breakerSize';
import { chooseConductor, terminalOf } from '../formulas/support/conductor';
import { gaugeOf } from '../formulas/support/wire';

export const check: Check = {
  id: 'breaker-size',
  order: 650,
  title: 'The breaker fits the machine',
  group: 'power',
  unit: 'A',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'NEC',
    section: '210.20(A), 125 % of a load that lasts, and 240.6(A), standard ratings, as restated',
    confidence: 'secondary',
  },
  why: 'A breaker that is too small trips in the rush; one that is not made has no place in the panel. Whether a dish machine is a load that lasts, 3 h or more, its sources do not settle; the plan says which counts. Preliminary: the connection plate inside the control compartment governs, not the one outside, and a licensed electrician decides.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** Whether it is too large its wire says, in a check of its own; what the plate allows at most only the plate knows. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { breakerA } = placed.machine.hookUp;
  const place = connectionPlace(placed, 'power');
  const said = { value: breakerA, input: 'rating of the breaker', path: machinePath(placed, 'hookUp', 'breakerA') };
  return readingsFor(breakerSizeFigure, scene, placed).flatMap((reading) => [
    holdAgainst(said, reading, {
      part: 'rating',
      place,
      name: 'the breaker that the machine needs',
      say: (rating, needed, f) => {
        const stands = `The breaker of ${machineName(scene, placed)} is ${f.current(rating)}; ${LOAD_WORDS[scene.plan.codes.load]} needs ${f.current(needed)}`;
        return rating < needed
          ? `${stands}. Take the larger, with wire to suit; a licensed electrician decides by the plate inside the control compartment.`
          : `${stands}.`;
      },
      repairs: () => takeBreaker(placed, reading.value),
    }),
    ...measureStandard(scene, placed),
  ]);
}

const LOAD_WORDS: Readonly<Record<Codes['load'], string>> = {
  strictest: '125 % of its current, as of a load that lasts, the stricter,',
  continuous: '125 % of its current, as of a load that lasts,',
  'not-continuous': 'its current, as of a load that does not last,',
};

/** Above 100 A no rating is held, and nothing is said. */
function measureStandard(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { breakerA } = placed.machine.hookUp;
  if (breakerA === null || breakerA > Math.max(...STANDARD_BREAKERS)) return [];
  const isMade = STANDARD_BREAKERS.includes(breakerA);
  const next = STANDARD_BREAKERS.find((rating) => rating > breakerA) ?? breakerA;
  return [
    {
      part: 'standard',
      subjects: [placed.machine.id],
      place: connectionPlace(placed, 'power'),
      value: isMade,
      limit: true,
      unit: 'yes-no',
      relation: 'equals',
      severity: 'watch',
      say: (f) =>
        isMade
          ? `The breaker of ${machineName(scene, placed)}, ${f.current(breakerA)}, is a standard rating.`
          : `${f.current(breakerA)} is no standard rating of a breaker; the next is ${f.current(next)}. Ask the electrician which is meant.`,
    },
  ];
}

/** The breaker that is needed, and a thicker wire where it asks for one; nothing where that wire is for the code itself. */
function takeBreaker({ machine }: PlacedMachine, needed: number | null): Repair[] {
  const { breakerA, wire, markedFor75C } = machine.hookUp;
  if (needed === null || breakerA === null || breakerA >= needed) return [];
  const least = chooseConductor(needed, terminalOf(needed, markedFor75C === true));
  if (!least.ok) return [];
  const isThicker = wire === null || gaugeOf(wire) > gaugeOf(least.value);
  return [
    {
      id: 'take-breaker',
      label: (f) => `Take a breaker of ${f.current(needed)}${isThicker ? ` and ${least.value} AWG` : ''}`,
      edit: (draft) => editHookUp(draft, machine.id, { breakerA: needed, ...(isThicker ? { wire: least.value } : {}) }),
    },
  ];
}
