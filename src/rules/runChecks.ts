import type { Scene } from '../scene';
import {
  type Check,
  type Finding,
  type MeasuredValue,
  type Measurement,
  type Relation,
  type Repair,
  VERDICTS,
  type Verdict,
} from './check';
import { TOLERANCE } from './tolerance';

/** Runs each check on the scene and compares what it measured with its limit. Worst first. */
export function runChecks(scene: Scene, checks: readonly Check[]): Finding[] {
  const found: Record<Verdict, Finding[]> = { stop: [], watch: [], ask: [], clear: [] };
  for (const check of checks)
    for (const measured of check.measure(scene)) found[judge(measured, relationOf(check, measured))].push(toFinding(check, measured));
  return VERDICTS.flatMap((verdict) => found[verdict]);
}

/** The worst verdict of a list; `clear` only when something was checked, otherwise `ask`. */
export function deriveWorstVerdict(findings: readonly Finding[]): Verdict {
  const worst = VERDICTS.find((verdict) => findings.some((f) => f.verdict === verdict));
  return worst ?? 'ask';
}

const relationOf = (check: Check, { relation }: Measurement): Relation => relation ?? check.relation;

/**
 * The repairs that would better a finding, by its id: its check measures again, and what it offers is tried. None where the scene
 * has no such finding.
 */
export function findRepairs(scene: Scene, checks: readonly Check[], id: string): Repair[] {
  const check = checks.find((one) => id === one.id || id.startsWith(`${one.id}:`));
  const found = check?.measure(scene).find((measured) => findingId(check, measured) === id);
  return found === undefined ? [] : repairsOf(found);
}

const repairsOf = ({ repairs }: Measurement): Repair[] => (typeof repairs === 'function' ? repairs() : (repairs?.find() ?? []));

const findingId = ({ id }: Check, { part, subjects }: Measurement) => [id, ...(part === undefined ? [] : [part]), ...subjects].join(':');

function toFinding(check: Check, m: Measurement): Finding {
  const relation = relationOf(check, m);
  return {
    id: findingId(check, m),
    check: check.id,
    part: m.part ?? null,
    title: check.title,
    group: check.group ?? 'line',
    verdict: judge(m, relation),
    measured: m.value,
    limit: m.limit,
    watchLimit: m.watchLimit ?? null,
    margin: margin(m.value, m.limit, relation),
    unit: m.unit ?? check.unit,
    relation,
    subjects: m.subjects,
    place: m.place,
    elevation: m.elevation ?? null,
    source: m.source ?? check.source,
    ask: m.ask ?? null,
    message: m.message ?? null,
    say: m.say ?? null,
    repairs: typeof m.repairs === 'function' ? ['repair'] : (m.repairs?.ids ?? []),
  };
}

function judge(m: Measurement, relation: Relation): Verdict {
  if (m.value === null || m.limit === null) return 'ask';
  if (!holds(m.value, m.limit, relation)) return m.severity ?? 'stop';
  // A stricter limit holds when it is just reached, also where the limit itself must be passed.
  const soft = relation === 'more-than' ? 'at-least' : relation;
  if (m.watchLimit !== undefined && !holds(m.value, m.watchLimit, soft)) return 'watch';
  return 'clear';
}

function holds(value: MeasuredValue, limit: MeasuredValue, relation: Relation): boolean {
  if (relation === 'equals')
    return typeof value === 'number' && typeof limit === 'number' ? Math.abs(value - limit) <= TOLERANCE : value === limit;
  const left = margin(value, limit, relation);
  if (left === null) return false;
  return relation === 'more-than' ? left > TOLERANCE : left >= -TOLERANCE;
}

function margin(value: MeasuredValue | null, limit: MeasuredValue | null, relation: Relation): number | null {
  if (typeof value !== 'number' || typeof limit !== 'number') return null;
  if (relation === 'equals') return -Math.abs(value - limit);
  return relation === 'at-most' ? limit - value : value - limit;
}
