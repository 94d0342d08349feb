import { expect, test } from 'vitest';
import { DOOR_PULL, DOOR_PUSH } from '../../src/topics/room';

const INCH = 0.0254;

// source: ADA Standards 404.2.4.1, by notes on the Florida Building Code: front approach, pull side · secondary · exact
test('pull side: 60 in deep, 18 in beside the latch', () => {
  expect(DOOR_PULL.depthM).toBeCloseTo(60 * INCH, 12);
  expect(DOOR_PULL.besideM).toBeCloseTo(18 * INCH, 12);
});

// source: ADA Standards 404.2.4.1: front approach, push side · memory · exact
test('push side: 48 in deep, 12 in beside the latch', () => {
  expect(DOOR_PUSH.depthM).toBeCloseTo(48 * INCH, 12);
  expect(DOOR_PUSH.besideM).toBeCloseTo(12 * INCH, 12);
});
