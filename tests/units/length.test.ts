import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, parseLength } from '../../src/units';

/** With common spaces for those that do not break. */
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** What a person types, and the millimetres it means whatever the fallback unit. */
const TYPED: [text: string, mm: number][] = [
  [`6' 4 1/2"`, 1943.1],
  [`6'4.5`, 1943.1],
  [`6'-4 1/2"`, 1943.1],
  [`6' - 4 1/2"`, 1943.1],
  [`6'4-1/2"`, 1943.1],
  ['6-4 1/2', 1943.1],
  ['6-4', 1930.4],
  ['6′ 4 ½″', 1943.1],
  ['6’ 4½”', 1943.1],
  ["6' 4½''", 1943.1],
  ['6 ft 4 in', 1930.4],
  ['6ft4in', 1930.4],
  ['6 ft. 4 in.', 1930.4],
  ['6 feet 4 inches', 1930.4],
  ['6 FT', 1828.8],
  ["6'", 1828.8],
  ["6.5'", 1981.2],
  ['1 foot', 304.8],
  ['0\' 3"', 76.2],
  ['76.5 in', 1943.1],
  ['76 1/2"', 1943.1],
  ['76-1/2"', 1943.1],
  ['76½"', 1943.1],
  ['76 ½ in.', 1943.1],
  ['³⁄₁₆″', 4.7625],
  ['6³⁄₁₆″', 157.1625],
  ['1/2 inch', 12.7],
  ['-3/8"', -9.525],
  ['−3/8″', -9.525],
  ['-6\' 4"', -1930.4],
  ['+2"', 50.8],
  ['72+1/2"', 1841.5],
  [`6' + 4 1/2"`, 1943.1],
  ["6' + 4", 1930.4],
  ['1200 + 350 mm', 1550],
  ['1943 mm', 1943],
  ['1943mm', 1943],
  ['1 943 mm', 1943],
  ['1\u202f943 mm', 1943],
  ['1\u00a0943\u00a0mm', 1943],
  ['12\u202f345″', 313563],
  ['12 345.5 mm', 12345.5],
  ['1,234,567 mm', 1234567],
  ['1,234.5 mm', 1234.5],
  ['1.234,5 mm', 1234.5],
  ['194.3 cm', 1943],
  ['1.943 m', 1943],
  ['1,5 m', 1500],
  ['0,125 m', 125],
  ['.5 m', 500],
  ['2 metres', 2000],
  ['0 mm', 0],
  ['-0"', 0],
  ['  2 \t m ', 2000],
];

/** A number without a unit takes the fallback. */
const BARE: [text: string, mm: number, inches: number][] = [
  ['1943', 1943, 1943],
  ['76 1/2', 76.5, 76.5],
  ['76½', 76.5, 76.5],
  ['1/2', 0.5, 0.5],
  ['76-1/2', 76.5, 76.5],
  ['.5', 0.5, 0.5],
  ['12,5', 12.5, 12.5],
  ['72 + 1/2', 72.5, 72.5],
  ['-12', -12, -12],
  ['12.', 12, 12],
];

/** What is refused, and a word that the reason must have. */
const REFUSED: [text: string, reason: RegExp][] = [
  ['', /type a length/i],
  ['   ', /type a length/i],
  ['abc', /not a length/],
  ['mm', /not a length/],
  ['"', /not a length/],
  ['--4', /not a length/],
  ['4 mm 5', /not a length/],
  [`4" 3'`, /not a length/],
  ['1e5', /not a unit|not a length/],
  ['0x10', /not a unit|not a length/],
  ['NaN', /not a length/],
  ['Infinity', /infinite/],
  ['-∞', /infinite/],
  ['no limit', /infinite/],
  ['10 yd', /“yd” is not a unit/],
  ['5 km', /“km” is not a unit/],
  ['6 4', /two numbers without a unit/i],
  ['6 4 1/2', /two numbers without a unit/i],
  ['6 400 in', /two numbers without a unit/i],
  ['3/0"', /0 below/],
  ['6\' 1/0"', /0 below/],
  [`6' 12"`, /less than 12/],
  ['6-12', /less than 12/],
  ['1943-200', /less than 12/],
  [`6.5' 3"`, /whole feet/],
  ['5 +', /missing/],
  ['+ + 5', /missing/],
  ['1,943 mm', /two ways/],
  ['1,943"', /two ways/],
  ['1.2.3 mm', /not a number/],
  ['1 m + 200', /unit/],
  ['9'.repeat(400), /too long/],
  ['1'.repeat(81), /too long/],
  ['<script>', /not a length/],
];

