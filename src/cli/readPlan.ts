import { readFile, stat } from 'node:fs/promises';
import { describeProblem, type Plan, parsePlanBytes } from '../plan';

/** A plan, or one sentence on why the file is not one. */
export type ReadPlan = { ok: true; plan: Plan } | { ok: false; reason: string };

/** Reads a plan file. Never throws: what is wrong is a sentence with the file's name. */
export async function readPlan(file: string): Promise<ReadPlan> {
  try {
    if ((await stat(file)).isDirectory()) return refuse(file, 'this is a folder, not a plan file');
    const result = parsePlanBytes(await readFile(file));
    return result.ok ? { ok: true, plan: result.plan } : refuse(file, describeProblem(result.problem));
  } catch (error) {
    return refuse(file, systemReason(error));
  }
}

const refuse = (file: string, reason: string): ReadPlan => ({ ok: false, reason: `${file}: ${reason}` });

const REASONS: Record<string, string> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'access is not allowed',
  EPERM: 'access is not allowed',
  EISDIR: 'this is a folder',
  ENOTDIR: 'a part of the path is not a folder',
  ENOSPC: 'no space is left',
};

/** What the system says of a file, in words. */
export function systemReason(error: unknown): string {
  const code = typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? `the system says ${code === '' ? String(error) : code}`;
}
