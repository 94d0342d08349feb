import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { altshulTsal } from './altshulTsal';
import { churchill } from './churchill';
import { colebrook } from './colebrook';
import { haaland } from './haaland';
import { LAMINAR_LIMIT, laminar } from './laminar';
import type { FrictionInputs } from './support/frictionInputs';
import { swameeJain } from './swameeJain';

export const FRICTION_METHODS = ['colebrook', 'haaland', 'swamee-jain', 'altshul-tsal', 'churchill'] as const;
export type FrictionMethod = (typeof FRICTION_METHODS)[number];

export interface FrictionFactorInputs extends FrictionInputs {
  method: FrictionMethod;
}

/**
 * Darcy friction factor by the form of one's choice; laminar flow below Re 2300 for all of them. Between
 * laminar and turbulent only Churchill's form answers; the others refuse there.
 */
export function frictionFactor(inputs: FrictionFactorInputs): FormulaResult {
  const refusal = findOutOfRange(frictionFactorRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { method, ...flow } = inputs;
  if (method === 'churchill') return churchill(flow);
  return flow.reynolds <= LAMINAR_LIMIT ? laminar({ reynolds: flow.reynolds }) : TURBULENT[method](flow);
}

const TURBULENT = { colebrook, haaland, 'swamee-jain': swameeJain, 'altshul-tsal': altshulTsal };

const library = 'fluids library, tests of friction factors';

export const frictionFactorRecord: FormulaRecord<FrictionFactorInputs> = {
  id: 'friction-factor',
  title: 'Friction factor',
  formula: 'f = 64/Re up to Re 2300, else by the form chosen',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 1, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 0, max: 0.05 },
    method: { text: 'Form', choices: FRICTION_METHODS },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 65 },
  source: [{ text: `${library}`, documents: ['fluids-library'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${library}`,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4, method: 'colebrook' },
      result: 0.018513866077471,
      tolerance: 1e-11,
    },
    {
      kind: 'source',
      from: `${library}`,
      inputs: { reynolds: 128, relativeRoughness: 1e-4, method: 'haaland' },
      result: 0.5,
      tolerance: 0,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 150, formulas: [formula(frictionFactorRecord, frictionFactor)] }];
