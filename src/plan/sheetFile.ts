import { z } from 'zod/mini';
import { type DataSheet, dataSheetSchema } from '../catalog';
import { createPlan } from './createPlan';
import { change, type Raw } from './migrations/raw';
import { toSheet2 } from './migrations/toVersion3';
import { toSheet3 } from './migrations/toVersion4';
import { createProblem, type PlanProblem } from './problems/planProblem';
import { schemaProblem } from './problems/schemaProblem';
import { parseJson } from './read/parseJson';
import { decode, MAX_BYTES } from './read/parsePlan';
import { renderJson } from './renderPlanText';
import { findPlanProblems } from './validatePlan';

/** A data sheet in a file of its own, version 3. */
const SHEET_VERSION = 3;
const sheetFileSchema = z.strictObject({
  format: z.literal('rackway-sheet'),
  version: z.literal(SHEET_VERSION),
  sheet: dataSheetSchema,
});

export type DataSheetResult = { ok: true; sheet: DataSheet } | { ok: false; problem: PlanProblem };

/** Reads a data sheet from the bytes of a file. Never throws; what is wrong is refused whole. */
export function parseDataSheetBytes(bytes: Uint8Array): DataSheetResult {
  if (bytes.byteLength > MAX_BYTES) return refuse(createProblem('too-big', [], { bytes: bytes.byteLength, limit: MAX_BYTES }));
  const text = decode(bytes);
  return text === null ? refuse(createProblem('not-utf8', [])) : parseDataSheet(text);
}

/** Reads a data sheet from text. Never throws; what is wrong is refused whole. */
export function parseDataSheet(text: string): DataSheetResult {
  const json = parseJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  return json.ok ? readValue(json.value) : json;
}

/** The data sheet as JSON for a file. Reading it and rendering again gives the same bytes. */
export function renderDataSheetText(sheet: DataSheet): string {
  const file = { format: 'rackway-sheet', version: SHEET_VERSION, sheet };
  const ordered = sheetFileSchema.safeParse(file);
  return `${renderJson(ordered.success ? ordered.data : file, '', 0)}\n`;
}

/** A file of an older version says nothing of what came later. */
const upToDate = (value: unknown) => change(value, (file) => step(step(file, 1, toSheet2), 2, toSheet3));

const step = (file: Raw, from: number, to: (sheet: Raw) => Raw): Raw =>
  file.version === from ? { ...file, version: from + 1, sheet: change(file.sheet, to) } : file;

function readValue(found: unknown): DataSheetResult {
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

const refuse = (problem: PlanProblem): DataSheetResult => ({ ok: false, problem });
