import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { CLEANING_ROOM, CLEANING_ROOM_NARROW } from '../../src/topics/cleanliness';
import { judgeGap } from '../../src/topics/room';

const INCH = 0.0254;

// source: Grandview Heights OH, Code 1721.12: 14 in from the wall, or sealed · read · exact
test.each([
  [14, 'pass'],
  [13.9, 'low'],
] as const)('%d in behind it: %s', (inches, expected) => expect(judge(CLEANING_ROOM, inches * INCH)).toBe(expected));

// source: Grandview Heights OH, Code 1721.12: sealed where there is less · read · exact
test('sealed, any gap will do', () => expect(judgeGap({ gapM: 5 * INCH, cleanable: false, sealed: true }, 'any').pass).toBe(true));

// source: the same, of what is shorter than 60 in: 14 in at both sides and 6 in behind, or 6 in and 14 in · read · exact
test.each([
  [6, 'pass'],
  [5.9, 'low'],
] as const)('%d in on the other sides: %s', (inches, expected) => expect(judge(CLEANING_ROOM_NARROW, inches * INCH)).toBe(expected));
