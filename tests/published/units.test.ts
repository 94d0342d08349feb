import { describe, expect, it } from 'vitest';
import { convert, fromSI, MM_PER_FOOT, MM_PER_INCH, parseLength, toSI, type Unit } from '../../src/units';

/**
 * Sizes of units against print.
 * Exact values: definitions in NIST SP 811 (2008), B.6 to B.8, and NIST HB 44, Appendix C (US gallon of 231 in³).
 * Seven figures: NIST SP 811 (2008), B.9. Rows marked "from memory" were not read in the document itself.
 */

/** Row, unit, its size in the other unit: exact, and as printed with seven figures where it is printed. */
const SIZES: [row: string, unit: Unit, other: Unit, exact: number, printed: number | null][] = [
  ['ft², seven figures from memory', 'ft2', 'm2', 0.09290304, 9.290304e-2],
  ['ft³', 'ft3', 'm3', 0.028316846592, 2.831685e-2],
  ['US gallon', 'gal', 'm3', 3.785411784e-3, 3.785412e-3],
  ['US fluid ounce', 'floz', 'mL', 29.5735295625, 29.57353],
  ['gallon per minute', 'gpm', 'L/s', 0.0630901964, 6.30902e-2],
  ['cubic foot per minute', 'cfm', 'L/s', 0.4719474432, 0.4719474],
  ['cubic foot per minute in m³/h', 'cfm', 'm3/h', 1.69901079552, null],
  ['psi', 'psi', 'Pa', 6894.757293168361, 6.894757e3],
  ['inch of water, conventional', 'inH2O', 'Pa', 249.08891, 2.490889e2],
  ['foot of water, conventional', 'ftH2O', 'Pa', 2989.06692, 2.989067e3],
  ['pound', 'lb', 'kg', 0.45359237, 0.4535924],
  ['pound-force', 'lbf', 'N', 4.4482216152605, 4.448222],
  ['Btu, International Table', 'Btu', 'J', 1055.05585262, 1.055056e3],
  ['Btu per hour, seven figures from memory', 'Btu/h', 'W', 1055.05585262 / 3600, 0.2930711],
  ['Btu per pound', 'Btu/lb', 'J/kg', 2326, null],
  ['Btu per pound and °F', 'Btu/(lb·°F)', 'J/(kg·K)', 4186.8, null],
  ['ton of refrigeration', 'ton', 'W', (12_000 * 1055.05585262) / 3600, 3.516853e3],
  ['horsepower of 550 ft·lbf/s', 'hp', 'W', 550 * 0.3048 * 4.4482216152605, 7.456999e2],
  ['footcandle', 'fc', 'lx', 1 / 0.09290304, 10.76391],
  ['grain', 'gr', 'kg', 64.79891e-6, 6.479891e-5],
  ['grain per US gallon', 'gpg', 'mg/L', 64.79891 / 3.785411784, null],
];

// source: NIST SP 811 (2008), B.6 to B.9, and NIST HB 44, Appendix C · read, but for the rows that say otherwise · exact, and seven figures as printed
describe('sizes of units', () => {
  it.each(SIZES)('%s, exactly', (_row, unit, other, exact) => {
    expect(Math.abs(convert(1, unit, other) / exact - 1)).toBeLessThan(1e-12);
  });

  it.each(SIZES.filter(([, , , , printed]) => printed !== null))('%s, in seven figures', (_row, unit, other, _exact, printed) => {
    expect(Math.abs(convert(1, unit, other) / (printed ?? 0) - 1)).toBeLessThan(5e-7);
  });
});

// source: NIST SP 811 (2008), B.6, the international inch and foot · read · exact
describe('lengths', () => {
  it.each([
    ['1 in', 25.4],
    ['1 ft', 304.8],
    ['1 cm', 10],
    ['1 m', 1000],
  ])('%s', (text, mm) => expect(parseLength(text, 'mm')).toEqual({ ok: true, mm }));

  it('stand in the constants', () => expect([MM_PER_INCH, MM_PER_FOOT]).toEqual([25.4, 304.8]));
});

/** Values that the rows print rounded, beyond what is exact. */
const ROUNDED: [row: string, value: number, unit: Unit, other: Unit, printed: number, digits: number][] = [
  ['1 kW in Btu/h', 1, 'kW', 'Btu/h', 3412.141633, 6],
  ['1 Btu/h in W', 1, 'Btu/h', 'W', 0.2930710701722, 13],
  ['ton of refrigeration', 1, 'ton', 'W', 3516.852842, 6],
  ['horsepower', 1, 'hp', 'W', 745.699872, 6],
  ['footcandle', 1, 'fc', 'lx', 10.763910417, 9],
  ['grain per gallon', 1, 'gpg', 'mg/L', 17.118061, 6],
  ['5 psi', 5, 'psi', 'kPa', 34.4738, 4],
  ['30 psi', 30, 'psi', 'kPa', 206.8427, 4],
  ['15 psi', 15, 'psi', 'kPa', 103.4214, 4],
  ['25 psi', 25, 'psi', 'kPa', 172.3689, 4],
];

describe('printed roundings', () => {
  it.each(ROUNDED)('%s', (_row, value, unit, other, printed, digits) => {
    expect(convert(value, unit, other)).toBeCloseTo(printed, digits);
  });
});

/** (t − 32) / 1.8, NIST SP 811 (2008) B.8; last column as food rules print it (FDA Food Code, state copies). */
const TEMPERATURES: [f: number, c: number, ruleC: number][] = [
  [120, 48.8889, 49],
  [140, 60, 60],
  [150, 65.5556, 66],
  [160, 71.1111, 71],
  [165, 73.8889, 74],
  [180, 82.2222, 82],
  [194, 90, 90],
];

describe('temperatures', () => {
  it.each(TEMPERATURES)('%d °F', (f, c, ruleC) => {
    expect(toSI(f, 'F')).toBeCloseTo(c, 4);
    expect(Math.round(toSI(f, 'F'))).toBe(ruleC);
    expect(fromSI(toSI(f, 'F'), 'F')).toBeCloseTo(f, 10);
  });

  it('meet at −40 and freeze at 0', () => {
    expect(toSI(-40, 'F')).toBeCloseTo(-40, 12);
    expect(toSI(32, 'F')).toBe(0);
    expect(toSI(273.15, 'K')).toBe(0);
  });
});

// the pound limit rules, not the rounded one beside it: 34.6 kPa is above 5 psi though below 35 kPa.
it('34.6 kPa is more than 5 psi', () => expect(convert(34.6, 'kPa', 'psi')).toBeGreaterThan(5));
