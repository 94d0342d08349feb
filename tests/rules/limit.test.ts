import { expect, test } from 'vitest';
import { type Band, forReference, judge, limit, narrow } from '../../src/rules/limit';

const band = (min: number | null, max: number | null): Band => ({ min, max });

test.each([
  { band: band(10, 20), value: 10, is: 'pass' },
  { band: band(10, 20), value: 15, is: 'pass' },
  { band: band(10, 20), value: 20, is: 'pass' },
  { band: band(10, 20), value: 9.9, is: 'low' },
  { band: band(10, 20), value: 20.1, is: 'high' },
  { band: band(10, null), value: 9.9, is: 'low' },
  { band: band(10, null), value: 1e9, is: 'pass' },
  { band: band(null, 20), value: -1e9, is: 'pass' },
  { band: band(null, 20), value: 20.1, is: 'high' },
  { band: band(null, null), value: 0, is: 'pass' },
  { band: band(null, null), value: Number.NaN, is: 'low' },
])('$value in $band is $is', (row) => expect(judge(row.band, row.value)).toBe(row.is));

test.each([
  { one: band(10, 20), other: band(5, 15), both: band(10, 15) },
  { one: band(5, 15), other: band(10, 20), both: band(10, 15) },
  { one: band(null, 20), other: band(5, null), both: band(5, 20) },
  { one: band(5, null), other: band(null, 20), both: band(5, 20) },
  { one: band(null, null), other: band(null, null), both: band(null, null) },
])('within both $one and $other', ({ one, other, both }) => expect(narrow(one, other)).toEqual(both));

test('a limit bears the bounds that it has; one for reference says so', () => {
  const source = { text: 'Invented for this test.', documents: [], confidence: 'read' } as never;
  const bound = limit('own', 'Own', 'm', { max: 3 }, source);
  expect(bound).toEqual({ id: 'own', title: 'Own', unit: 'm', min: null, max: 3, source: [source] });
  expect(limit('own', 'Own', 'm', { min: 2 })).toMatchObject({ min: 2, max: null });
  expect(forReference(bound)).toEqual({ ...bound, isForReference: true });
});
