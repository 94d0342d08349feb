import { bisect, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { saturatedPa } from './saturationPressure';
import { handbook } from './support/notes';

export interface DewPointInputs {
  vapourPa: number;
}

/** Temperature in °C at which vapour of such a pressure begins to condense. Below 0 °C it is the frost point. */
export function dewPoint(inputs: DewPointInputs): FormulaResult {
  const refusal = findOutOfRange(dewPointRecord, inputs);
  return refusal === null ? { ok: true, value: bisect((t) => saturatedPa(t) - inputs.vapourPa, -100, 200) } : { ok: false, refusal };
}

const comment = 'PsychroLib, its documentation: air of 25 °C and 80 %';

export const dewPointRecord: FormulaRecord<DewPointInputs> = {
  id: 'dew-point',
  title: 'Dew point',
  formula: 'p_ws(t_d) = p_w, solved by halving',
  inputs: { vapourPa: { text: 'Pressure of the vapour', unit: 'Pa', min: 0.01, max: 120_000 } },
  result: { text: 'Dew point', unit: 'C', min: -100, max: 106 },
  source: [{ text: handbook('equations 5 and 6 turned about'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: comment, inputs: { vapourPa: 0.8 * saturatedPa(25) }, result: 21.3094, tolerance: 1e-3 },
    { kind: 'source', from: handbook('Table 3'), inputs: { vapourPa: 12_351.3 }, result: 50, tolerance: 0.01 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 440, formulas: [formula(dewPointRecord, dewPoint)] }];
