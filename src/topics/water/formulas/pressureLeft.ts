import { type Entries, type FormulaRecord, type FormulaResult, feet, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface PressureLeftInputs {
  supplyPa: number;
  lossPa: number;
  riseM: number;
}

/** Pressure in pascals that is left at the machine: the supply's, less friction, less the height that the pipe climbs. Below 0 nothing flows. */
export function pressureLeft(inputs: PressureLeftInputs): FormulaResult {
  const refusal = findOutOfRange(pressureLeftRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.supplyPa - inputs.lossPa - inputs.riseM * PA_PER_M };
}

/** A metre of cold water. */
const PA_PER_M = toSI(1, 'ftH2O') / feet(1);

const page = 'Reference page: 1 psi is 2.31 ft of water';

export const pressureLeftRecord: FormulaRecord<PressureLeftInputs> = {
  id: 'pressure-left',
  title: 'Pressure left at the machine',
  formula: 'p = supply − loss − ρ g · rise',
  inputs: {
    supplyPa: { text: 'Pressure at the stub while water flows', unit: 'Pa', min: 0, max: 2e6 },
    lossPa: { text: 'Loss of the line', unit: 'Pa', min: 0, max: 2e6 },
    riseM: { text: 'Height from the stub to the machine; below 0 when the stub is higher', unit: 'm', min: -20, max: 20 },
  },
  result: { text: 'Pressure left', unit: 'Pa', min: -2.2e6, max: 2.2e6 },
  source: [{ text: page, documents: ['calculator-pages'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${page}: climbing 2.31 ft takes 1 psi`,
      inputs: { supplyPa: toSI(20, 'psi'), lossPa: 0, riseM: feet(2.31) },
      result: toSI(19, 'psi'),
      tolerance: 15,
    },
    {
      kind: 'regression',
      from: '60 psi less 25 psi on the level',
      inputs: { supplyPa: toSI(60, 'psi'), lossPa: toSI(25, 'psi'), riseM: 0 },
      result: toSI(35, 'psi'),
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 880, formulas: [formula(pressureLeftRecord, pressureLeft)] }];
