import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { BODIES, BODIES_SOURCE } from './support/bodies';

export interface ReachInputs {
  reachM: number;
  depthM: number;
}

/** What is left of a person's reach at the rear of a table, in metres; below 0 the rear is out of reach. */
export function reachOverDepth(inputs: ReachInputs): FormulaResult {
  const refusal = findOutOfRange(reachOverDepthRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.reachM - inputs.depthM } : { ok: false, refusal };
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
      from: 'a table of 24 in: within reach',
      inputs: { reachM: small, depthM: inches(24) },
      result: 0.0674,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: 'a table of 30 in: 85 mm out of reach',
      inputs: { reachM: small, depthM: inches(30) },
      result: -0.085,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1290, formulas: [formula(reachOverDepthRecord, reachOverDepth)] }];
