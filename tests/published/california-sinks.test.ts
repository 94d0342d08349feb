import { expect, test } from 'vitest';
import { judge, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { BOARD_LENGTH, BOWL_DEPTH, BOWL_SIZE, MACHINE_BOARDS, SINK_BOARDS, SINK_BOWLS } from '../../src/topics/cleanliness';
import { CHECKS } from '../../src/topics/registry';
import { linePlan } from '../support/linePlan';

const INCH = 0.0254;

// source: California Health and Safety Code §114099(a)(b): three compartments, two integral drainboards · read · exact
test.each([
  [SINK_BOWLS, 3, 'pass'],
  [SINK_BOWLS, 2, 'low'],
  [SINK_BOARDS, 2, 'pass'],
  [SINK_BOARDS, 1, 'low'],
] as const)('$title: %d is %s', (limit, count, expected) => expect(judge(limit, count)).toBe(expected));

// memory: California county plan-check guides: bowls 18 × 18 × 12 in, boards 18 in · memory · exact
test.each([
  [BOWL_SIZE, 18],
  [BOWL_DEPTH, 12],
  [BOARD_LENGTH, 18],
] as const)('$title: %d in', (limit, inches) => expect(judge(limit, inches * INCH)).toBe('pass'));

// source: California Health and Safety Code §114103(a): two drainboards, one at the soiled entry, one at the clean exit · read · exact
test.each([
  [2, 'pass', 'clear'],
  [1, 'low', 'stop'],
  [0, 'low', 'stop'],
] as const)('a machine with %d boards: %s', (boards, expected, verdict) => {
  expect(judge(MACHINE_BOARDS, boards)).toBe(expected);
  const plan = linePlan({}, (draft) => void draft.tables.splice(boards));
  const found = runChecks(deriveScene(plan), CHECKS).find(({ check }) => check === 'configuration-possible');
  expect(found?.verdict).toBe(verdict);
  const isCited = found?.source.kind === 'published' && found.source.document === 'California Health and Safety Code';
  expect(isCited).toBe(verdict === 'stop');
});
