import { expect, test } from 'vitest';
import { diningArea, seatsNeeded } from '../../src/engineering';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: L-37, L-LT10 · UFC 4-740-12AN §3-2: 600 meals, 2 sittings, 80 %, 15 sf · read · exact
test('375 seats and 5,625 sf', () => {
  const seats = valueOf(seatsNeeded({ meals: 600, sittings: 2, occupancy: 0.8 }));
  expect(seats).toBeCloseTo(375, 9);
  expect(seats * 0.8).toBeCloseTo(300, 9);
  expect(fromSI(valueOf(diningArea({ seats, seatM2: toSI(15, 'ft2') })), 'ft2')).toBeCloseTo(5625, 6);
});
