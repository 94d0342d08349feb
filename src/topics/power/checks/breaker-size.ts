import type { Codes, Machine } from '../../../plan';
import {
  type Check,
  connectionPlace,
  createMessages,
  editHookUp,
  holdAgainst,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  type Offer,
  type Repair,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as breakerSizeFigure } from '../figures/breaker-size';
import { askHookUp } from '../figures/support/askHookUp';
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

/** What is said of a breaker. */
export interface BreakerSizeMessages {
  'breaker-size/needed': NoParams;
  'breaker-size/enough': Compared;
  'breaker-size/too-small': Compared;
  'breaker-size/standard': { machine: Name; breakerA: number };
  'breaker-size/not-standard': { breakerA: number; nextA: number };
  /** With the wire that it asks for; null where that of the plan will do. */
  'breaker-size/repair-take-breaker': { breakerA: number; wire: Machine['hookUp']['wire'] };
}

interface Compared extends Pick<Codes, 'load'> {
  machine: Name;
  breakerA: number;
  neededA: number;
}

const say = createMessages<BreakerSizeMessages>();

/** Whether it is too large its wire says, in a check of its own; what the plate allows at most only the plate knows. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { breakerA } = placed.machine.hookUp;
  const place = connectionPlace(placed, 'power');
  const said = { value: breakerA, ...askHookUp(placed, 'breakerA') };
  const common = { machine: nameMachine(scene, placed), load: scene.plan.codes.load };
  return readingsFor(breakerSizeFigure, scene, placed).flatMap((reading) => [
    holdAgainst(said, reading, {
      part: 'rating',
      place,
      what: say('breaker-size/needed'),
      message: (rating, needed) =>
        say(rating < needed ? 'breaker-size/too-small' : 'breaker-size/enough', { ...common, breakerA: rating, neededA: needed }),
      ...offerBreaker(placed, reading.value),
    }),
    ...measureStandard(scene, placed),
  ]);
}

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
      message: isMade
        ? say('breaker-size/standard', { machine: nameMachine(scene, placed), breakerA })
        : say('breaker-size/not-standard', { breakerA, nextA: next }),
    },
  ];
}

/** Nothing where the breaker is not known or large enough. */
function offerBreaker(placed: PlacedMachine, needed: number | null): { repairs?: Offer } {
  const { breakerA } = placed.machine.hookUp;
  if (needed === null || breakerA === null || breakerA >= needed) return {};
  return { repairs: { ids: ['take-breaker'], find: () => takeBreaker(placed, needed) } };
}

/** The breaker that is needed, and a thicker wire where it asks for one; nothing where that wire is for the code itself. */
function takeBreaker({ machine }: PlacedMachine, needed: number): Repair[] {
  const { wire, markedFor75C } = machine.hookUp;
  const least = chooseConductor(needed, terminalOf(needed, markedFor75C === true));
  if (!least.ok) return [];
  const isThicker = wire === null || gaugeOf(wire) > gaugeOf(least.value);
  return [
    {
      id: 'take-breaker',
      label: say('breaker-size/repair-take-breaker', { breakerA: needed, wire: isThicker ? least.value : null }),
      edit: (draft) => editHookUp(draft, machine.id, { breakerA: needed, ...(isThicker ? { wire: least.value } : {}) }),
    },
  ];
}
