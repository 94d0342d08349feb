import { z } from 'zod/mini';
import { type MachineSheet, machineSheetSchema } from '../catalog';
import { createPlan } from './createPlan';
import { change } from './migrations/raw';
import { toSheet2 } from './migrations/toVersion3';
import { createProblem, type PlanProblem } from './problems/planProblem';
import { schemaProblem } from './problems/schemaProblem';
import { parseJson } from './read/parseJson';
import { decode, MAX_BYTES } from './read/parsePlan';
import { renderJson } from './renderPlanText';
import { findPlanProblems } from './validatePlan';

/** A data sheet in a file of its own, version 2. */
const SHEET_VERSION = 2;
const sheetFileSchema = z.strictObject({
  format: z.literal('rackway-sheet'),
  version: z.literal(SHEET_VERSION),
  sheet: machineSheetSchema,
});

export type SheetResult = { ok: true; sheet: MachineSheet } | { ok: false; problem: PlanProblem };

/** Reads a data sheet from the bytes of a file. Never throws; what is wrong is refused whole. */
export function parseSheetBytes(bytes: Uint8Array): SheetResult {
  if (bytes.byteLength > MAX_BYTES) return refuse(createProblem('too-big', [], { bytes: bytes.byteLength, limit: MAX_BYTES }));
  const text = decode(bytes);
  return text === null ? refuse(createProblem('not-utf8', [])) : parseSheet(text);
}

/** Reads a data sheet from text. Never throws; what is wrong is refused whole. */
export function parseSheet(text: string): SheetResult {
  const json = parseJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  return json.ok ? readValue(json.value) : json;
}

/** The data sheet as JSON for a file. Reading it and rendering again gives the same bytes. */
export function renderSheetText(sheet: MachineSheet): string {
  const file = { format: 'rackway-sheet', version: SHEET_VERSION, sheet };
  const ordered = sheetFileSchema.safeParse(file);
  return `${renderJson(ordered.success ? ordered.data : file, '', 0)}\n`;
}

/** A file of version 1 says nothing of what came with version 2. */
const upToDate = (value: unknown) =>
  change(value, (file) => (file.version === 1 ? { ...file, version: 2, sheet: change(file.sheet, toSheet2) } : file));

function readValue(found: unknown): SheetResult {
  const value = upToDate(found);
  const result = sheetFileSchema.safeParse(value);
  if (result.success) {
    const { sheet } = result.data;
    const problem = findPlanProblems({ ...createPlan(), sheets: [sheet] })[0];
    return problem === undefined ? { ok: true, sheet } : refuse({ ...problem, path: ['sheet', ...problem.path.slice(2)] });
  }
  const [issue] = result.error.issues;
  const problem = issue === undefined ? null : schemaProblem(issue, value);
  if (problem === null) return refuse(createProblem('missing', [], { expected: 'a data sheet' }));
  return refuse(problem.code === 'unknown-key' ? { ...problem, reason: 'this key is not part of a data sheet' } : problem);
}

const refuse = (problem: PlanProblem): SheetResult => ({ ok: false, problem });
