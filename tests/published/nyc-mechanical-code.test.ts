import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { MAKE_UP_DIFFERENCE, MAKE_UP_DIFFERENCE_HELPING, makeUpDifference } from '../../src/topics/air';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const difference = (makeUpF: number, roomF: number) => valueOf(makeUpDifference({ makeUpC: toSI(makeUpF, 'F'), roomC: toSI(roomF, 'F') }));

// source: NYC Mechanical Code 508.1.1, make-up air within 10 °F of the room, 25 °F where it helps the load · read · exact
test.each([
  [65, 75, MAKE_UP_DIFFERENCE, 'pass'],
  [64.9, 75, MAKE_UP_DIFFERENCE, 'high'],
  [85.1, 75, MAKE_UP_DIFFERENCE, 'high'],
  [50, 75, MAKE_UP_DIFFERENCE_HELPING, 'pass'],
  [49.9, 75, MAKE_UP_DIFFERENCE_HELPING, 'high'],
])('%d °F into %d °F', (makeUp, room, limit, judgement) => expect(judge(limit, difference(makeUp, room))).toBe(judgement));
