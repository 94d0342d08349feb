import { expect, test } from 'vitest';
import { CLEANING_ROOM, judge, judgeGap } from '../../src/engineering';

const INCH = 0.0254;

// source: L-25, W-F25 · Grandview Heights OH, Code 1721.12: 14 in from the wall, or sealed · read · exact
test.each([
  [14, 'pass'],
  [13.9, 'low'],
] as const)('%d in behind it: %s', (inches, expected) => expect(judge(CLEANING_ROOM, inches * INCH)).toBe(expected));

// source: L-25, W-F25 · Grandview Heights OH, Code 1721.12: sealed where there is less · read · exact
test('sealed, any gap will do', () => expect(judgeGap({ gapM: 5 * INCH, cleanable: false, sealed: true }, 'any').pass).toBe(true));
