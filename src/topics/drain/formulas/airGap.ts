import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  inches,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { isAtMost } from '../../../units';

/** Rules for the air gap of a water supply. Between the table's sizes they differ; `stricter` takes the larger. */
export const AIR_GAP_RULES = ['stricter', 'food-code', 'table'] as const;
export type AirGapRule = (typeof AIR_GAP_RULES)[number];

export interface SupplyGapInputs {
  openingM: number;
  rule: AirGapRule;
}

/** Least air gap in metres between a water supply and the flood rim below it, by the opening of the supply. */
export function supplyAirGap(inputs: SupplyGapInputs): FormulaResult {
  const refusal = findOutOfRange(supplyAirGapRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { openingM, rule } = inputs;
  const code = Math.max(2 * openingM, inches(1));
  if (rule === 'food-code') return { ok: true, value: code };
  const row = TABLE.find(([opening]) => isAtMost(openingM, inches(opening)));
  const table = row === undefined ? 2 * openingM : inches(row[1]);
  return { ok: true, value: rule === 'table' ? table : Math.max(code, table) };
}

/** Opening up to so many inches, gap in inches; above 1 in twice the opening. */
const TABLE: readonly (readonly [opening: number, gap: number])[] = [
  [0.5, 1],
  [0.75, 1.5],
  [1, 2],
];

const code = 'FDA Food Code 5-202.13 as DC 25-B1405: twice the inlet and at least 1 in';
const city = 'A municipal plumbing code, ecode360 40219290';
const at = (opening: number, rule: AirGapRule): SupplyGapInputs => ({ openingM: inches(opening), rule });

export const supplyAirGapRecord: FormulaRecord<SupplyGapInputs> = {
  id: 'supply-air-gap',
  title: 'Air gap of a water supply',
  formula: 'max(2 d, 1 in); by table 1 in up to ½ in, 1½ in up to ¾ in, 2 in up to 1 in, then 2 d',
  inputs: {
    openingM: { text: 'Opening of the supply', unit: 'm', min: 0, max: 0.15 },
    rule: { text: 'Which of the two rules, or the larger', choices: AIR_GAP_RULES },
  },
  result: { text: 'Least air gap', unit: 'm', min: inches(1), max: 0.3 },
  source: [
    { text: `${code}`, documents: ['fda-food-code'], confidence: 'read' },
    {
      text: 'FDA Plan Review Guide, Part 12: the same, said of the inside diameter of the inlet',
      documents: ['fda-plan-review-guide'],
      confidence: 'read',
    },
    { text: `${city}`, documents: ['municipal-plumbing'], confidence: 'read' },
  ],
  examples: [
    { kind: 'source', from: `${code}: ½ in`, inputs: at(0.5, 'food-code'), result: inches(1), tolerance: 1e-12 },
    { kind: 'source', from: `${code}: ¾ in`, inputs: at(0.75, 'food-code'), result: inches(1.5), tolerance: 1e-12 },
    { kind: 'source', from: `${city}: up to ¾ in`, inputs: at(0.6, 'table'), result: inches(1.5), tolerance: 1e-12 },
    { kind: 'source', from: `${city}: above 1 in`, inputs: at(1.5, 'table'), result: inches(3), tolerance: 1e-12 },
  ],
};

export interface WasteGapInputs {
  pipeM: number;
}

/** Least air gap in metres between an indirect waste pipe and the receptor below it: twice the pipe, an inch however thin it is. */
export function wasteAirGap(inputs: WasteGapInputs): FormulaResult {
  const refusal = findOutOfRange(wasteAirGapRecord, inputs);
  return refusal === null ? { ok: true, value: Math.max(2 * inputs.pipeM, inches(1)) } : { ok: false, refusal };
}

const chicago = 'Chicago plumbing code, 0-0-0-2692339: twice the waste pipe';

export const wasteAirGapRecord: FormulaRecord<WasteGapInputs> = {
  id: 'waste-air-gap',
  title: 'Air gap of a waste pipe',
  formula: 'g = max(2 d, 1 in)',
  inputs: { pipeM: { text: 'Diameter of the waste pipe', unit: 'm', min: 0, max: 0.2 } },
  result: { text: 'Least air gap', unit: 'm', min: inches(1), max: 0.4 },
  source: [
    { text: `${chicago}`, documents: ['chicago-plumbing'], confidence: 'read' },
    { text: 'UFC 4-722-01: two pipe diameters on kitchen drains', documents: ['ufc-4-722-01'], confidence: 'read' },
    { text: `${code}; its inch is said of a supply and taken for a waste as well`, documents: ['fda-food-code'], confidence: 'read' },
  ],
  examples: [{ kind: 'source', from: chicago, inputs: { pipeM: inches(1.5) }, result: inches(3), tolerance: 1e-12 }],
};

export const airGapWallRule: RuleRecord = {
  id: 'air-gap-near-wall',
  title: 'Air gap near a wall',
  rule: 'The plain air gap holds where one wall is more than three openings away, or two that meet more than four.',
  source: [{ text: 'Chico TX 51.117; Ferris TX plumbing code', documents: ['chico-and-ferris'], confidence: 'read' }],
};

/** Whether the plain air gap holds beside a wall or a corner; nearer, it must grow, and the code says by how much. */
export function judgeAirGapNearWall(openingM: number, wallM: number, walls: 'one' | 'corner'): Ruling {
  const openings = walls === 'one' ? 3 : 4;
  const near = !(wallM > openings * openingM);
  return ruling(near ? createRefusal(airGapWallRule, 'wall-too-near', { openings, walls }) : null);
}

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1110, formulas: [formula(supplyAirGapRecord, supplyAirGap), formula(wasteAirGapRecord, wasteAirGap)] },
  { order: 70, rules: [airGapWallRule] },
];
