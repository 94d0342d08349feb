import { type Entries, type FormulaRecord, type FormulaResult, type FormulaSource, feet, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export const OPEN_SIDES = ['3', '4'] as const;

export interface OlderAreaInputs {
  areaM2: number;
  /** A canopy against a wall has three, one that stands free four. */
  openSides: (typeof OPEN_SIDES)[number];
}

/** Exhaust in m³/s of a canopy by the older code's area rule for low-temperature duty. */
export function olderExhaustByArea(inputs: OlderAreaInputs): FormulaResult {
  const refusal = findOutOfRange(olderExhaustByAreaRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.areaM2 * toSI(inputs.openSides === '4' ? 75 : 50, 'fpm') } : { ok: false, refusal };
}

export interface OlderPerimeterInputs {
  openPerimeterM: number;
  heightM: number;
}

/** Exhaust in m³/s by the older code's other form: open perimeter times height. */
export function olderExhaustByPerimeter(inputs: OlderPerimeterInputs): FormulaResult {
  const refusal = findOutOfRange(olderExhaustByPerimeterRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.openPerimeterM * inputs.heightM * toSI(50, 'fpm') } : { ok: false, refusal };
}

const older = 'IMC 2000, 507.13, low-temperature canopy';
const source: FormulaSource[] = [{ text: older, documents: ['imc-2000'], confidence: 'secondary' }];
const square = toSI(16, 'ft2');

export const olderExhaustByAreaRecord: FormulaRecord<OlderAreaInputs> = {
  id: 'hood-exhaust-older-area',
  title: 'Hood exhaust by the older area rule',
  formula: 'Q = 75 fpm × A with four open sides, 50 fpm × A with three',
  inputs: {
    areaM2: { text: 'Inside area of the hood', unit: 'm2', min: 0.05, max: 100 },
    openSides: { text: 'Open sides of the canopy', choices: OPEN_SIDES },
  },
  result: { text: 'Exhaust', unit: 'm3/s', min: 0, max: 40 },
  source,
  examples: [
    {
      kind: 'source',
      from: `${older}: 16 ft², four sides`,
      inputs: { areaM2: square, openSides: '4' },
      result: toSI(1200, 'cfm'),
      tolerance: 1e-12,
    },
    {
      kind: 'source',
      from: `${older}: 16 ft², three sides`,
      inputs: { areaM2: square, openSides: '3' },
      result: toSI(800, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const olderExhaustByPerimeterRecord: FormulaRecord<OlderPerimeterInputs> = {
  id: 'hood-exhaust-older-perimeter',
  title: 'Hood exhaust by the older perimeter rule',
  formula: 'Q = 50 fpm × P × D',
  inputs: {
    openPerimeterM: { text: 'Open perimeter of the hood', unit: 'm', min: 0.3, max: 80 },
    heightM: { text: 'Height of the lip above the source', unit: 'm', min: 0.1, max: 2.5 },
  },
  result: { text: 'Exhaust', unit: 'm3/s', min: 0, max: 60 },
  source,
  examples: [
    {
      kind: 'source',
      from: `${older}: 16 ft and 3 ft`,
      inputs: { openPerimeterM: feet(16), heightM: feet(3) },
      result: toSI(2400, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 70,
    formulas: [formula(olderExhaustByAreaRecord, olderExhaustByArea), formula(olderExhaustByPerimeterRecord, olderExhaustByPerimeter)],
  },
];
