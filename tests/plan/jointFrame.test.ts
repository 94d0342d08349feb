import { describe, expect, it } from 'vitest';
import { findFamily, type Side } from '../../src/catalog';
import { FLUSH, jointFrame, type Machine, UNKNOWN_HOOK_UP } from '../../src/plan';

const sheet = findFamily('recirculating-hot-water')!;
const machine = (rotationDeg: number): Machine => ({
  id: 'machine',
  sheet: sheet.id,
  x: 1000,
  y: 2000,
  rotationDeg,
  controls: 'front-left',
  electrical: null,
  hookUp: UNKNOWN_HOOK_UP,
});

// Footprint 737 × 711, centre (1000, 2000); doors in the middle of its sides.
const CASES: { name: string; side: Side; turned: number; place?: object; x: number; y: number; headingDeg: number }[] = [
  { name: 'left', side: 'left', turned: 0, x: 631.5, y: 2000, headingDeg: 180 },
  { name: 'right', side: 'right', turned: 0, x: 1368.5, y: 2000, headingDeg: 0 },
  { name: 'front', side: 'front', turned: 0, x: 1000, y: 2355.5, headingDeg: 90 },
  { name: 'back', side: 'back', turned: 0, x: 1000, y: 1644.5, headingDeg: -90 },
  { name: 'right, turned a quarter: it looks down', side: 'right', turned: 90, x: 1000, y: 2368.5, headingDeg: 90 },
  { name: 'front, turned half: it looks up', side: 'front', turned: 180, x: 1000, y: 1644.5, headingDeg: 270 },
  { name: 'a gap goes outward', side: 'left', turned: 0, place: { gap: 10 }, x: 621.5, y: 2000, headingDeg: 180 },
  {
    name: 'an offset goes to the right of a person walking out',
    side: 'right',
    turned: 0,
    place: { offset: 10 },
    x: 1368.5,
    y: 2010,
    headingDeg: 0,
  },
  { name: 'on the left side that is up', side: 'left', turned: 0, place: { offset: 10 }, x: 631.5, y: 1990, headingDeg: 180 },
  { name: 'a skew turns clockwise about the start', side: 'right', turned: 0, place: { skewDeg: 5 }, x: 1368.5, y: 2000, headingDeg: 5 },
  {
    name: 'all at once, turned',
    side: 'right',
    turned: 90,
    place: { gap: 10, offset: 20, skewDeg: -5 },
    x: 980,
    y: 2378.5,
    headingDeg: 85,
  },
];

describe('jointFrame', () => {
  it.each(CASES)('$name', ({ side, turned, place, x, y, headingDeg }) => {
    expect(jointFrame(machine(turned), sheet, side, { ...FLUSH, ...place })).toEqual({
      x: expect.closeTo(x, 9),
      y: expect.closeTo(y, 9),
      headingDeg,
    });
  });
});
