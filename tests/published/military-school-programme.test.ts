import { expect, test } from 'vitest';
import { DISH_ROOM_AREA } from '../../src/topics/people';

// source: Military-school educational specification, Food Service, 15 Nov 2011: dish room of 300 SF (28 m²) · read · whole m²
test('300 ft² are printed as 28 m²', () => {
  expect((DISH_ROOM_AREA.min ?? 0) / 0.3048 ** 2).toBeCloseTo(300, 9);
  expect(Math.round(DISH_ROOM_AREA.min ?? 0)).toBe(28);
});
