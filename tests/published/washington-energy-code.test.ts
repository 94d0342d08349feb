import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { CAVITY_AIR, UNLISTED_HOOD_EXHAUST } from '../../src/topics/hood';
import { toSI } from '../../src/units';

// source: Wash. WAC 51-11C-40377, C403.7.7.1, 10 % into the cavity, 1000 cfm without a listing · read · exact
test.each([
  ['10 %', CAVITY_AIR, 0.1, 0.101],
  ['1000 cfm', UNLISTED_HOOD_EXHAUST, toSI(1000, 'cfm'), toSI(1001, 'cfm')],
])('%s', (_name, limit, pass, fail) => expect([pass, fail].map((value) => judge(limit, value))).toEqual(['pass', 'high']));
