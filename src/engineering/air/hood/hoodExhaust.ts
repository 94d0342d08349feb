import type { FormulaRecord, FormulaSource, Outcome } from '../../record';
import {
  exhaustByArea,
  exhaustByAreaRecord,
  exhaustByCapture,
  exhaustByCaptureRecord,
  exhaustByFace,
  exhaustByFaceRecord,
  exhaustByLength,
  exhaustByLengthRecord,
} from './exhaustRules';
import { olderExhaustByArea, olderExhaustByAreaRecord, olderExhaustByPerimeter, olderExhaustByPerimeterRecord } from './olderRule';

/** A canopy as the rules see it. */
export interface HoodShape {
  lengthM: number;
  areaM2: number;
  openPerimeterM: number;
  openSides: '3' | '4';
  /** From the source of the vapour to the lip. */
  heightM: number;
  /** Capture velocity of the canopy formula; 50 fpm is usual. */
  captureMs: number;
}

export const EXHAUST_RULES = ['length', 'face', 'area-least', 'area-most', 'older-area', 'older-perimeter', 'capture'] as const;
export type ExhaustRule = (typeof EXHAUST_RULES)[number];

/** What one rule asks of a hood. */
export interface RuleExhaust {
  rule: ExhaustRule;
  title: string;
  airflowM3s: number;
  source: FormulaSource;
  /** Of the document that holds the rule. */
  edition: string;
}

/** Exhaust of a hood by every rule, in a fixed order. They differ by eight times. */
export function hoodExhaust(hood: HoodShape): Outcome<RuleExhaust[]> {
  const rows: RuleExhaust[] = [];
  for (const rule of EXHAUST_RULES) {
    const { measure, edition, record } = RULES[rule];
    const airflow = measure(hood);
    if (!airflow.ok) return { ok: false, reason: `${rule}: ${airflow.reason}` };
    const source = record.source[0] ?? NO_SOURCE;
    rows.push({ rule, title: record.title, airflowM3s: airflow.value, source, edition });
  }
  return { ok: true, value: rows };
}

const NO_SOURCE: FormulaSource = { text: 'none', confidence: 'memory' };

interface Rule {
  measure: (hood: HoodShape) => Outcome;
  edition: string;
  record: Pick<FormulaRecord<HoodShape>, 'title' | 'source'>;
}

const RULES: Record<ExhaustRule, Rule> = {
  length: { measure: ({ lengthM }) => exhaustByLength({ lengthM }), edition: '2015–2021 and newer', record: exhaustByLengthRecord },
  face: { measure: ({ areaM2 }) => exhaustByFace({ areaM2 }), edition: '2003, superseded', record: exhaustByFaceRecord },
  'area-least': {
    measure: ({ areaM2 }) => exhaustByArea({ areaM2, rate: 'least' }),
    edition: 'hospital manual',
    record: exhaustByAreaRecord,
  },
  'area-most': {
    measure: ({ areaM2 }) => exhaustByArea({ areaM2, rate: 'most' }),
    edition: 'hospital manual',
    record: exhaustByAreaRecord,
  },
  'older-area': {
    measure: ({ areaM2, openSides }) => olderExhaustByArea({ areaM2, openSides }),
    edition: '2000',
    record: olderExhaustByAreaRecord,
  },
  'older-perimeter': {
    measure: ({ openPerimeterM, heightM }) => olderExhaustByPerimeter({ openPerimeterM, heightM }),
    edition: '2000',
    record: olderExhaustByPerimeterRecord,
  },
  capture: {
    measure: ({ openPerimeterM, heightM, captureMs }) => exhaustByCapture({ openPerimeterM, heightM, captureMs }),
    edition: '24th, 2001',
    record: exhaustByCaptureRecord,
  },
};
