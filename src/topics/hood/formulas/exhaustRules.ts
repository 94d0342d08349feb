import {
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  feet,
  findOutOfRange,
  formula,
  type SourceKey,
} from '../../../rules';
import { toSI } from '../../../units';

export interface HoodLengthOnly {
  lengthM: number;
}

/** Net exhaust in m³/s of a Type II hood over a dishwasher by the model code: 100 cfm to each foot of its length. */
export function exhaustByLength(inputs: HoodLengthOnly): FormulaResult {
  const refusal = findOutOfRange(exhaustByLengthRecord, inputs);
  return refusal === null ? { ok: true, value: (inputs.lengthM / feet(1)) * toSI(100, 'cfm') } : { ok: false, refusal };
}

export const AREA_RATES = ['least', 'most'] as const;

export interface HoodAreaInputs {
  areaM2: number;
  rate: (typeof AREA_RATES)[number];
}

/** Exhaust in m³/s by the hood's area: 50 to 100 cfm to a square foot. */
export function exhaustByArea(inputs: HoodAreaInputs): FormulaResult {
  const refusal = findOutOfRange(exhaustByAreaRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.areaM2 * toSI(inputs.rate === 'least' ? 50 : 100, 'fpm') } : { ok: false, refusal };
}

export interface HoodFaceInputs {
  areaM2: number;
}

/** Exhaust in m³/s that draws 50 fpm through the open face of a canopy. */
export function exhaustByFace(inputs: HoodFaceInputs): FormulaResult {
  const refusal = findOutOfRange(exhaustByFaceRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.areaM2 * toSI(50, 'fpm') } : { ok: false, refusal };
}

export interface HoodCaptureInputs {
  openPerimeterM: number;
  /** From the source of the vapour to the lip. */
  heightM: number;
  captureMs: number;
}

/** Exhaust in m³/s by the capture formula of a canopy: air drawn in at the source's edge. It asks far more than the codes. */
export function exhaustByCapture(inputs: HoodCaptureInputs): FormulaResult {
  const refusal = findOutOfRange(exhaustByCaptureRecord, inputs);
  return refusal === null ? { ok: true, value: 1.4 * inputs.openPerimeterM * inputs.heightM * inputs.captureMs } : { ok: false, refusal };
}

const code = 'IMC 507.3.4.2 (507.5.5 in 2015–2021), dishwasher net exhaust';
const hospital = 'VA HVAC design manual (hospitals), 3.12.8';
const face = 'UFC 3-410-01FA (15 May 2003), 4-10.1, superseded';
const capture = 'ACGIH Industrial Ventilation, 24th ed. 2001, canopy hood';
const square = toSI(16, 'ft2');

const lengthM = { text: 'Inside length of the hood', unit: 'm', min: 0.3, max: 20 } as const;
const areaM2 = { text: 'Inside area of the hood', unit: 'm2', min: 0.05, max: 100 } as const;
const result = (max: number) => ({ text: 'Exhaust', unit: 'm3/s', min: 0, max }) as const;
const secondary = (text: string, ...documents: SourceKey[]): FormulaSource[] => [{ text, documents, confidence: 'secondary' }];
const read = (text: string, ...documents: SourceKey[]): FormulaSource[] => [{ text, documents, confidence: 'read' }];

export const exhaustByLengthRecord: FormulaRecord<HoodLengthOnly> = {
  id: 'hood-exhaust-length',
  title: 'Hood exhaust by length',
  formula: 'Q = 100 cfm/ft × L',
  inputs: { lengthM },
  result: result(4),
  source: secondary(code, 'imc'),
  examples: [
    {
      kind: 'source',
      from: `${code}; 4 ft are 400 cfm`,
      inputs: { lengthM: feet(4) },
      result: toSI(400, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const exhaustByAreaRecord: FormulaRecord<HoodAreaInputs> = {
  id: 'hood-exhaust-area',
  title: 'Hood exhaust by area',
  formula: 'Q = 50 to 100 cfm/ft² × A',
  inputs: { areaM2, rate: { text: 'End of the span', choices: AREA_RATES } },
  result: result(60),
  source: read(hospital, 'va-hvac-manual'),
  examples: [
    {
      kind: 'source',
      from: `${hospital}: 4 × 4 ft, 800 cfm`,
      inputs: { areaM2: square, rate: 'least' },
      result: toSI(800, 'cfm'),
      tolerance: 1e-12,
    },
    {
      kind: 'source',
      from: `${hospital}: 4 × 4 ft, 1600 cfm`,
      inputs: { areaM2: square, rate: 'most' },
      result: toSI(1600, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const exhaustByFaceRecord: FormulaRecord<HoodFaceInputs> = {
  id: 'hood-exhaust-face',
  title: 'Hood exhaust by face velocity',
  formula: 'Q = 50 fpm × A',
  inputs: { areaM2 },
  result: result(30),
  source: read(face, 'ufc-3-410-01fa'),
  examples: [
    { kind: 'source', from: `${face}: 4 × 4 ft, 800 cfm`, inputs: { areaM2: square }, result: toSI(800, 'cfm'), tolerance: 1e-12 },
  ],
};

export const exhaustByCaptureRecord: FormulaRecord<HoodCaptureInputs> = {
  id: 'hood-exhaust-capture',
  title: 'Hood exhaust by capture',
  formula: 'Q = 1.4 P V D',
  inputs: {
    openPerimeterM: { text: 'Open perimeter of the hood', unit: 'm', min: 0.3, max: 80 },
    heightM: { text: 'Height of the lip above the source', unit: 'm', min: 0.1, max: 2.5 },
    captureMs: { text: 'Capture velocity', unit: 'm/s', min: 0.1, max: 2.5 },
  },
  result: result(750),
  source: secondary(capture, 'acgih-industrial-ventilation'),
  examples: [
    {
      kind: 'source',
      from: `${capture}: 16 ft, 3 ft, 50 fpm are 3360 cfm`,
      inputs: { openPerimeterM: feet(16), heightM: feet(3), captureMs: toSI(50, 'fpm') },
      result: toSI(3360, 'cfm'),
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 40,
    formulas: [
      formula(exhaustByLengthRecord, exhaustByLength),
      formula(exhaustByFaceRecord, exhaustByFace),
      formula(exhaustByAreaRecord, exhaustByArea),
    ],
  },
  { order: 90, formulas: [formula(exhaustByCaptureRecord, exhaustByCapture)] },
];
