import { describe, expect, test } from 'vitest';
import { createPlan } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { check } from '../../src/topics/room/checks/passable-width';
import { linePlan } from '../support/linePlan';
import { addThingBetween } from '../support/roomPlan';

const INCH = 25.4;

/** The way to the operator through a gap between two work tables. */
function aisle(gapInches: number) {
  const plan = linePlan({}, (draft) => {
    addThingBetween(draft, 'bench', [0, 2150], [1500, 2440], { kind: 'work-table' });
    addThingBetween(draft, 'long-bench', [1500 + gapInches * INCH, 2150], [4045.5, 2440], { kind: 'work-table' });
  });
  return runChecks(deriveScene(plan), [check]).find(({ part }) => part === 'aisle');
}

// source: 29 CFR 1910.36(g)(2), exit access at least 28 in at all points · read · exact
describe('28 in of exit access', () => {
  test.each([
    { inches: 28, verdict: 'watch' },
    { inches: 27.99, verdict: 'stop' },
  ])('$inches in: $verdict', ({ inches, verdict }) => {
    const finding = aisle(inches);
    expect(finding?.verdict).toBe(verdict);
    expect(finding?.measured).toBeCloseTo(inches * INCH, 6);
    expect(finding?.limit).toBeCloseTo(28 * INCH, 9);
  });

  test.each([
    { inches: 28, verdict: 'clear' },
    { inches: 27.99, verdict: 'stop' },
  ])('a door of $inches in: $verdict', ({ inches, verdict }) => {
    const plan = linePlan({}, (draft) => {
      for (const opening of draft.room.openings) opening.width = inches * INCH;
    });
    expect(runChecks(deriveScene(plan), [check]).find(({ part }) => part === 'door')?.verdict).toBe(verdict);
  });

  test('is what a new plan asks for', () => {
    expect(createPlan().settings.personWidth).toBeCloseTo(28 * INCH, 9);
  });
});

// source: FDA/CFP Food Establishment Plan Review Guide 2000, Section III Part 6: aisles of 36 in · read · exact
describe('36 in of aisle between equipment, recommended', () => {
  test.each([
    { inches: 36, verdict: 'clear' },
    { inches: 35.9, verdict: 'watch' },
  ])('$inches in: $verdict', ({ inches, verdict }) => {
    expect(aisle(inches)?.verdict).toBe(verdict);
  });

  test('names its own source only where it is what falls short', () => {
    const documents = [27, 30, 40].map((inches) => {
      const source = aisle(inches)?.source;
      return source?.kind === 'published' ? source.document : null;
    });
    expect(documents).toEqual(['29 CFR', 'FDA/CFP Food Establishment Plan Review Guide, 2000', '29 CFR']);
  });
});
