import { describe, expect, it } from 'vitest';
import { type Formatter, formatArea, formatterFor } from '../../src/units';

const spaced = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** One value each, in the SI unit that the parameter's name carries. */
const SAID: [name: Exclude<keyof Formatter, 'units'>, value: number, us: string, metric: string][] = [
  ['length', 1943.1, '6′ 4 ½″', '1943 mm'],
  ['length', Number.POSITIVE_INFINITY, 'no limit', 'no limit'],
  ['slope', 1 / 48, '¼″ per ft', '2.1 %'],
  ['area', 27_870_912, '300 ft²', '27.87 m²'],
  ['angle', 1.5, '1.5°', '1.5°'],
  ['temperature', 60, '140 °F', '60 °C'],
  ['temperatureDifference', 10, '18 °F', '10 °C'],
  ['pressure', 137_895.14586, '20 psi', '137.9 kPa'],
  ['waterFlow', 0.0002, '3.17 gpm', '12 L/min'],
  ['airflow', 0.4719474432, '1000 cfm', '472 L/s'],
  ['power', 9600, '9.6 kW', '9.6 kW'],
  ['current', 26.7, '26.7 A', '26.7 A'],
  ['voltage', 208, '208 V', '208 V'],
  ['mass', 45.359237, '100 lb', '45.4 kg'],
  ['volume', 0.003785411784, '1 gal', '3.8 L'],
  ['speed', 9.144, '1800 fpm', '9.14 m/s'],
  ['energy', 3.6e6, '1 kWh', '1 kWh'],
  ['illuminance', 215.278, '20 fc', '215 lx'],
  ['hardness', 0.17118061, '10 gpg', '171 mg/L'],
  ['duration', 55, '55 s', '55 s'],
  ['count', 6.5, '6.5', '6.5'],
];

describe('formatterFor', () => {
  it.each(SAID)('says %s %d as %s or %s', (name, value, us, metric) => {
    expect(spaced(formatterFor('us')[name](value))).toBe(us);
    expect(spaced(formatterFor('metric')[name](value))).toBe(metric);
  });

  it('has a row for every quantity that it says', () => {
    const said = new Set<string>(SAID.map(([name]) => name));
    expect(Object.keys(formatterFor('us')).filter((name) => name !== 'units' && !said.has(name))).toEqual([]);
  });

  it.each(['us', 'metric'] as const)('is the same object each time for %s', (units) => {
    expect(formatterFor(units)).toBe(formatterFor(units));
    expect(formatterFor(units).units).toBe(units);
  });

  it('passes on how a length is to be shown', () => {
    const f = formatterFor('us');
    expect(spaced(f.length((3 + 1 / 32) * 25.4, { denominator: 32, sign: true }))).toBe('+3 ¹⁄₃₂″');
  });
});

it('an area is said by itself too', () => expect(spaced(formatArea(92_903.04, 'us'))).toBe('1 ft²'));
