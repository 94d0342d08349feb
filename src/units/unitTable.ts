/**
 * Units and what one of each is in SI. Factors are exact by definition (inch 1959, pound, standard gravity,
 * IT calorie, US gallon of 231 in³) or built here from those that are.
 * Source: NIST SP 811 (2008) appendix B.8/B.9; US gallon: NIST Handbook 44 appendix C.
 */

/** SI unit in which a kind is kept: °C, Pa, m³/s, W, A, V, kg, m³, m/s, J, m², lx, s, N, kg/m³, J/kg, J/(kg·K), W/(m²·K); counts and shares as they are. */
export type QuantityKind =
  | 'temperature'
  | 'temperature-difference'
  | 'pressure'
  | 'air-pressure'
  | 'water-flow'
  | 'airflow'
  | 'power'
  | 'current'
  | 'voltage'
  | 'mass'
  | 'volume'
  | 'speed'
  | 'energy'
  | 'area'
  | 'force'
  | 'illuminance'
  | 'hardness'
  | 'specific-energy'
  | 'specific-heat'
  | 'duration'
  | 'share'
  | 'conductance'
  | 'count';

export interface UnitFacts {
  kind: QuantityKind | readonly QuantityKind[];
  /** SI value = factor · (value + shift). */
  factor: number;
  shift?: number;
  /** What people read after the number. */
  symbol: string;
  /** What people may type for it, tidied (lower case, plain characters), beside the symbol. */
  words?: readonly string[];
}

const INCH_M = 0.0254;
const FOOT_M = 0.3048;
const POUND_KG = 0.45359237;
const GRAVITY = 9.80665;
const GALLON_M3 = 231 * INCH_M ** 3;
const FOOT3_M3 = FOOT_M ** 3;
const GRAIN_KG = POUND_KG / 7000;
/** The International Table Btu; the thermochemical one is 1054.35 J and stands nowhere here. */
const BTU_J = 1055.05585262;
const FLOWS = ['water-flow', 'airflow'] as const;
/** What moves air is a pressure too small for psi. */
const PRESSURES = ['pressure', 'air-pressure'] as const;

