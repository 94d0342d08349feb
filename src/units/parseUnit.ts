import type { Unit } from './factors';

/** How people write units, in plain text without spaces and stops (see `plainText`). */
const SPELLINGS: Partial<Record<Unit, readonly string[]>> = {
  C: ['c', '°c', 'degc', 'degreesc', 'celsius'],
  F: ['f', '°f', 'degf', 'degreesf', 'fahrenheit'],
  K: ['k', 'kelvin'],
  Pa: ['pa'],
  kPa: ['kpa'],
  bar: ['bar'],
  psi: ['psi', 'psig', 'lb/in2', 'lbf/in2'],
  inH2O: ['inh2o', 'inwc', 'inwg', '"wc', '"wg'],
  ftH2O: ['fth2o', 'ftwc'],
  'm3/s': ['m3/s'],
  'm3/h': ['m3/h', 'm3/hr'],
  'L/s': ['l/s', 'lps'],
  'L/min': ['l/min', 'lpm'],
  'L/h': ['l/h', 'l/hr', 'lph'],
  gpm: ['gpm', 'gal/min'],
  gph: ['gph', 'gal/h', 'gal/hr'],
  cfm: ['cfm', 'ft3/min'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  mL: ['ml'],
  m3: ['m3'],
  ft3: ['ft3', 'cuft'],
  gal: ['gal', 'gallon', 'gallons', 'usgal'],
  flOz: ['floz'],
  W: ['w', 'watt', 'watts'],
  kW: ['kw'],
  'Btu/h': ['btu/h', 'btu/hr', 'btuh'],
  tonRefrigeration: ['ton', 'tons'],
  hp: ['hp'],
  J: ['j'],
  kJ: ['kj'],
  kWh: ['kwh'],
  Btu: ['btu'],
  kg: ['kg'],
  g: ['g'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  oz: ['oz'],
  'm/s': ['m/s'],
  'ft/s': ['ft/s', 'fps'],
  fpm: ['fpm', 'ft/min'],
  lx: ['lx', 'lux'],
  fc: ['fc', 'footcandle', 'footcandles'],
  'mg/L': ['mg/l', 'ppm'],
  gpg: ['gpg', 'gr/gal'],
  s: ['s', 'sec', 'second', 'seconds'],
  min: ['min', 'minute', 'minutes'],
  h: ['h', 'hr', 'hour', 'hours'],
  A: ['a', 'amp', 'amps', 'ampere', 'amperes'],
  V: ['v', 'volt', 'volts'],
};

const UNIT_OF_SPELLING: ReadonlyMap<string, Unit> = new Map(
  (Object.entries(SPELLINGS) as [Unit, readonly string[]][]).flatMap(([unit, spellings]) =>
    spellings.map((spelling) => [spelling, unit] as const),
  ),
);

/** The unit that a plain text names, or null. */
export function parseUnit(plain: string): Unit | null {
  return UNIT_OF_SPELLING.get(plain.replace(/[ .]/gu, '')) ?? null;
}
