import { inches } from '../lengths';
import { isAtMost } from '../limit';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';
import { BODIES, BODIES_SOURCE } from './bodies';

export interface ReachInputs {
  reachM: number;
  depthM: number;
}

/** What is left of a person's reach at the rear of a table, in metres; below 0 the rear is out of reach. */
export function reachOverDepth(inputs: ReachInputs): Outcome {
  const reason = findOutOfRange(reachOverDepthRecord, inputs);
  return reason === null ? { ok: true, value: inputs.reachM - inputs.depthM } : { ok: false, reason };
}

const small = BODIES['small-woman'].reachM;

export const reachOverDepthRecord: FormulaRecord<ReachInputs> = {
  id: 'reach-over-depth',
  title: 'Reach over a table',
  formula: 'r = reach − depth',
  inputs: {
    reachM: { text: 'Functional reach, wall to the tip of the index finger', unit: 'm', min: 0.4, max: 1.2 },
    depthM: { text: 'From the front of the table to what is taken', unit: 'm', min: 0, max: 3 },
  },
  result: { text: 'Reach left over', unit: 'm', min: -2.6, max: 1.2 },
  source: [BODIES_SOURCE],
  unprinted: 'The reach is read; the table beside it is arithmetic.',
  examples: [
    {
      kind: 'regression',
      from: 'a table of 24 in: within reach (L-ET3)',
      inputs: { reachM: small, depthM: inches(24) },
      result: 0.0674,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: 'a table of 30 in: 85 mm out of reach (L-ET3)',
      inputs: { reachM: small, depthM: inches(30) },
      result: -0.085,
      tolerance: 1e-9,
    },
  ],
};

/** Which way a person in a wheelchair reaches. */
export const REACH_DIRECTIONS = ['forward', 'side'] as const;
export type ReachDirection = (typeof REACH_DIRECTIONS)[number];

export interface AccessibleReachInputs {
  direction: ReachDirection;
  /** How deep the obstruction is that is reached over; 0 for none. */
  depthM: number;
  /** How high the obstruction is; it counts for a reach to the side. */
  obstructionM: number;
}

/** Largest height in metres that a person in a wheelchair reaches; the least is 15 in. Dish machines themselves are exempt. */
export function accessibleReach(inputs: AccessibleReachInputs): Outcome {
  const reason = findOutOfRange(accessibleReachRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const { direction, depthM, obstructionM } = inputs;
  if (direction === 'forward') return { ok: true, value: inches(isAtMost(depthM, inches(20)) ? 48 : 44) };
  if (!isAtMost(depthM, inches(24))) return { ok: false, reason: `depthM is ${depthM}; ${also}` };
  if (depthM === 0 || (obstructionM === 0 && isAtMost(depthM, inches(10)))) return { ok: true, value: inches(48) };
  if (!isAtMost(obstructionM, inches(34))) return { ok: false, reason: `obstructionM is ${obstructionM}; ${also}` };
  return { ok: true, value: inches(isAtMost(depthM, inches(10)) ? 48 : 46) };
}

const also = 'a reach to the side goes over at most 24 in of depth and 34 in of height';

const forward = 'ADA Standards 308.2, US Access Board guide';
const side = 'ADA Standards 308.3, US Access Board guide';
const at = (direction: ReachDirection, depth: number, obstruction = 30): AccessibleReachInputs => ({
  direction,
  depthM: inches(depth),
  obstructionM: inches(obstruction),
});

export const accessibleReachRecord: FormulaRecord<AccessibleReachInputs> = {
  id: 'accessible-reach',
  title: 'Accessible reach',
  formula: 'forward 48 in over 20 in, 44 in over 25 in; to the side 48 in over 10 in, 46 in over 24 in',
  inputs: {
    direction: { text: 'Which way', choices: REACH_DIRECTIONS },
    depthM: { text: 'Depth of what is reached over', unit: 'm', min: 0, max: inches(25) },
    obstructionM: { text: 'Height of what is reached over', unit: 'm', min: 0, max: 2 },
  },
  result: { text: 'Largest height', unit: 'm', min: inches(44), max: inches(48) },
  also,
  source: [
    { text: `${forward} (L-A17, L-A18)`, confidence: 'read' },
    { text: `${side} (L-A17, L-A19)`, confidence: 'read' },
  ],
  examples: [
    { kind: 'source', from: `${forward}: over 20 in`, inputs: at('forward', 20), result: inches(48), tolerance: 0 },
    { kind: 'source', from: `${forward}: over 25 in`, inputs: at('forward', 25), result: inches(44), tolerance: 0 },
    { kind: 'source', from: `${side}: over 10 in`, inputs: at('side', 10), result: inches(48), tolerance: 0 },
    { kind: 'source', from: `${side}: over 24 in`, inputs: at('side', 24), result: inches(46), tolerance: 0 },
  ],
};
