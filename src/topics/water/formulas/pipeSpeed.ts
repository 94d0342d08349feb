import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { toSI } from '../../../units';

export interface PipeSpeedInputs {
  flowM3S: number;
  boreM: number;
}

/** Mean speed of water in a full round pipe, in m/s. */
export function pipeSpeed(inputs: PipeSpeedInputs): FormulaResult {
  const refusal = findOutOfRange(pipeSpeedRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.flowM3S / ((Math.PI / 4) * inputs.boreM ** 2) } : { ok: false, refusal };
}

const page = 'Calculator page: v = 0.4085 q / d², ft/s, gpm, in';

export const pipeSpeedRecord: FormulaRecord<PipeSpeedInputs> = {
  id: 'pipe-speed',
  title: 'Speed in a water pipe',
  formula: 'v = V̇ / (π d² / 4)',
  inputs: {
    flowM3S: { text: 'Flow', unit: 'm3/s', min: 0, max: 0.02 },
    boreM: { text: 'Inside diameter', unit: 'm', min: 0.008, max: 0.16 },
  },
  result: { text: 'Speed', unit: 'm/s', min: 0, max: 400 },
  source: [{ text: page, documents: ['calculator-pages'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${page}: 1 gpm in 1 in`,
      inputs: { flowM3S: toSI(1, 'gpm'), boreM: inches(1) },
      result: toSI(0.4085, 'ft/s'),
      tolerance: toSI(0.00005, 'ft/s'),
    },
    {
      kind: 'regression',
      from: '200 gpm in 3.048 in: 8.79 ft/s',
      inputs: { flowM3S: toSI(200, 'gpm'), boreM: inches(3.048) },
      result: toSI(8.79, 'ft/s'),
      tolerance: toSI(0.01, 'ft/s'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 860, formulas: [formula(pipeSpeedRecord, pipeSpeed)] }];
