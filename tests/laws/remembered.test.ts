import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/plan';
import { deriveFigures, type Finding, findRepairs, runChecks } from '../../src/rules';
import { deriveScene, type Scene } from '../../src/scene';
import { findingWords, repairWords } from '../../src/text';
import { CHECKS, FIGURES } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { tellFigure } from '../support/tellFigure';
import { type ArbitraryEdit, applyIfSound, arbitraryEdit, arbitraryLine } from './arbitraryPlan';

/**
 * What is remembered is what would be worked out anew: after each of a row of edits the findings and figures equal those
 * of a copy of the plan, no object of which was ever seen.
 */

const PARTS = ['demand', 'supply', 'air', 'finish', 'pipes', 'tariff', 'order'] as const;

/** Something about the building becomes known, unknown or other. */
const siteEdit: fc.Arbitrary<ArbitraryEdit> = fc
  .record({ part: fc.constantFrom(...PARTS), at: fc.nat(30), factor: fc.constantFrom(null, 0.5, 0.9, 1.2) })
  .map(({ part, at, factor }) => ({
    name: 'site',
    make: () => (draft) => {
      const group = draft[part] as Record<string, unknown>;
      const keys = Object.keys(group).filter((key) => typeof group[key] === 'number' && key !== 'phase');
      const key = keys[at % Math.max(1, keys.length)];
      if (key !== undefined) group[key] = factor === null ? null : (group[key] as number) * factor;
    },
  }));

const ofUs = formatterFor('us');

const IS_TOLD: Record<Exclude<keyof Finding, 'say' | 'message' | 'repairs'>, true> = {
  id: true,
  check: true,
  part: true,
  title: true,
  group: true,
  verdict: true,
  measured: true,
  limit: true,
  watchLimit: true,
  margin: true,
  unit: true,
  relation: true,
  subjects: true,
  place: true,
  elevation: true,
  source: true,
  ask: true,
};
const TOLD = Object.keys(IS_TOLD) as (keyof typeof IS_TOLD)[];

/** Everything that people can see of it, as text. */
function words(scene: Scene): string[] {
  const findings = runChecks(scene, CHECKS).map((finding) => ({
    told: TOLD.map((key) => finding[key]),
    says: findingWords(finding, ofUs),
    repairs: finding.repairs,
    tried:
      finding.repairs.length === 0 ? [] : findRepairs(scene, CHECKS, finding.id).map((repair) => [repair.id, repairWords(repair, ofUs)]),
  }));
  const figures = deriveFigures(scene, FIGURES).map(tellFigure);
  return [...findings, ...figures].map((item) => JSON.stringify(item));
}

/** The first line in which two lists differ; undefined where they are the same. */
const firstDifference = (a: readonly string[], b: readonly string[]) =>
  a.find((line, i) => line !== b[i]) ?? (a.length === b.length ? undefined : 'one is longer');

describe('what is remembered', () => {
  it('equals what is worked out from scratch, after any row of edits', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(arbitraryLine, fc.array(fc.oneof(arbitraryEdit, siteEdit), { minLength: 1, maxLength: 6 }), (line, edits) => {
        const plans = edits.reduce<Plan[]>((done, one) => [...done, applyIfSound(done.at(-1) as Plan, one)], [line]);
        // All remembered ones first: a scratch run in between would be what is remembered.
        const remembered = plans.map((plan) => words(deriveScene(plan)));
        for (const [i, plan] of plans.entries()) {
          expect(firstDifference(remembered[i] ?? [], words(deriveScene(structuredClone(plan))))).toBeUndefined();
        }
      }),
      { seed: 20_261_125, numRuns: 30, endOnFailure: true },
    );
  });
});
