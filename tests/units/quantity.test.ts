import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, formatTemperature, parseQuantity, parseTemperature, type QuantityKind, shownUnit, toSI } from '../../src/units';

/** What people type, of what kind, on a plan in which units; and the SI value (°C for temperatures). */
const TYPED: [text: string, kind: QuantityKind, units: 'us' | 'metric', valueSI: number][] = [
  ['140', 'temperature', 'us', 60],
  ['140', 'temperature', 'metric', 140],
  ['60 °C', 'temperature', 'us', 60],
  ['60C', 'temperature', 'us', 60],
  ['194 deg F', 'temperature', 'metric', 90],
  ['−40 °F', 'temperature', 'metric', -40],
  ['18 °F', 'temperature-difference', 'metric', 10],
  ['140 kPa', 'pressure', 'us', 140_000],
  ['1 psi', 'pressure', 'metric', 6894.7572931684],
  ['60', 'water-flow', 'metric', 0.001],
  ['1000 cfm', 'airflow', 'metric', 0.4719474432],
  ['½ gal', 'volume', 'metric', 0.001892705892],
  ['1 1/2 gal', 'volume', 'us', 0.005678117676],
  ['1,5 kW', 'power', 'us', 1500],
  ['36\u202f000 Btu/h', 'power', 'us', 10_550.5585262],
  ['208', 'voltage', 'us', 208],
  ['16.5 amps', 'current', 'metric', 16.5],
  ['100 lbs.', 'mass', 'metric', 45.359237],
  ['1.5 min', 'duration', 'us', 90],
  ['10 fc', 'illuminance', 'metric', 107.6391041671],
  ['120', 'count', 'us', 120],
  ['6,5', 'count', 'metric', 6.5],
];

/** What is refused, and a word that the reason must have. */
const REFUSED: [text: string, kind: QuantityKind, reason: RegExp][] = [
  ['', 'temperature', /type a temperature, in °F or °C/i],
  ['hot', 'temperature', /not a temperature/],
  ['20 gal', 'pressure', /“gal” is not a unit of pressure here: use psi or kPa/],
  ['20 cfm', 'water-flow', /“cfm” is not a unit/],
  ['12 racks', 'count', /“racks” is not a unit/],
  ['1/0 V', 'voltage', /0 below/],
  ['1,943 L', 'volume', /two ways/],
  ['∞', 'power', /not a power/],
  [`${'9'.repeat(400)} V`, 'voltage', /not a voltage/],
  ['--5 A', 'current', /not a current/],
];

describe('parseQuantity', () => {
  it.each(TYPED)('reads %j as %s (%s)', (text, kind, units, valueSI) => {
    const parsed = parseQuantity(text, kind, units);
    expect(parsed.ok && Math.abs(parsed.value - valueSI) <= 1e-9 * Math.abs(valueSI)).toBe(true);
  });

  it.each(REFUSED)('refuses %j as %s', (text, kind, reason) => {
    expect(parseQuantity(text, kind, 'us')).toEqual({ ok: false, reason: expect.stringMatching(reason) });
  });

  it('takes a unit as well as a system for a bare number', () => {
    expect(parseQuantity('20', 'pressure', 'kPa')).toEqual({ ok: true, value: 20_000 });
  });
});

const SHOWN: [valueSI: number, kind: QuantityKind, us: string, metric: string][] = [
  [60, 'temperature', '140 °F', '60 °C'],
  [82.222222, 'temperature', '180 °F', '82.2 °C'],
  [-40, 'temperature', '−40 °F', '−40 °C'],
  [10, 'temperature-difference', '18 °F', '10 °C'],
  [137_895.14586, 'pressure', '20 psi', '137.9 kPa'],
  [0.5, 'share', '50 %', '50 %'],
  [249.08891, 'air-pressure', '1 in. wg', '249 Pa'],
  [5.678263341, 'conductance', '1 Btu/(h·ft²·°F)', '5.68 W/(m²·K)'],
  [0.4719474432, 'airflow', '1000 cfm', '472 L/s'],
  [9.438948864, 'airflow', '20\u202f000 cfm', '9439 L/s'],
  [0.0002, 'water-flow', '3.17 gpm', '12 L/min'],
  [0.003785411784, 'volume', '1 gal', '3.8 L'],
  [9600, 'power', '9.6 kW', '9.6 kW'],
  [26.7, 'current', '26.7 A', '26.7 A'],
  [208, 'voltage', '208 V', '208 V'],
  [45.359237, 'mass', '100 lb', '45.4 kg'],
  [0.17118061, 'hardness', '10 gpg', '171 mg/L'],
  [55, 'duration', '55 s', '55 s'],
  [6.5, 'count', '6.5', '6.5'],
  [12_000, 'count', '12\u202f000', '12\u202f000'],
];

/** In these tables an ordinary space stands for the no-break space before a unit. */
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('formatQuantity', () => {
  it.each(SHOWN)('%d (%s) is %s or %s', (valueSI, kind, us, metric) => {
    expect(spaced(formatQuantity(valueSI, kind, 'us'))).toBe(us);
    expect(spaced(formatQuantity(valueSI, kind, 'metric'))).toBe(metric);
  });

  /** Half of the last decimal that is shown, in the shown unit. */
  const STEPS: [kind: QuantityKind, units: 'us' | 'metric', half: number][] = [
    ['temperature', 'us', 0.05],
    ['temperature', 'metric', 0.05],
    ['pressure', 'us', 0.05],
    ['water-flow', 'us', 0.005],
    ['airflow', 'us', 0.5],
    ['volume', 'metric', 0.05],
    ['power', 'us', 0.005],
    ['hardness', 'us', 0.05],
    ['count', 'us', 0.005],
  ];

  it.each(STEPS)('%s in %s is read back within half of its last figure', (kind, units, half) => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50_000, noNaN: true }), (value) => {
        const valueSI = toSI(value, shownUnit(kind, units));
        const parsed = parseQuantity(formatQuantity(valueSI, kind, units), kind, units);
        const tolerance = Math.abs(toSI(half, shownUnit(kind, units)) - toSI(0, shownUnit(kind, units)));
        return parsed.ok && Math.abs(parsed.value - valueSI) <= tolerance * (1 + 1e-6);
      }),
      { seed: 22, numRuns: 500 },
    );
  });
});

describe('temperatures of their own', () => {
  it('read and show', () => {
    expect(parseTemperature('180', 'us')).toEqual({ ok: true, tempC: 82.222222222222 });
    expect(spaced(formatTemperature(82.222222222222, 'us'))).toBe('180 °F');
  });

  it('refuse what is colder than anything', () => {
    expect(parseTemperature('-500', 'us')).toEqual({ ok: false, reason: expect.stringMatching(/colder/) });
    expect(parseTemperature('-273.15', 'metric').ok).toBe(true);
  });
});
