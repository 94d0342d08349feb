import {
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  feet,
  findOutOfRange,
  formula,
  inches,
  type Limit,
  limit,
  type RuleRecord,
} from '../../../rules';
import { isAtMost } from '../../../units';

/** A: nothing live or grounded opposite. B: something grounded opposite; concrete, brick and tile count. C: live parts on both sides. */
export const WORKING_CONDITIONS = ['A', 'B', 'C'] as const;
export type WorkingCondition = (typeof WORKING_CONDITIONS)[number];

export interface WorkingSpaceInputs {
  /** Voltage to ground, not between the lines. */
  voltsToGround: number;
  condition: WorkingCondition;
}

/** Depth in metres of the free space in front of a panel that may be worked on live, from its opening. */
export function workingDepth(inputs: WorkingSpaceInputs): FormulaResult {
  const refusal = findOutOfRange(workingDepthRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: feet(isAtMost(inputs.voltsToGround, 150) ? 3 : OVER_150[inputs.condition]) };
}

const OVER_150: Readonly<Record<WorkingCondition, number>> = { A: 3, B: 3.5, C: 4 };

const osha = '29 CFR 1910.303(g)(1), Table S-1, as WAC 296-24-95703 and UFC 3-520-01 Table 8-1 copy it';
const at = (voltsToGround: number, condition: WorkingCondition): WorkingSpaceInputs => ({ voltsToGround, condition });

export const workingDepthRecord: FormulaRecord<WorkingSpaceInputs> = {
  id: 'working-depth',
  title: 'Depth of working space',
  formula: '3 ft to 150 V; to 600 V 3, 3½ or 4 ft by condition A, B, C',
  inputs: {
    voltsToGround: { text: 'Voltage to ground', unit: 'V', min: 0, max: 600 },
    condition: { text: 'What stands opposite', choices: WORKING_CONDITIONS },
  },
  result: { text: 'Free depth', unit: 'm', min: feet(3), max: feet(4) },
  source: [{ text: `${osha}`, documents: ['ufc-3-520-01', 'cfr-29-1910'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: `${osha}: 0–150 V`, inputs: at(150, 'C'), result: feet(3), tolerance: 0 },
    { kind: 'source', from: `${osha}: 151–600 V, A`, inputs: at(151, 'A'), result: feet(3), tolerance: 0 },
    { kind: 'source', from: `${osha}: 151–600 V, B`, inputs: at(600, 'B'), result: feet(3.5), tolerance: 0 },
    { kind: 'source', from: `${osha}: 151–600 V, C`, inputs: at(600, 'C'), result: feet(4), tolerance: 0 },
  ],
};

export interface EquipmentSizeInputs {
  equipmentM: number;
}

/** Width in metres of that space: the equipment's, 30 in at least. */
export function workingWidth(inputs: EquipmentSizeInputs): FormulaResult {
  const refusal = findOutOfRange(workingWidthRecord, inputs);
  return refusal === null ? { ok: true, value: Math.max(inches(30), inputs.equipmentM) } : { ok: false, refusal };
}

/** Height in metres of that space: the equipment's, 6½ ft at least. */
export function workingHeight(inputs: EquipmentSizeInputs): FormulaResult {
  const refusal = findOutOfRange(workingHeightRecord, inputs);
  return refusal === null ? { ok: true, value: Math.max(feet(6.5), inputs.equipmentM) } : { ok: false, refusal };
}

const width = '29 CFR 1910.303(g)(1) as WAC 296-800-28027 copies it';

export const workingWidthRecord: FormulaRecord<EquipmentSizeInputs> = {
  id: 'working-width',
  title: 'Width of working space',
  formula: 'max(equipment, 30 in)',
  inputs: { equipmentM: { text: 'Width of the equipment', unit: 'm', min: 0, max: 10 } },
  result: { text: 'Free width', unit: 'm', min: inches(30), max: 10 },
  source: [
    { text: `${width}`, documents: ['cfr-29-1910'], confidence: 'read' },
    { text: 'OSHA interpretation, 28 May 1999: 30 in, not for storage', documents: ['cfr-29-1910'], confidence: 'read' },
  ],
  examples: [
    { kind: 'source', from: `${width}: narrower than 30 in`, inputs: { equipmentM: 0.4 }, result: inches(30), tolerance: 0 },
    { kind: 'source', from: `${width}: wider`, inputs: { equipmentM: 1 }, result: 1, tolerance: 0 },
  ],
};

export const workingHeightRecord: FormulaRecord<EquipmentSizeInputs> = {
  id: 'working-height',
  title: 'Height of working space',
  formula: 'max(equipment, 6½ ft)',
  inputs: { equipmentM: { text: 'Height of the equipment', unit: 'm', min: 0, max: 10 } },
  result: { text: 'Free height', unit: 'm', min: feet(6.5), max: 10 },
  source: [{ text: `${width}; 6¼ ft for installations before 13 Aug 2007`, documents: ['cfr-29-1910'], confidence: 'read' }],
  examples: [{ kind: 'source', from: `${width}: lower than 6½ ft`, inputs: { equipmentM: 1.2 }, result: feet(6.5), tolerance: 0 }],
};

/** What hangs above or stands below the equipment may reach so far out beyond its front. */
export const WORKING_PROJECTION: Limit = limit(
  'working-projection',
  'What projects above or below a panel board, beyond its front',
  'm',
  { max: inches(6) },
  { text: `${width}`, documents: ['cfr-29-1910'], confidence: 'read' },
);

export const panelDoorRule: RuleRecord = {
  id: 'panel-door',
  title: 'The door of a panel board',
  rule: 'Doors and hinged panels of what is worked on live open by 90° at least.',
  source: [{ text: `${width}`, documents: ['cfr-29-1910'], confidence: 'read' }],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 1210,
    formulas: [
      formula(workingDepthRecord, workingDepth),
      formula(workingWidthRecord, workingWidth),
      formula(workingHeightRecord, workingHeight),
    ],
  },
  { order: 560, limits: [WORKING_PROJECTION] },
  { order: 90, rules: [panelDoorRule] },
];