describe('parseLength', () => {
  it.each(TYPED)('reads %j', (text, mm) => {
    expect(parseLength(text, 'mm')).toEqual({ ok: true, mm });
    expect(parseLength(text, 'in')).toEqual({ ok: true, mm });
  });

  it.each(BARE)('reads %j in the fallback unit', (text, mm, inches) => {
    expect(parseLength(text, 'mm')).toEqual({ ok: true, mm });
    expect(parseLength(text, 'in')).toEqual({ ok: true, mm: Number((inches * 25.4).toPrecision(12)) });
  });

  it.each(REFUSED)('refuses %j', (text, reason) => {
    for (const fallback of ['mm', 'in'] as const) {
      expect(parseLength(text, fallback)).toEqual({ ok: false, reason: expect.stringMatching(reason) });
    }
  });

  it('refuses a number of inches in thousands, but reads one in millimetres', () => {
    expect(parseLength('6 400', 'mm')).toEqual({ ok: true, mm: 6400 });
    expect(parseLength('6 400', 'in').ok).toBe(false);
  });

  it('answers any text at all with a finite length or a reason', () => {
    const characters = fc.constantFrom(...`0123456789 .,'"/-+′″½⅛⁄mcinft`);
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: characters, maxLength: 20 })), fc.constantFrom('mm', 'in'), (text, fallback) => {
        const parsed = parseLength(text, fallback);
        return parsed.ok ? Number.isFinite(parsed.mm) : parsed.reason.length > 0;
      }),
      { seed: 7, numRuns: 5000 },
    );
  });
});

const SHOWN: [mm: number, us: string, metric: string][] = [
  [0, '0″', '0 mm'],
  [-0, '0″', '0 mm'],
  [1943.1, '6′ 4 ½″', '1943 mm'],
  [1828.8, '6′ 0″', '1829 mm'],
  [304.8, '1′ 0″', '305 mm'],
  [1841.5, '6′ 0 ½″', '1842 mm'],
  [(11 + 31 / 32) * 25.4, '1′ 0″', '304 mm'],
  [(11 + 15 / 16) * 25.4, '11 ¹⁵⁄₁₆″', '303 mm'],
  [12.7, '½″', '13 mm'],
  [4.7625, '³⁄₁₆″', '4.8 mm'],
  [3.175, '⅛″', '3.2 mm'],
  [-9.525, '−⅜″', '−9.5 mm'],
  [-1943.1, '−6′ 4 ½″', '−1943 mm'],
  [0.4, '0″', '0.4 mm'],
  [-0.01, '0″', '0 mm'],
  [9.96, '⅜″', '10 mm'],
  [9999, '32′ 9 ¹¹⁄₁₆″', '9999 mm'],
  [12345, '40′ 6″', '12 345 mm'],
  [500_000, '1640′ 5 ¹⁄₁₆″', '500 000 mm'],
  [Number.POSITIVE_INFINITY, 'no limit', 'no limit'],
  [Number.NEGATIVE_INFINITY, '−∞', '−∞'],
  [Number.NaN, '—', '—'],
];

describe('formatLength', () => {
  it.each(SHOWN)('%d mm is %s or %s', (mm, us, metric) => {
    expect(plain(formatLength(mm, 'us'))).toBe(us);
    expect(plain(formatLength(mm, 'metric'))).toBe(metric);
  });

  it('never breaks over two lines, and parts thousands from 10 000 on', () => {
    for (const system of ['us', 'metric'] as const) expect(formatLength(12345.6, system)).not.toMatch(/[ \n]/);
    expect(formatLength(9999, 'metric')).toMatch(/^9999\s/);
    expect(formatLength(10_000, 'metric')).toMatch(/^10\u202f000\s/);
  });

  it.each([
    [8, '6′ 4 ½″'],
    [16, '6′ 4 ⁹⁄₁₆″'],
    [32, '6′ 4 ¹⁷⁄₃₂″'],
  ] as const)('rounds 6′ 4 17/32″ to 1/%i', (denominator, text) => {
    expect(plain(formatLength((76 + 17 / 32) * 25.4, 'us', { denominator }))).toBe(text);
  });

  it.each([
    [50.8, '+2″', '+51 mm'],
    [-50.8, '−2″', '−51 mm'],
    [0, '0″', '0 mm'],
  ])('with a sign, %d mm is %s or %s', (mm, us, metric) => {
    expect(plain(formatLength(mm, 'us', { sign: true }))).toBe(us);
    expect(plain(formatLength(mm, 'metric', { sign: true }))).toBe(metric);
  });

  it('in inches alone, 6′ 4 ½″ is 76 ½″', () => expect(plain(formatLength(1943.1, 'us', { unitInches: true }))).toBe('76 ½″'));

  it.each([8, 16, 32] as const)('is read back within half of 1/%i in', (denominator) => {
    fc.assert(
      fc.property(fc.double({ min: -500_000, max: 500_000, noNaN: true }), fc.boolean(), (mm, unitInches) => {
        const parsed = parseLength(formatLength(mm, 'us', { denominator, unitInches }), 'mm');
        return parsed.ok && Math.abs(parsed.mm - mm) <= 25.4 / denominator / 2 + 1e-6;
      }),
      { seed: 11, numRuns: 2000 },
    );
  });

  it('in metric is read back within half a millimetre', () => {
    fc.assert(
      fc.property(fc.double({ min: -500_000, max: 500_000, noNaN: true }), (mm) => {
        const parsed = parseLength(formatLength(mm, 'metric'), 'in');
        return parsed.ok && Math.abs(parsed.mm - mm) <= 0.5 + 1e-9;
      }),
      { seed: 12, numRuns: 2000 },
    );
  });

  it('read back and shown again is the same text', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.constantFrom('us', 'metric'), (mm, system) => {
        const text = formatLength(mm, system);
        const parsed = parseLength(text, 'mm');
        return parsed.ok && formatLength(parsed.mm, system) === text;
      }),
      { seed: 13, numRuns: 2000 },
    );
  });
});
