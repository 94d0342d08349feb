import { type Entries, type FormulaRecord, type FormulaResult, type FormulaSource, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface SystemCoefficientInputs {
  pressurePa: number;
  airflowM3s: number;
}

/** The one number of a system curve, from its loss at one airflow: p = K Q². */
export function systemCoefficient(inputs: SystemCoefficientInputs): FormulaResult {
  const refusal = findOutOfRange(systemCoefficientRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.pressurePa / inputs.airflowM3s ** 2 } : { ok: false, refusal };
}

export interface SystemPressureInputs {
  systemK: number;
  airflowM3s: number;
}

/** Loss of a system in Pa at an airflow. */
export function systemPressure(inputs: SystemPressureInputs): FormulaResult {
  const refusal = findOutOfRange(systemPressureRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.systemK * inputs.airflowM3s ** 2 } : { ok: false, refusal };
}

const homework = 'Course homework 6: the system point goes with the speed from 3.00 in. wg at 2000 cfm to 3.99 in. wg at 2308 cfm';
const coefficient = toSI(3, 'inH2O') / toSI(2000, 'cfm') ** 2;
const source: FormulaSource[] = [
  { text: 'Loss grows with the square of the airflow', documents: ['darcy-weisbach'], confidence: 'memory' },
];
const LARGEST_K = 1e9;

export const systemCoefficientRecord: FormulaRecord<SystemCoefficientInputs> = {
  id: 'system-coefficient',
  title: 'System coefficient',
  formula: 'K = p / Q²',
  inputs: {
    pressurePa: { text: 'Loss', unit: 'Pa', min: 0, max: 10_000 },
    airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0.005, max: 100 },
  },
  result: { text: 'Coefficient of the system', unit: 'Pa·s2/m6', min: 0, max: LARGEST_K },
  source,
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { pressurePa: toSI(3.99, 'inH2O'), airflowM3s: toSI(2308, 'cfm') },
      result: coefficient,
      tolerance: 0.002 * coefficient,
    },
  ],
};

export const systemPressureRecord: FormulaRecord<SystemPressureInputs> = {
  id: 'system-pressure',
  title: 'Loss of the system at an airflow',
  formula: 'p = K Q²',
  inputs: {
    systemK: { text: 'Coefficient of the system', unit: 'Pa·s2/m6', min: 0, max: LARGEST_K },
    airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 100 },
  },
  result: { text: 'Loss', unit: 'Pa', min: 0, max: 1e13 },
  source,
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { systemK: coefficient, airflowM3s: toSI(2308, 'cfm') },
      result: toSI(3.99, 'inH2O'),
      tolerance: toSI(0.01, 'inH2O'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 350, formulas: [formula(systemCoefficientRecord, systemCoefficient), formula(systemPressureRecord, systemPressure)] },
];
