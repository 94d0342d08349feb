import { expect, test } from 'vitest';
import { BOARD_LENGTH, BOWL_DEPTH, BOWL_SIZE, judge, SINK_BOARDS, SINK_BOWLS } from '../../src/engineering';

const INCH = 0.0254;

// source: L-20 · California Health and Safety Code §114099(a)(b): three compartments, two integral drainboards · read · exact
test.each([
  [SINK_BOWLS, 3, 'pass'],
  [SINK_BOWLS, 2, 'low'],
  [SINK_BOARDS, 2, 'pass'],
  [SINK_BOARDS, 1, 'low'],
] as const)('$title: %d is %s', (limit, count, expected) => expect(judge(limit, count)).toBe(expected));

// memory: L-21 · California county plan-check guides: bowls 18 × 18 × 12 in, boards 18 in · memory · exact
test.each([
  [BOWL_SIZE, 18],
  [BOWL_DEPTH, 12],
  [BOARD_LENGTH, 18],
] as const)('$title: %d in', (limit, inches) => expect(judge(limit, inches * INCH)).toBe('pass'));
