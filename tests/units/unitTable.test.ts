import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert, fromSI, toSI, UNITS, type Unit } from '../../src/units';

/** Ours, and the same in mathjs: an independent table. Some of its factors have seven figures only. */
const SAME: [value: number, from: Unit, to: Unit, theirsFrom: string, theirsTo: string][] = [
  [140, 'F', 'C', 'degF', 'degC'],
  [300, 'K', 'F', 'kelvin', 'degF'],
  [18, 'deltaF', 'deltaC', 'degR', 'kelvin'],
  [20, 'psi', 'kPa', 'psi', 'kPa'],
  [1, 'bar', 'psi', 'bar', 'psi'],
  [10, 'gpm', 'L/s', 'gallon/minute', 'liter/s'],
  [40, 'gph', 'L/min', 'gallon/hour', 'liter/minute'],
  [900, 'cfm', 'm3/h', 'cuft/minute', 'm^3/hour'],
  [2, 'm3/s', 'cfm', 'm^3/s', 'cuft/minute'],
  [36_000, 'Btu/h', 'kW', 'BTU/hour', 'kW'],
  [0.5, 'hp', 'W', 'hp', 'W'],
  [250, 'lb', 'kg', 'lbm', 'kg'],
  [7000, 'gr', 'g', 'grain', 'g'],
  [12, 'lbf', 'N', 'lbf', 'N'],
  [1.1, 'gal', 'L', 'gallon', 'liter'],
  [8, 'floz', 'mL', 'fluidounce', 'ml'],
  [3, 'ft3', 'gal', 'cuft', 'gallon'],
  [1800, 'fpm', 'm/s', 'ft/minute', 'm/s'],
  [10, 'ft/s', 'fpm', 'ft/s', 'ft/minute'],
  [1, 'kWh', 'Btu', 'kWh', 'BTU'],
  [300, 'ft2', 'm2', 'sqft', 'm^2'],
  [1.5, 'h', 'min', 'hour', 'minute'],
  [17, 'gpg', 'mg/L', 'grain/gallon', 'mg/liter'],
  [970, 'Btu/lb', 'J/kg', 'BTU/lbm', 'J/kg'],
];

describe('convert', () => {
  it.each(SAME)('%d %s in %s agrees with mathjs', (value, from, to, theirsFrom, theirsTo) => {
    const theirs = mathUnit(value, theirsFrom).toNumber(theirsTo);
    expect(Math.abs(convert(value, from, to) / theirs - 1)).toBeLessThan(5e-7);
  });

  it.each(Object.keys(UNITS) as Unit[])('%s goes to SI and back', (unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => Math.abs(fromSI(toSI(value, unit), unit) - value) <= 1e-9),
      { seed: 21, numRuns: 200 },
    );
  });
});
