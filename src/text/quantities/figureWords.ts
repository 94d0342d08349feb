import type { RecordUnit } from '../../rules';
import { type Formatter, formatNumber, formatQuantity, fromSI, UNIT_SPACE } from '../../units';

/** A figure, or an input of one, in people's units. The group (`air`, `water`, …) tells air from water where both have one SI unit. */
export function figureWords(value: number | string, unit: RecordUnit | 'word', f: Formatter, group?: string): string {
  return typeof value === 'string' || unit === 'word' ? String(value) : WORDS[unit](value, f, group);
}

type Wording = (value: number, f: Formatter, group?: string) => string;

/** A number of three digits that count, and its unit. */
const withSymbol = (value: number, symbol: string) => `${threeDigits(value)}${UNIT_SPACE}${symbol}`;

/** Two factors and their symbols: what the SI value is multiplied by. */
const either =
  (us: number, usSymbol: string, metric: number, metricSymbol: string): Wording =>
  (value, { units }) =>
    units === 'us' ? withSymbol(value * us, usSymbol) : withSymbol(value * metric, metricSymbol);

const both = (symbol: string): Wording => either(1, symbol, 1, symbol);

/** Decimals that leave three digits that count; a number too small for six of them is written by its power of ten. */
function threeDigits(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return formatNumber(value);
  const size = Math.floor(Math.log10(Math.abs(value)));
  return size < -4 ? value.toExponential(2).replace('-', '−') : formatNumber(value, Math.max(0, 2 - size));
}

const FOOT_M = 1 / fromSI(1, 'ft/s');
const POUNDS = fromSI(1, 'lb');
const BTU_H = fromSI(1, 'Btu/h');
const FAHRENHEIT = fromSI(1, 'deltaF');
const IN_WG = fromSI(1, 'inH2O');
const FEET = 1 / FOOT_M;
const GRAINS_PER_POUND = fromSI(1, 'gr') / POUNDS;

const flow: Wording = (value, f, group) => (group === 'air' ? f.airflow(value) : f.waterFlow(value));
const density = either(POUNDS / FEET ** 3, 'lb/ft³', 1, 'kg/m³');
const airPressure = either(IN_WG, 'in. wg', 1, 'Pa');

const WORDS: Readonly<Record<RecordUnit, Wording>> = {
  m: (value, f) => f.length(value * 1000),
  m2: (value, f) => f.area(value * 1e6),
  m3: (value, f) => f.volume(value),
  'm/s': (value, f) => f.speed(value),
  'm3/s': flow,
  'm3/h': (value, f, group) => flow(value / 3600, f, group),
  kg: (value, f) => f.mass(value),
  'kg/m3': (value, f, group) => (group === 'water' ? f.hardness(value) : density(value, f)),
  'kg/s': either(POUNDS * 3600, 'lb/h', 3600, 'kg/h'),
  'kg/kg': either(GRAINS_PER_POUND, 'gr/lb', 1000, 'g/kg'),
  'm3/kg': either(FEET ** 3 / POUNDS, 'ft³/lb', 1, 'm³/kg'),
  s: (value, f) => duration(value, f),
  '1/s': both('/s'),
  '1/h': both('/h'),
  C: (value, f) => f.temperature(value),
  K: (value, f) => f.temperatureDifference(value),
  Pa: (value, f, group) => (group === 'air' ? airPressure(value, f) : f.pressure(value)),
  'Pa/m': either((IN_WG * 100) / FEET, 'in. wg/100 ft', 1, 'Pa/m'),
  Pa·s: both('Pa·s'),
  'Pa·s2/m6': both('Pa·s²/m⁶'),
  J: (value, f) => f.energy(value),
  'J/kg': (value, { units }) => formatQuantity(value, 'specific-energy', units),
  W: (value, f) => f.power(value),
  'W/m': either(BTU_H / FEET, 'Btu/(h·ft)', 1, 'W/m'),
  'W/(m·K)': either(BTU_H / FEET / FAHRENHEIT, 'Btu/(h·ft·°F)', 1, 'W/(m·K)'),
  'W/(m2·K)': either(BTU_H / FEET ** 2 / FAHRENHEIT, 'Btu/(h·ft²·°F)', 1, 'W/(m²·K)'),
  'm2·K/W': either((FEET ** 2 * FAHRENHEIT) / BTU_H, 'h·ft²·°F/Btu', 1, 'm²·K/W'),
  'm·K/W': either((FEET * FAHRENHEIT) / BTU_H, 'h·ft·°F/Btu', 1, 'm·K/W'),
  V: (value, f) => (Math.abs(value) < 20 ? withSymbol(value, 'V') : f.voltage(value)),
  A: (value, f) => f.current(value),
  ohm: both('Ω'),
  'ohm/m': either(1000 / FEET, 'Ω/1000 ft', 1000, 'Ω/km'),
  N: (value, { units }) => formatQuantity(value, 'force', units),
  lx: (value, f) => f.illuminance(value),
  deg: (value, f) => f.angle(value),
  ratio: threeDigits,
  share: (value) => withSymbol(value * 100, '%'),
  slope: (value, f) => f.slope(value),
  count: (value, f) => f.count(value),
  AWG: (value) => `${value > 0 ? value : `${1 - value}/0`}${UNIT_SPACE}AWG`,
  money: (value) => formatNumber(value, 2),
};

/** Seconds up to two minutes, minutes up to two hours, then hours. */
function duration(valueS: number, f: Formatter): string {
  const size = Math.abs(valueS);
  if (size < 120) return f.duration(valueS);
  return size < 7200 ? withSymbol(fromSI(valueS, 'min'), 'min') : withSymbol(fromSI(valueS, 'h'), 'h');
}
