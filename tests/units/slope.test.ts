import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatSlope, parseSlope } from '../../src/units';

/** Means the same on any plan. 1/4 in per ft is 1/48, 1/8 in per ft 1/96 (arithmetic). */
const TYPED: [text: string, ratio: number][] = [
  ['1/4" per ft', 1 / 48],
  ['¼″ per ft', 1 / 48],
  ['1/4 in/ft', 1 / 48],
  ['1/4 in per foot', 1 / 48],
  [`.25" / ft`, 1 / 48],
  ['-1/8" per ft', -1 / 96],
  ['−⅛″ per ft', -1 / 96],
  ['³⁄₁₆″ per ft', 1 / 64],
  ['1 1/2 in per ft', 1 / 8],
  ['2 %', 0.02],
  ['2%', 0.02],
  ['2,1 %', 0.021],
  ['−2.1 %', -0.021],
  ['1:48', 1 / 48],
  ['1 in 48', 1 / 48],
  ['20 mm/m', 0.02],
  ['0 %', 0],
];

const REFUSED: [text: string, reason: RegExp][] = [
  ['', /type a slope/i],
  ['flat', /not a slope/],
  ['1:0', /length of 0/],
  ['1/0" per ft', /0 below/],
  ['2 % per ft', /not a slope/],
  ['45°', /not a slope/],
  ['9'.repeat(100), /too long/],
];

describe('parseSlope', () => {
  it.each(TYPED)('reads %j', (text, ratio) => {
    for (const units of ['us', 'metric'] as const) {
      const parsed = parseSlope(text, units);
      expect(parsed.ok && Math.abs(parsed.ratio - ratio)).toBeLessThan(1e-12);
    }
  });

  it.each(REFUSED)('refuses %j', (text, reason) => {
    for (const units of ['us', 'metric'] as const) {
      expect(parseSlope(text, units)).toEqual({ ok: false, reason: expect.stringMatching(reason) });
    }
  });

  it('reads a bare number as it is shown: inches per foot, or per cent', () => {
    expect(parseSlope('0.3', 'us')).toEqual({ ok: true, ratio: 0.025 });
    expect(parseSlope('2.5', 'metric')).toEqual({ ok: true, ratio: 0.025 });
  });
});

const spaced = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('formatSlope', () => {
  it.each([
    [1 / 48, '¼″ per ft', '2.1 %'],
    [1 / 96, '⅛″ per ft', '1 %'],
    [-1 / 48, '−¼″ per ft', '−2.1 %'],
    [1 / 192, '¹⁄₁₆″ per ft', '0.52 %'],
    [0.125, '1 ½″ per ft', '12.5 %'],
    [0, '0″ per ft', '0 %'],
    [-1e-9, '0″ per ft', '0 %'],
  ])('%d is %s or %s', (ratio, us, metric) => {
    expect(spaced(formatSlope(ratio, 'us'))).toBe(us);
    expect(spaced(formatSlope(ratio, 'metric'))).toBe(metric);
  });

  it.each([
    ['us', 1 / 12 / 64],
    ['metric', 0.0005],
  ] as const)('in %s is read back within half a step', (units, half) => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (ratio) => {
        const parsed = parseSlope(formatSlope(ratio, units), units);
        return parsed.ok && Math.abs(parsed.ratio - ratio) <= half + 1e-9;
      }),
      { seed: 23, numRuns: 1000 },
    );
  });
});
