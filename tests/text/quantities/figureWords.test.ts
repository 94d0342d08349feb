import { describe, expect, it } from 'vitest';
import { type FigureGroup, type RecordUnit } from '../../../src/rules';
import { figureWords } from '../../../src/text';
import { FIGURES } from '../../../src/topics/registry';
import { formatterFor } from '../../../src/units';

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');

/** Conversions by NIST SP 811 (2008), appendix B.8: exact or to the digits shown. */
const CASES: [value: number, unit: RecordUnit, us: string, metric: string, group?: FigureGroup][] = [
  [1.524, 'm', '5′ 0″', '1524 mm'],
  [1, 'm2', '10.8 ft²', '1 m²'],
  [0.003785411784, 'm3', '1 gal', '3.8 L'],
  [0.508, 'm/s', '100 fpm', '0.51 m/s'],
  [0.1887789, 'm3/s', '400 cfm', '189 L/s', 'air'],
  [0.001, 'm3/s', '15.85 gpm', '60 L/min', 'drain'],
  [1, 'm3/h', '4.4 gpm', '16.7 L/min'],
  [1, 'kg', '2.2 lb', '1 kg'],
  [16.01846, 'kg/m3', '1 lb/ft³', '16 kg/m³', 'air'],
  [0.01711806, 'kg/m3', '1 gpg', '17 mg/L', 'water'],
  [1.259979e-4, 'kg/s', '1 lb/h', '0.454 kg/h'],
  [0.01, 'kg/kg', '70 gr/lb', '10 g/kg'],
  [0.06242796, 'm3/kg', '1 ft³/lb', '0.0624 m³/kg'],
  [90, 's', '90 s', '90 s'],
  [900, 's', '15 min', '15 min'],
  [9000, 's', '2.5 h', '2.5 h'],
  [40, '1/h', '40 /h', '40 /h'],
  [82.2222, 'C', '180 °F', '82.2 °C'],
  [10, 'K', '18 °F', '10 °C'],
  [249.0889, 'Pa', '1 in. wg', '249 Pa', 'air'],
  [68947.57, 'Pa', '10 psi', '68.9 kPa', 'water'],
  [8.172211, 'Pa/m', '1 in. wg/100 ft', '8.17 Pa/m'],
  [3.6e6, 'J', '1 kWh', '1 kWh'],
  [2326, 'J/kg', '1 Btu/lb', '2326 J/kg'],
  [12_400, 'W', '12.4 kW', '12.4 kW'],
  [1.730735, 'W/(m·K)', '1 Btu/(h·ft·°F)', '1.73 W/(m·K)'],
  [5.678263, 'W/(m2·K)', '1 Btu/(h·ft²·°F)', '5.68 W/(m²·K)'],
  [0.1761102, 'm2·K/W', '1 h·ft²·°F/Btu', '0.176 m²·K/W'],
  [6, 'AWG', '6 AWG', '6 AWG'],
  [0, 'AWG', '1/0 AWG', '1/0 AWG'],
  [-3, 'AWG', '4/0 AWG', '4/0 AWG'],
  [208, 'V', '208 V', '208 V'],
  [3.21, 'V', '3.21 V', '3.21 V'],
  [0.00328084, 'ohm/m', '1 Ω/1000 ft', '3.28 Ω/km'],
  [44.48222, 'N', '10 lbf', '44 N'],
  [215.2782, 'lx', '20 fc', '215 lx'],
  [1 / 48, 'ratio', '0.0208', '0.0208'],
  [0.4024, 'share', '40.2 %', '40.2 %'],
  [1, 'share', '100 %', '100 %'],
  [1 / 48, 'slope', '¼″ per ft', '2.1 %'],
  [-12, 'count', '−12', '−12'],
  [1234.5, 'money', '1234.5', '1234.5'],
  [1.8e-5, 'Pa·s', '1.80e−5 Pa·s', '1.80e−5 Pa·s'],
  [1.234, 'money', '1.23', '1.23'],
  // Where one way of writing ends and the next begins.
  [119, 's', '119 s', '119 s'],
  [120, 's', '2 min', '2 min'],
  [7199, 's', '120 min', '120 min'],
  [7200, 's', '2 h', '2 h'],
  [1, 'AWG', '1 AWG', '1 AWG'],
  [-1, 'AWG', '2/0 AWG', '2/0 AWG'],
  [0, 'ratio', '0', '0'],
  [1234, 'ratio', '1234', '1234'],
  [12.34, 'ratio', '12.3', '12.3'],
  [-1.234, 'ratio', '−1.23', '−1.23'],
  [1e-4, 'ratio', '0.0001', '0.0001'],
  [9e-5, 'ratio', '9.00e−5', '9.00e−5'],
  [0.961519, 'W/m', '1 Btu/(h·ft)', '0.962 W/m'],
  [0.5777893, 'm·K/W', '1 h·ft·°F/Btu', '0.578 m·K/W'],
  [360, 'm3/h', '212 cfm', '100 L/s', 'air'],
];

describe('figureWords', () => {
  it.each(CASES)('%d %s', (value, unit, us, metric, group) => {
    expect(plain(figureWords(value, unit, formatterFor('us'), group))).toBe(us);
    expect(plain(figureWords(value, unit, formatterFor('metric'), group))).toBe(metric);
  });

  it('a word stays as it is', () => expect(figureWords('stricter', 'word', formatterFor('us'))).toBe('stricter'));
});

it('humidity and parts of a whole are shown in hundredths', () => {
  const shares = FIGURES.filter(({ unit }) => unit === 'share').map(({ id }) => id);
  expect(shares.toSorted()).toEqual(['exhaust-share', 'room-humidity-rising', 'room-humidity-steady']);
});