const table = {
  C: { kind: 'temperature', factor: 1, symbol: '°C', words: ['c', 'degc', 'deg c', '° c', 'celsius'] },
  F: { kind: 'temperature', factor: 1 / 1.8, shift: -32, symbol: '°F', words: ['f', 'degf', 'deg f', '° f', 'fahrenheit'] },
  K: { kind: 'temperature', factor: 1, shift: -273.15, symbol: 'K', words: ['kelvin'] },
  deltaC: { kind: 'temperature-difference', factor: 1, symbol: '°C', words: ['c', 'k'] },
  deltaF: { kind: 'temperature-difference', factor: 1 / 1.8, symbol: '°F', words: ['f'] },
  Pa: { kind: PRESSURES, factor: 1, symbol: 'Pa' },
  kPa: { kind: PRESSURES, factor: 1e3, symbol: 'kPa' },
  bar: { kind: 'pressure', factor: 1e5, symbol: 'bar' },
  psi: { kind: 'pressure', factor: (POUND_KG * GRAVITY) / INCH_M ** 2, symbol: 'psi', words: ['psig', 'lb/in2'] },
  inH2O: { kind: PRESSURES, factor: 249.08891, symbol: 'in. wg', words: ['in wg', 'inwg', 'inh2o', 'in h2o', '"wg', '" wg'] },
  ftH2O: { kind: 'pressure', factor: 2989.06692, symbol: 'ft H₂O', words: ['ft wg'] },
  'm3/s': { kind: FLOWS, factor: 1, symbol: 'm³/s', words: ['m3/sec'] },
  'm3/h': { kind: FLOWS, factor: 1 / 3600, symbol: 'm³/h', words: ['m3/hr'] },
  'L/s': { kind: FLOWS, factor: 1e-3, symbol: 'L/s', words: ['l/sec'] },
  'L/min': { kind: FLOWS, factor: 1e-3 / 60, symbol: 'L/min', words: ['lpm'] },
  gpm: { kind: 'water-flow', factor: GALLON_M3 / 60, symbol: 'gpm', words: ['gal/min'] },
  gph: { kind: 'water-flow', factor: GALLON_M3 / 3600, symbol: 'gph', words: ['gal/h', 'gal/hr'] },
  cfm: { kind: 'airflow', factor: FOOT3_M3 / 60, symbol: 'cfm', words: ['ft3/min'] },
  W: { kind: 'power', factor: 1, symbol: 'W', words: ['watt', 'watts'] },
  kW: { kind: 'power', factor: 1e3, symbol: 'kW' },
  'Btu/h': { kind: 'power', factor: BTU_J / 3600, symbol: 'Btu/h', words: ['btuh', 'btu/hr'] },
  ton: { kind: 'power', factor: (12_000 * BTU_J) / 3600, symbol: 'ton', words: ['tons'] },
  hp: { kind: 'power', factor: 550 * FOOT_M * POUND_KG * GRAVITY, symbol: 'hp' },
  A: { kind: 'current', factor: 1, symbol: 'A', words: ['amp', 'amps'] },
  V: { kind: 'voltage', factor: 1, symbol: 'V', words: ['volt', 'volts'] },
  kg: { kind: 'mass', factor: 1, symbol: 'kg' },
  g: { kind: 'mass', factor: 1e-3, symbol: 'g' },
  lb: { kind: 'mass', factor: POUND_KG, symbol: 'lb', words: ['lbs', 'pound', 'pounds'] },
  gr: { kind: 'mass', factor: GRAIN_KG, symbol: 'gr', words: ['grain', 'grains'] },
  N: { kind: 'force', factor: 1, symbol: 'N' },
  lbf: { kind: 'force', factor: POUND_KG * GRAVITY, symbol: 'lbf' },
  m3: { kind: 'volume', factor: 1, symbol: 'm³' },
  L: { kind: 'volume', factor: 1e-3, symbol: 'L', words: ['litre', 'litres', 'liter', 'liters'] },
  mL: { kind: 'volume', factor: 1e-6, symbol: 'mL' },
  gal: { kind: 'volume', factor: GALLON_M3, symbol: 'gal', words: ['gallon', 'gallons'] },
  floz: { kind: 'volume', factor: GALLON_M3 / 128, symbol: 'fl oz' },
  ft3: { kind: 'volume', factor: FOOT3_M3, symbol: 'ft³', words: ['cu ft', 'cuft'] },
  'm/s': { kind: 'speed', factor: 1, symbol: 'm/s' },
  fpm: { kind: 'speed', factor: FOOT_M / 60, symbol: 'fpm', words: ['ft/min'] },
  'ft/s': { kind: 'speed', factor: FOOT_M, symbol: 'ft/s', words: ['fps'] },
  J: { kind: 'energy', factor: 1, symbol: 'J' },
  kWh: { kind: 'energy', factor: 3.6e6, symbol: 'kWh' },
  Btu: { kind: 'energy', factor: BTU_J, symbol: 'Btu' },
  'kg/m3': { kind: 'hardness', factor: 1, symbol: 'kg/m³' },
  'mg/L': { kind: 'hardness', factor: 1e-3, symbol: 'mg/L', words: ['ppm'] },
  gpg: { kind: 'hardness', factor: GRAIN_KG / GALLON_M3, symbol: 'gpg', words: ['gr/gal'] },
  'J/kg': { kind: 'specific-energy', factor: 1, symbol: 'J/kg' },
  'Btu/lb': { kind: 'specific-energy', factor: BTU_J / POUND_KG, symbol: 'Btu/lb' },
  'J/(kg·K)': { kind: 'specific-heat', factor: 1, symbol: 'J/(kg·K)' },
  'Btu/(lb·°F)': { kind: 'specific-heat', factor: (BTU_J / POUND_KG) * 1.8, symbol: 'Btu/(lb·°F)' },
  'W/(m2·K)': { kind: 'conductance', factor: 1, symbol: 'W/(m²·K)', words: ['w/m2k'] },
  'Btu/(h·ft2·°F)': {
    kind: 'conductance',
    factor: (BTU_J / 3600 / FOOT_M ** 2) * 1.8,
    symbol: 'Btu/(h·ft²·°F)',
    words: ['btu/h ft2 f'],
  },
  '%': { kind: 'share', factor: 0.01, symbol: '%', words: ['percent'] },
  count: { kind: 'count', factor: 1, symbol: '' },
  m2: { kind: 'area', factor: 1, symbol: 'm²', words: ['sq m'] },
  mm2: { kind: 'area', factor: 1e-6, symbol: 'mm²' },
  ft2: { kind: 'area', factor: FOOT_M ** 2, symbol: 'ft²', words: ['sq ft', 'sqft', 'sf'] },
  lx: { kind: 'illuminance', factor: 1, symbol: 'lx', words: ['lux'] },
  fc: { kind: 'illuminance', factor: 1 / FOOT_M ** 2, symbol: 'fc', words: ['footcandle', 'footcandles'] },
  s: { kind: 'duration', factor: 1, symbol: 's', words: ['sec', 'second', 'seconds'] },
  min: { kind: 'duration', factor: 60, symbol: 'min', words: ['minute', 'minutes'] },
  h: { kind: 'duration', factor: 3600, symbol: 'h', words: ['hr', 'hour', 'hours'] },
} satisfies Record<string, UnitFacts>;

export type Unit = keyof typeof table;

export const UNITS: Readonly<Record<Unit, UnitFacts>> = table;

/** Value in SI (temperatures in °C) of so many of a unit. */
export function toSI(value: number, unit: Unit): number {
  const { factor, shift = 0 } = UNITS[unit];
  return (value + shift) * factor;
}

/** How many of a unit an SI value is. */
export function fromSI(value: number, unit: Unit): number {
  const { factor, shift = 0 } = UNITS[unit];
  return value / factor - shift;
}

/** The same quantity in another unit of its kind. */
export const convert = (value: number, from: Unit, to: Unit): number => fromSI(toSI(value, from), to);
