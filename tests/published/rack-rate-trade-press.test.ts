import { expect, test } from 'vitest';
import { rackRate } from '../../src/topics/line';

// source: trade magazine, fesmag.com 17513, restating the method · secondary · exact
test('a 2-minute cycle under a counter gives 24 racks an hour, not 30', () => {
  const rate = (loadS: number) => rackRate({ racksPerCycle: 1, washS: 120, rinseS: 0, dwellS: 0, loadS });
  expect(rate(30)).toEqual({ ok: true, value: 24 });
  expect(rate(0)).toEqual({ ok: true, value: 30 });
});
