import { describe, expect, it } from 'vitest';
import { edit, type Plan } from '../../src/plan';
import { type Check, type Finding, findRepairs, type MeasuredValue, type Repair, runChecks, type Verdict } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { findingWords } from '../../src/text';
import { CHECKS } from '../../src/topics/registry';
import { formatterFor, type Units } from '../../src/units';
import { expectMovedPlace } from './movedPlace';
import { movedPlan, PLAN_MOTIONS, type PlanMotion, wordIn } from './planMotions';

/** One case of a check: a plan, and every finding that the check must make of it, worst first. */
export interface CheckCase {
  name: string;
  plan: Plan;
  expect: readonly ExpectedFinding[];
}

/** What a finding must be. What is left out must be absent: no part, no question, no repair. */
export interface ExpectedFinding {
  verdict: Verdict;
  part?: string;
  subjects: readonly string[];
  measured: MeasuredValue | null;
  /** Tolerance of a measured number; rounding alone when it is left out. */
  within?: number;
  /** Checked where it is given. */
  limit?: MeasuredValue | null;
  /** Path in the plan of the input that is asked for, joined by dots. */
  asks?: string;
  /** Ids of the repairs offered. */
  repairs?: readonly string[];
  /** The whole sentence in feet and inches, checked where it is given. */
  says?: string;
}

const ROUNDING = 1e-6;

/**
 * Runs a table of cases. Each is run as drawn, turned, moved and in a mirror, with the same verdicts and measured
 * values; each repair is applied, must better its finding, and must bring no stop that was not there.
 */
export function describeCheck(check: Check, cases: readonly CheckCase[]): void {
  describe(check.id, () => {
    it('is in the registry', () => expect(CHECKS).toContain(check));
    it.each(cases)('$name', (row) => {
      const asDrawn = findingsOf(check, row.plan);
      for (const motion of PLAN_MOTIONS) expectFindings(check, row, motion, asDrawn);
      expect(asDrawn.map((finding, i) => row.expect[i]?.says && sayIt(finding))).toEqual(row.expect.map(({ says }) => says));
      for (const finding of asDrawn) for (const repair of repairsOf(check, row.plan, finding)) expectRepaired(row.plan, finding, repair);
    });
  });
}

export const findingsOf = (check: Check, plan: Plan): Finding[] => runChecks(deriveScene(plan), [check]);

/** The repairs of a finding; each was named by it. */
export function repairsOf(check: Check, plan: Plan, { id, repairs: named }: Finding): Repair[] {
  const repairs = findRepairs(deriveScene(plan), [check], id);
  expect(repairs.filter((repair) => !named.includes(repair.id) && !named.includes('repair'))).toEqual([]);
  return repairs;
}

/** What a finding says, with plain spaces: figures and units are held together by unbreakable ones. */
export const sayIt = (finding: Finding, units: Units = 'us') =>
  findingWords(finding, formatterFor(units)).replaceAll(/[\u00a0\u202f]/g, ' ');

function expectFindings(check: Check, row: CheckCase, motion: PlanMotion, asDrawn: readonly Finding[]): void {
  const findings = inOrderOf(asDrawn, findingsOf(check, movedPlan(row.plan, motion)), motion);
  const found = findings.map((finding, i) => foundSummary(check, movedPlan(row.plan, motion), finding, row.expect[i], motion));
  expect({ motion: motion.name, found }).toEqual({ motion: motion.name, found: row.expect.map(expectedSummary) });
  for (const [i, finding] of findings.entries()) expectMovedPlace(finding.place, (asDrawn[i] as Finding).place, motion);
}

/** A mirror swaps the sides of a machine, and with them which of two findings on sides comes first. */
function inOrderOf(asDrawn: readonly Finding[], findings: readonly Finding[], motion: PlanMotion): Finding[] {
  const keyOf = (finding: Finding, part: string) => [finding.verdict, part, ...finding.subjects].join(':');
  const order = asDrawn.map((finding) => keyOf(finding, finding.part ?? ''));
  const placeOf = (finding: Finding) => order.indexOf(keyOf(finding, wordIn(motion, finding.part ?? '')));
  return findings.toSorted((a, b) => placeOf(a) - placeOf(b));
}

/** What a finding must agree on; numbers near enough to the expected ones become them. */
const foundSummary = (check: Check, plan: Plan, finding: Finding, wanted: ExpectedFinding | undefined, motion: PlanMotion) => ({
  verdict: finding.verdict,
  part: finding.part === null ? null : wordIn(motion, finding.part),
  subjects: finding.subjects,
  measured: snap(finding.measured, wanted?.measured, wanted?.within ?? ROUNDING, motion),
  limit: wanted?.limit === undefined ? 'any' : snap(finding.limit, wanted.limit, ROUNDING, motion),
  asks: finding.ask?.path.join('.') ?? null,
  repairs: repairsOf(check, plan, finding).map((repair) => repair.id),
});

const expectedSummary = ({ verdict, part, subjects, measured, limit, asks, repairs = [] }: ExpectedFinding) => ({
  verdict,
  part: part ?? null,
  subjects,
  measured,
  limit: limit === undefined ? 'any' : limit,
  asks: asks ?? null,
  repairs,
});

function snap(value: MeasuredValue | null, wanted: MeasuredValue | null | undefined, within: number, motion: PlanMotion) {
  if (typeof value === 'string') return wordIn(motion, value);
  if (typeof value !== 'number' || typeof wanted !== 'number') return value;
  return Math.abs(value - wanted) <= within ? wanted : value;
}

/** Applying a repair removes or betters its finding, and makes no new stop of any check. */
export function expectRepaired(plan: Plan, finding: Finding, repair: Repair): void {
  const repaired = edit(plan, repair.id, repair.edit).plan;
  expect(repaired).not.toBe(plan);
  const before = runChecks(deriveScene(plan), CHECKS);
  const after = runChecks(deriveScene(repaired), CHECKS);
  expect(after.filter((item) => item.id === finding.id && !isBetter(item, finding)).map(headline)).toEqual([]);
  const stops = new Set(before.filter(isStop).map(({ id }) => id));
  expect(after.filter((item) => isStop(item) && !stops.has(item.id)).map(headline)).toEqual([]);
}

const isStop = ({ verdict }: Finding) => verdict === 'stop';

const RANK: Record<Verdict, number> = { stop: 0, ask: 1, watch: 2, clear: 3 };

const isBetter = (after: Finding, before: Finding) =>
  RANK[after.verdict] > RANK[before.verdict] || (after.verdict === before.verdict && (after.margin ?? 0) > (before.margin ?? 0));

/** A finding in one line, for a failure that can be read. */
export const headline = (finding: Finding) => `${finding.verdict} ${finding.id}: ${findingWords(finding, formatterFor('us'))}`;
