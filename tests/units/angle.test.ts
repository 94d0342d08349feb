import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle, parseAngle } from '../../src/units';

describe('parseAngle', () => {
  it.each([
    ['45°', 45],
    ['45', 45],
    ['45 deg', 45],
    ['45 degrees', 45],
    ['-37,5°', -37.5],
    ['−1.5°', -1.5],
    ['+90', 90],
    ['-0', 0],
  ])('reads %j', (text, deg) => expect(parseAngle(text)).toEqual({ ok: true, deg }));

  it.each([
    ['', /type an angle/i],
    ['left', /not an angle/],
    ['1 rad', /not an angle/],
    ['45 %', /not an angle/],
    ['1'.repeat(90), /not an angle/],
  ])('refuses %j', (text, reason) => expect(parseAngle(text)).toEqual({ ok: false, reason: expect.stringMatching(reason) }));
});

describe('formatAngle', () => {
  it.each([
    [0, '0°'],
    [90, '90°'],
    [1.5, '1.5°'],
    [-37.46, '−37.5°'],
    [-0.01, '0°'],
  ])('%d is %s', (deg, text) => expect(formatAngle(deg)).toBe(text));

  it('is read back within half a tenth', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (deg) => {
        const parsed = parseAngle(formatAngle(deg));
        return parsed.ok && Math.abs(parsed.deg - deg) <= 0.05 + 1e-9;
      }),
      { seed: 24, numRuns: 1000 },
    );
  });
});
