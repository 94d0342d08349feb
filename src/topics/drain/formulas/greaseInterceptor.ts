import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export const DISH_MACHINE_PRESENCE = ['with-dish-machine', 'without'] as const;

export interface InterceptorInputs {
  fixtureUnits: number;
  machine: (typeof DISH_MACHINE_PRESENCE)[number];
}

/** Volume in m³ of a grease interceptor by the rule of one city. Others differ: the local authority sizes it. */
export function greaseInterceptor(inputs: InterceptorInputs): FormulaResult {
  const refusal = findOutOfRange(greaseInterceptorRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const least = inputs.machine === 'with-dish-machine' ? 500 : 100;
  return { ok: true, value: toSI(Math.max(least, inputs.fixtureUnits * GPM_PER_UNIT * MINUTES), 'gal') };
}

const GPM_PER_UNIT = 3;
const MINUTES = 12;

const rule = 'One city: units × 3 gpm × 12 min, at least 100 gal, 500 gal with a dish machine';

export const greaseInterceptorRecord: FormulaRecord<InterceptorInputs> = {
  id: 'grease-interceptor',
  title: 'Grease interceptor',
  formula: 'V = DFU · 3 gpm · 12 min, at least 100 gal, 500 gal with a dish machine',
  inputs: {
    fixtureUnits: { text: 'Drainage fixture units that it serves', unit: 'count', min: 0, max: 500 },
    machine: { text: 'Whether a dish machine drains into it', choices: DISH_MACHINE_PRESENCE },
  },
  result: { text: 'Volume', unit: 'm3', min: 0, max: 70 },
  source: [{ text: rule, documents: ['city-grease-interceptor'], confidence: 'secondary' }],
  unprinted: 'The rule is restated; its figures are worked out here.',
  examples: [
    {
      kind: 'regression',
      from: '20 units: 720 gal',
      inputs: { fixtureUnits: 20, machine: 'with-dish-machine' },
      result: toSI(720, 'gal'),
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: '10 units: 360, so 500 gal',
      inputs: { fixtureUnits: 10, machine: 'with-dish-machine' },
      result: toSI(500, 'gal'),
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1140, formulas: [formula(greaseInterceptorRecord, greaseInterceptor)] }];
