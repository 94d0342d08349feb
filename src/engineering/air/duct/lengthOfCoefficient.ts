import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

interface DuctOfFriction {
  diameterM: number;
  frictionFactor: number;
}

export interface LengthOfCoefficientInputs extends DuctOfFriction {
  coefficient: number;
}

/** Length in metres of straight duct that loses as much as a fitting of this coefficient. */
export function lengthOfCoefficient(inputs: LengthOfCoefficientInputs): Outcome {
  const reason = findOutOfRange(lengthOfCoefficientRecord, inputs);
  return reason === null ? { ok: true, value: (inputs.coefficient * inputs.diameterM) / inputs.frictionFactor } : { ok: false, reason };
}

export interface CoefficientOfLengthInputs extends DuctOfFriction {
  lengthM: number;
}

/** The coefficient of a fitting that loses as much as this length of straight duct: the other way about. */
export function coefficientOfLength(inputs: CoefficientOfLengthInputs): Outcome {
  const reason = findOutOfRange(coefficientOfLengthRecord, inputs);
  return reason === null ? { ok: true, value: (inputs.frictionFactor * inputs.lengthM) / inputs.diameterM } : { ok: false, reason };
}

const library = 'fluids library, core.py: K of a length and length of a K (A-F11)';
const ratio = 'fluids library, core.py: L/D of K 3.6 at f 0.015 (A-F12)';

const duct: {
  diameterM: FormulaRecord<DuctOfFriction>['inputs']['diameterM'];
  frictionFactor: FormulaRecord<DuctOfFriction>['inputs']['frictionFactor'];
} = {
  diameterM: { text: 'Diameter', unit: 'm', min: 0.01, max: 10 },
  frictionFactor: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 65 },
};

export const lengthOfCoefficientRecord: FormulaRecord<LengthOfCoefficientInputs> = {
  id: 'length-of-coefficient',
  title: 'Equivalent length of a fitting',
  formula: 'L_eq = K D / f',
  inputs: { coefficient: { text: 'Loss coefficient', unit: 'ratio', min: 0, max: 100 }, ...duct },
  result: { text: 'Length of straight duct', unit: 'm', min: 0, max: 2e5 },
  source: [{ text: 'fluids library, core.py (A-E9)', confidence: 'read' }],
  examples: [
    { kind: 'source', from: library, inputs: { coefficient: 6, diameterM: 0.3, frictionFactor: 0.018 }, result: 100, tolerance: 1e-9 },
    { kind: 'source', from: ratio, inputs: { coefficient: 3.6, diameterM: 1, frictionFactor: 0.015 }, result: 240, tolerance: 1e-9 },
  ],
};

export const coefficientOfLengthRecord: FormulaRecord<CoefficientOfLengthInputs> = {
  id: 'coefficient-of-length',
  title: 'Coefficient of a length of duct',
  formula: 'K = f L / D',
  inputs: { lengthM: { text: 'Length of straight duct', unit: 'm', min: 0, max: 50_000 }, ...duct },
  result: { text: 'Loss coefficient', unit: 'ratio', min: 0, max: 3.3e8 },
  source: [{ text: 'fluids library, core.py (A-E9)', confidence: 'read' }],
  examples: [
    { kind: 'source', from: library, inputs: { lengthM: 100, diameterM: 0.3, frictionFactor: 0.018 }, result: 6, tolerance: 1e-9 },
  ],
};
