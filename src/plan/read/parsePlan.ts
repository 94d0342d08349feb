import { MIGRATIONS, migratePlan, OLDEST_VERSION } from '../migrations';
import { PLAN_FORMAT, PLAN_VERSION, type Plan } from '../planSchema';
import { createProblem, describeValue, type PlanProblem } from '../problems/planProblem';
import { checkPlan } from '../validatePlan';
import { parseJson } from './parseJson';

/** Largest file that is read: 5 MB. */
export const MAX_BYTES = 5_000_000;

/** A plan and the version it was written in, if that was an older one; or why it was refused. */
export type ReadResult = { ok: true; plan: Plan; migratedFrom: number | null } | { ok: false; problem: PlanProblem };

/** Reads a plan from the bytes of a file. Never throws; what is wrong is refused whole. */
export function parsePlanBytes(bytes: Uint8Array): ReadResult {
  if (bytes.byteLength > MAX_BYTES) return refuse(createProblem('too-big', [], { bytes: bytes.byteLength, limit: MAX_BYTES }));
  const text = decode(bytes);
  return text === null ? refuse(createProblem('not-utf8', [])) : readText(text);
}

/** Reads a plan from text. Never throws; what is wrong is refused whole. */
export function parsePlan(text: string): ReadResult {
  const bytes = utf8Length(text);
  if (bytes > MAX_BYTES) return refuse(createProblem('too-big', [], { bytes, limit: MAX_BYTES }));
  return readText(text);
}

/** Text in UTF-8; null where it is none. */
export function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

const refuse = (problem: PlanProblem): ReadResult => ({ ok: false, problem });

function readText(text: string): ReadResult {
  const json = parseJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  return json.ok ? readValue(json.value) : json;
}

function readValue(value: unknown): ReadResult {
  if (!isObject(value)) return refuse(createProblem('not-a-plan', [], { found: describeValue(value) }));
  if (value.format !== PLAN_FORMAT) return refuse(createProblem('not-a-plan', [], { found: describeValue(value.format) }));
  const { version } = value;
  const problem = findVersionProblem(version);
  if (problem !== null) return refuse(problem);
  const from = Number(version);
  const raw = migrate(value, from);
  if (raw === null) return refuse(createProblem('migration', ['version'], { from }));
  const checked = checkPlan(raw);
  return checked.ok ? { ok: true, plan: checked.plan, migratedFrom: from === PLAN_VERSION ? null : from } : checked;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

function findVersionProblem(version: unknown): PlanProblem | null {
  const path = ['version'];
  if (typeof version !== 'number' || !Number.isInteger(version))
    return createProblem('version-missing', path, { found: describeValue(version) });
  if (version > PLAN_VERSION) return createProblem('version-newer', path, { found: version, known: PLAN_VERSION });
  if (version < OLDEST_VERSION) return createProblem('version-unknown', path, { found: version, oldest: OLDEST_VERSION });
  return null;
}

/** An old file may hold anything: a migration that stumbles over it is a refusal, not an accident. */
function migrate(raw: Record<string, unknown>, from: number): Record<string, unknown> | null {
  try {
    return migratePlan(raw, from, MIGRATIONS);
  } catch {
    return null;
  }
}

/** Bytes that the text takes in UTF-8. */
function utf8Length(text: string): number {
  let bytes = text.length;
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code > 0x7f) bytes += 1;
    // Half of a pair counts two: the pair takes four.
    if (code > 0x7ff && (code < 0xd800 || code > 0xdfff)) bytes += 1;
  }
  return bytes;
}
