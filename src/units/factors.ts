/**
 * The size of every unit in its SI unit, from the definitions themselves, so each is exact to the last bits
 * of a double. Sources: NIST SP 811 (2008) B.8 and B.9; US gallon of 231 in³, NIST HB 44 Appendix C;
 * Btu is the International Table one throughout. SI units: m, m², m³, m³/s, Pa, kg, N, J, W, J/kg,
 * J/(kg·K), m/s, lx, kg/m³, s, A, V; temperatures are in °C, differences of temperature in K.
 */

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const STANDARD_GRAVITY = 9.80665;
const POUND_FORCE = POUND * STANDARD_GRAVITY;
const GALLON = 231 * INCH ** 3;
const BTU = 1055.05585262;
const GRAIN = POUND / 7000;
const HOUR = 3600;

/** Dimension; size in the SI unit; and for temperatures the reading at 0 °C. */
type Scale = readonly [dimension: string, factor: number, zero?: number];

const SCALES = {
  m: ['length', 1],
  mm: ['length', 1e-3],
  cm: ['length', 1e-2],
  in: ['length', INCH],
  ft: ['length', FOOT],

  m2: ['area', 1],
  mm2: ['area', 1e-6],
  ft2: ['area', FOOT ** 2],

  m3: ['volume', 1],
  L: ['volume', 1e-3],
  mL: ['volume', 1e-6],
  ft3: ['volume', FOOT ** 3],
  gal: ['volume', GALLON],
  flOz: ['volume', GALLON / 128],

  'm3/s': ['flow', 1],
  'm3/h': ['flow', 1 / HOUR],
  'L/s': ['flow', 1e-3],
  'L/min': ['flow', 1e-3 / 60],
  'L/h': ['flow', 1e-3 / HOUR],
  gpm: ['flow', GALLON / 60],
  gph: ['flow', GALLON / HOUR],
  cfm: ['flow', FOOT ** 3 / 60],

  Pa: ['pressure', 1],
  kPa: ['pressure', 1e3],
  bar: ['pressure', 1e5],
  psi: ['pressure', POUND_FORCE / INCH ** 2],
  // Conventional columns of water, 1000 kg/m³ under standard gravity.
  inH2O: ['pressure', 1000 * STANDARD_GRAVITY * INCH],
  ftH2O: ['pressure', 1000 * STANDARD_GRAVITY * FOOT],

  kg: ['mass', 1],
  g: ['mass', 1e-3],
  lb: ['mass', POUND],
  oz: ['mass', POUND / 16],
  gr: ['mass', GRAIN],

  N: ['force', 1],
  lbf: ['force', POUND_FORCE],

  J: ['energy', 1],
  kJ: ['energy', 1e3],
  kWh: ['energy', 3.6e6],
  Btu: ['energy', BTU],

  W: ['power', 1],
  kW: ['power', 1e3],
  'Btu/h': ['power', BTU / HOUR],
  tonRefrigeration: ['power', (12_000 * BTU) / HOUR],
  hp: ['power', 550 * FOOT * POUND_FORCE],

  'J/kg': ['specific energy', 1],
  'Btu/lb': ['specific energy', BTU / POUND],
  'J/(kg·K)': ['specific heat', 1],
  'Btu/(lb·°F)': ['specific heat', (BTU / POUND) * 1.8],

  'm/s': ['speed', 1],
  'ft/s': ['speed', FOOT],
  fpm: ['speed', FOOT / 60],

  lx: ['illuminance', 1],
  fc: ['illuminance', 1 / FOOT ** 2],

  'kg/m3': ['concentration', 1],
  'mg/L': ['concentration', 1e-3],
  // Grains of hardness (as CaCO₃) per US gallon.
  gpg: ['concentration', GRAIN / GALLON],

  s: ['time', 1],
  min: ['time', 60],
  h: ['time', HOUR],

  A: ['current', 1],
  V: ['voltage', 1],

  C: ['temperature', 1, 0],
  F: ['temperature', 5 / 9, 32],
  K: ['temperature', 1, 273.15],
  differenceK: ['temperature difference', 1],
  differenceF: ['temperature difference', 5 / 9],
} as const satisfies Record<string, Scale>;

/** A unit that the table knows. */
export type Unit = keyof typeof SCALES;

/** The SI value of so many units; a temperature comes out in °C. */
export function toSI(value: number, unit: Unit): number {
  const [, factor, zero = 0]: Scale = SCALES[unit];
  return (value - zero) * factor;
}

/** How many of the unit an SI value is; a temperature goes in as °C. */
export function fromSI(valueSI: number, unit: Unit): number {
  const [, factor, zero = 0]: Scale = SCALES[unit];
  return valueSI / factor + zero;
}

/** From one unit to another of the same dimension. Units of different dimensions are a mistake of the program and throw. */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  if (dimensionOf(from) !== dimensionOf(to)) throw new RangeError(`${from} is ${dimensionOf(from)}, ${to} is ${dimensionOf(to)}`);
  return fromSI(toSI(value, from), to);
}

/** What the unit measures: `pressure`, `flow`, … */
export const dimensionOf = (unit: Unit): string => SCALES[unit][0];
