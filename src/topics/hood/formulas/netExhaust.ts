import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface NetExhaustInputs {
  totalM3s: number;
  /** Air blown straight into the hood's cavity, which carries no vapour of the room away. */
  intoCavityM3s: number;
}

/** Net exhaust of a hood in m³/s: what a rule of exhaust counts. */
export function netExhaust(inputs: NetExhaustInputs): FormulaResult {
  const refusal = findOutOfRange(netExhaustRecord, inputs) ?? findBlown(inputs);
  return refusal === null ? { ok: true, value: inputs.totalM3s - inputs.intoCavityM3s } : { ok: false, refusal };
}

const also = 'no more is blown into a hood than it takes';

const findBlown = ({ totalM3s, intoCavityM3s }: NetExhaustInputs) =>
  intoCavityM3s <= totalM3s ? null : createRefusal(netExhaustRecord, 'blown-exceeds-taken', { intoCavityM3s, totalM3s });

const code = 'IMC 507.3.4: total exhaust less the air supplied directly into the hood cavity';

export const netExhaustRecord: FormulaRecord<NetExhaustInputs> = {
  id: 'net-exhaust',
  title: 'Net exhaust',
  formula: 'Q_net = Q − Q_cavity',
  inputs: {
    totalM3s: { text: 'Exhaust of the hood', unit: 'm3/s', min: 0, max: 100 },
    intoCavityM3s: { text: 'Air blown into its cavity', unit: 'm3/s', min: 0, max: 100 },
  },
  result: { text: 'Net exhaust', unit: 'm3/s', min: 0, max: 100 },
  source: [{ text: code, documents: ['imc'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${code}; 10 % of 400 cfm leave 360`,
      inputs: { totalM3s: toSI(400, 'cfm'), intoCavityM3s: toSI(40, 'cfm') },
      result: toSI(360, 'cfm'),
      tolerance: 1e-12,
    },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 100, formulas: [formula(netExhaustRecord, netExhaust)] }];
