import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  type RefusalCode,
  type RefusalParams,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { WIRE_SIZES, type WireSize } from './support/wire';

/** Column of the table: the temperature that the terminals may have. */
export const TERMINALS = ['60C', '75C'] as const;
export type Terminal = (typeof TERMINALS)[number];

/** Amperes of copper wire by size and column. A user adds what a licensed copy of the table says. */
export type AmpacityTable = Readonly<Partial<Record<WireSize, Readonly<Partial<Record<Terminal, number>>>>>>;

/** Single values of NEC Table 310.16 that are public, three files agreeing. All others: the code itself. */
export const HELD_AMPACITY: AmpacityTable = {
  '14': { '60C': 15, '75C': 20 },
  '12': { '60C': 20, '75C': 25 },
  '10': { '60C': 30, '75C': 35 },
  '8': { '60C': 40, '75C': 50 },
  '6': { '60C': 55, '75C': 65 },
  '3': { '75C': 100 },
  '4/0': { '60C': 195, '75C': 230 },
};

export interface AmpacityInputs {
  size: WireSize;
  terminal: Terminal;
}

/** Current in amperes that copper wire carries, up to three conductors at 30 °C around, by the single values that are public. */
export function ampacity(inputs: AmpacityInputs): FormulaResult {
  const refusal = findOutOfRange(ampacityRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const value = HELD_AMPACITY[inputs.size]?.[inputs.terminal];
  return value === undefined
    ? { ok: false, refusal: createRefusal(ampacityRecord, 'ampacity-not-held', { size: inputs.size, terminal: inputs.terminal }) }
    : { ok: true, value };
}

const table = 'NEC Table 310.16, single values, three public files agreeing';

export const ampacityRecord: FormulaRecord<AmpacityInputs> = {
  id: 'ampacity',
  title: 'Current that a wire carries',
  formula: 'a value for each size and terminal',
  inputs: {
    size: { text: 'Size of copper wire', choices: WIRE_SIZES },
    terminal: { text: 'Temperature that the terminals may have', choices: TERMINALS },
  },
  result: { text: 'Current', unit: 'A', min: 15, max: 230 },
  source: [{ text: `${table}`, documents: ['nec'], confidence: 'secondary' }],
  examples: [
    { kind: 'source', from: `${table}: 8 AWG`, inputs: { size: '8', terminal: '60C' }, result: 40, tolerance: 0 },
    { kind: 'source', from: `${table}: 3 AWG`, inputs: { size: '3', terminal: '75C' }, result: 100, tolerance: 0 },
  ],
};

export const ampacityTableRule: RuleRecord = {
  id: 'ampacity-table',
  title: 'Table of ampacities that a user enters',
  rule: 'It agrees with the public single values, and a thicker wire or a hotter terminal never carries less.',
  source: ampacityRecord.source,
};

/**
 * Whether a table may be used. Three wrong ones are common: an old edition's (14 AWG 20 A at 60 °C), one with
 * 115 A for 3 AWG, and the breaker limits of small wire (15, 20, 30 A) passed off as the 75 °C column.
 */
export function judgeAmpacityTable(entered: AmpacityTable): Ruling {
  for (const terminal of TERMINALS) {
    let thinner = 0;
    for (const size of WIRE_SIZES) {
      const held = HELD_AMPACITY[size]?.[terminal];
      const value = entered[size]?.[terminal] ?? held;
      if (value === undefined) continue;
      const where = { size, terminal, valueA: value };
      if (held !== undefined && value !== held) return differs('ampacity-differs-from-code', { ...where, heldA: held });
      if (!(value > thinner)) return differs('ampacity-not-above-thinner', { ...where, thinnerA: thinner });
      const cooler = entered[size]?.['60C'] ?? HELD_AMPACITY[size]?.['60C'] ?? 0;
      if (value < cooler) return differs('ampacity-below-cooler', { ...where, coolerA: cooler });
      thinner = value;
    }
  }
  return ruling(null);
}

const differs = <Code extends RefusalCode>(code: Code, params: RefusalParams[Code]) =>
  ruling(createRefusal(ampacityTableRule, code, params));

/** What is known of the current that a wire carries, in amperes: at least `least` and at most `most`; the same where its value is held. */
export interface AmpacityBounds {
  least: number;
  most: number;
}

/**
 * Bounds from the single values that are public: a wire carries no less than a thinner one, no less at a hotter terminal, and
 * less than a thicker one.
 */
export function boundAmpacity(size: WireSize, terminal: Terminal): AmpacityBounds {
  const own = HELD_AMPACITY[size]?.[terminal];
  if (own !== undefined) return { least: own, most: own };
  const at = WIRE_SIZES.indexOf(size);
  const terminals: readonly Terminal[] = terminal === '75C' ? TERMINALS : ['60C'];
  const thinner = WIRE_SIZES.slice(0, at + 1).flatMap((one) => terminals.map((column) => HELD_AMPACITY[one]?.[column] ?? 0));
  const thicker = WIRE_SIZES.slice(at + 1).map((one) => HELD_AMPACITY[one]?.[terminal] ?? Number.POSITIVE_INFINITY);
  return { least: Math.max(...thinner), most: Math.min(...thicker) };
}

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1170, formulas: [formula(ampacityRecord, ampacity)] },
  { order: 80, rules: [ampacityTableRule] },
];
