import { produce } from 'immer';
import { describe, expect, it } from 'vitest';
import { CHECKS, type Check, type Finding, type MeasuredValue, runChecks, type Verdict } from '../../src/checks';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { formatterFor } from '../../src/units';
import { type PlanMotion, PLAN_MOTIONS, movedPlan, wordIn } from './planMotions';
import { expectMovedPlace } from './movedPlace';

/** One case of a check: a plan, and every finding that the check must make of it, worst first. */
export interface CheckCase {
  name: string;
  plan: Plan;
  expect: ExpectedFinding[];
}

/** What a finding must be. What is left out must be absent: no part, no question, no repair. */
export interface ExpectedFinding {
  verdict: Verdict;
  part?: string;
  subjects: string[];
  measured: MeasuredValue | null;
  /** Tolerance of a measured number; rounding alone when it is left out. */
  within?: number;
  /** Checked where it is given. */
  limit?: MeasuredValue | null;
  /** Path in the plan of the input that is asked for, joined by dots. */
  asks?: string;
  /** Ids of the repairs offered. */
  repairs?: string[];
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
    describe.each(cases)('$name', (row) => {
      it.each(PLAN_MOTIONS)('$name', (motion) => expectFindings(check, row, motion));
      const offered = findingsOf(check, row.plan).flatMap((finding) => finding.repairs.map((repair) => ({ finding, repair })));
      if (offered.length > 0) it.each(offered)('repair $repair.id', ({ finding, repair }) => expectRepaired(row.plan, finding, repair));
    });
  });
}

export const findingsOf = (check: Check, plan: Plan): Finding[] => runChecks(deriveScene(plan), [check]);

function expectFindings(check: Check, row: CheckCase, motion: PlanMotion): void {
  const findings = findingsOf(check, movedPlan(row.plan, motion));
  expect(findings.map(summary)).toEqual(row.expect.map(expectedSummary));
  for (const [i, wanted] of row.expect.entries()) {
    const finding = findings[i] as Finding;
    expectValue(finding.measured, wanted.measured, wanted.within ?? ROUNDING, motion);
    if (wanted.limit !== undefined) expectValue(finding.limit, wanted.limit, ROUNDING, motion);
    if (wanted.says !== undefined && motion.mirror !== true) expect(finding.say(formatterFor('us'))).toBe(wanted.says);
  }
  const asDrawn = findingsOf(check, row.plan);
  for (const [i, finding] of findings.entries()) expectMovedPlace(finding.place, (asDrawn[i] as Finding).place, motion);
}

const summary = ({ verdict, part, subjects, ask, repairs }: Finding) => ({
  verdict,
  part,
  subjects,
  asks: ask?.path.join('.') ?? null,
  repairs: repairs.map((repair) => repair.id),
});

const expectedSummary = ({ verdict, part, subjects, asks, repairs = [] }: ExpectedFinding) => ({
  verdict,
  part: part ?? null,
  subjects,
  asks: asks ?? null,
  repairs,
});

function expectValue(value: MeasuredValue | null, wanted: MeasuredValue | null, within: number, motion: PlanMotion): void {
  if (typeof wanted !== 'number') return expect(value).toEqual(typeof wanted === 'string' ? wordIn(motion, wanted) : wanted);
  expect(value).toBeTypeOf('number');
  expect(Math.abs((value as number) - wanted), `measured ${value}, expected ${wanted}`).toBeLessThanOrEqual(within);
}

/** Applying a repair removes or betters its finding, and makes no new stop of any check. */
export function expectRepaired(plan: Plan, finding: Finding, repair: Finding['repairs'][number]): void {
  const repaired = produce(plan, repair.edit);
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
export const headline = (finding: Finding) => `${finding.verdict} ${finding.id}: ${finding.say(formatterFor('us'))}`;
