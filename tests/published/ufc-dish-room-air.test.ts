import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { KITCHEN_CHANGES, MAKE_UP_TEMPERED, WORK_TEMPERATURE } from '../../src/topics/air';
import { EXHAUST_AT_MACHINES, exhaustByFace } from '../../src/topics/hood';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// source: UFC 3-410-01FA, 15 May 2003, 4-10.1, superseded, 50 fpm at the face of a canopy of 4 × 4 ft · read · exact
test('800 cfm', () => expectNear(fromSI(valueOf(exhaustByFace({ areaM2: toSI(16, 'ft2') })), 'cfm'), 800, 1e-9 * 800));

// source: UFC 3-410-01FA, 15 May 2003, 4-10.1, superseded, work area and make-up air · read · exact
test.each([
  ['85 °F', WORK_TEMPERATURE, 85, 85.1],
  ['65 °F', MAKE_UP_TEMPERED, 65, 64.9],
])('%s', (_name, limit, pass, fail) => {
  expect(judge(limit, toSI(pass, 'F'))).toBe('pass');
  expect(judge(limit, toSI(fail, 'F'))).not.toBe('pass');
});

// source: UFC 4-740-01NF and 4-750-01NF, 16 Apr 2004, 6-2.3.2, air changes of a kitchen · read · exact
test.each([
  [19.9, 'low'],
  [20, 'pass'],
  [30, 'pass'],
  [30.1, 'high'],
])('%d changes: %s', (changes, judgement) => expect(judge(KITCHEN_CHANGES, changes)).toBe(judgement));

// source: UFC 3-410-01FA, 15 May 2003, 4-10.1, superseded, about 75 % of the exhaust at the dishwasher · read · exact
test.each([
  [0.75, 'pass'],
  [0.74, 'low'],
])('%d at the dishwasher: %s', (share, judgement) => expect(judge(EXHAUST_AT_MACHINES, share)).toBe(judgement));
