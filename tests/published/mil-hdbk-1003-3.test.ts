import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { ROOM_SUCTION } from '../../src/topics/air';
import { toSI } from '../../src/units';

// source: MIL-HDBK-1003/3, 3.17 and 3.18, at most 0.05 in. wg below the outdoors · read · exact
test.each([
  [0.05, 'pass'],
  [0.051, 'high'],
])('%d in. wg: %s', (inches, judgement) => expect(judge(ROOM_SUCTION, toSI(inches, 'inH2O'))).toBe(judgement));
