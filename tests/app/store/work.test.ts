import { produce } from 'immer';
import { afterEach, describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../../src/app/store/ownChecks';
import { deriveMotionWork, deriveWork, takeChecks } from '../../../src/app/store/work';
import type { Check } from '../../../src/rules';
import { examplePlan } from '../../support/examplePlans';

const plan = examplePlan('cafe-straight');
const quick: readonly Check[] = OWN_CHECKS.slice(0, OWN_CHECKS.length - 6);

afterEach(() => takeChecks([], []));

describe('what is worked out from a plan', () => {
  it('is worked out once for one plan', () => {
    takeChecks(OWN_CHECKS, OWN_CHECKS);
    expect(deriveWork(plan)).toBe(deriveWork(plan));
    expect(deriveWork({ ...plan })).not.toBe(deriveWork(plan));
  });

  it('says nothing before the checks are here, and is worked out anew when they are', () => {
    takeChecks([], []);
    expect(deriveWork(plan).findings).toEqual([]);
    takeChecks(OWN_CHECKS, OWN_CHECKS);
    expect(deriveWork(plan).findings.length).toBeGreaterThan(0);
  });
});

describe('while something is dragged', () => {
  const moved = produce(plan, (draft) => {
    const [thing] = draft.things;
    if (thing) thing.x += 10;
  });

  it('only the quick checks are run', () => {
    takeChecks(OWN_CHECKS, quick);
    const ids = new Set(quick.map(({ id }) => id));
    const { findings } = deriveMotionWork(deriveWork(plan), moved);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.filter(({ check }) => !ids.has(check))).toEqual([]);
  });

  it('the numbers are those that the list has, the others’ findings counted', () => {
    takeChecks(OWN_CHECKS, quick);
    const before = deriveWork(plan);
    const { numbers } = deriveMotionWork(before, plan);
    takeChecks(OWN_CHECKS, OWN_CHECKS);
    const whole = deriveMotionWork(deriveWork(plan), plan).numbers;
    expect(new Map(numbers)).toEqual(new Map(whole));
  });
});
