import { formatNumber, UNIT_SPACE } from './formatNumber';
import { withoutDust } from './length';
import { AMOUNT, parseAmount } from './parseNumber';
import { type Parsed, refuse } from './result';
import { MAX_TYPED, tidyText } from './tidyText';
import { fromSI, type QuantityKind, toSI, UNITS, type Unit } from './unitTable';

/** How a kind is shown in each system: the unit, and the most decimals that still mean something. */
type Shown = readonly [unit: Unit, decimals: number];

const SHOWN: Readonly<Record<QuantityKind, { us: Shown; metric: Shown; name: string }>> = {
  temperature: { us: ['F', 1], metric: ['C', 1], name: 'temperature' },
  'temperature-difference': { us: ['deltaF', 1], metric: ['deltaC', 1], name: 'temperature difference' },
  pressure: { us: ['psi', 1], metric: ['kPa', 1], name: 'pressure' },
  'air-pressure': { us: ['inH2O', 2], metric: ['Pa', 0], name: 'air pressure' },
  'water-flow': { us: ['gpm', 2], metric: ['L/min', 1], name: 'flow' },
  airflow: { us: ['cfm', 0], metric: ['L/s', 0], name: 'airflow' },
  power: { us: ['kW', 2], metric: ['kW', 2], name: 'power' },
  current: { us: ['A', 1], metric: ['A', 1], name: 'current' },
  voltage: { us: ['V', 0], metric: ['V', 0], name: 'voltage' },
  mass: { us: ['lb', 1], metric: ['kg', 1], name: 'mass' },
  volume: { us: ['gal', 2], metric: ['L', 1], name: 'volume' },
  speed: { us: ['fpm', 0], metric: ['m/s', 2], name: 'speed' },
  energy: { us: ['kWh', 1], metric: ['kWh', 1], name: 'energy' },
  area: { us: ['ft2', 1], metric: ['m2', 2], name: 'area' },
  force: { us: ['lbf', 1], metric: ['N', 0], name: 'force' },
  illuminance: { us: ['fc', 0], metric: ['lx', 0], name: 'light level' },
  hardness: { us: ['gpg', 1], metric: ['mg/L', 0], name: 'hardness' },
  'specific-energy': { us: ['Btu/lb', 1], metric: ['J/kg', 0], name: 'energy per mass' },
  'specific-heat': { us: ['Btu/(lb·°F)', 3], metric: ['J/(kg·K)', 0], name: 'specific heat' },
  duration: { us: ['s', 0], metric: ['s', 0], name: 'time' },
  share: { us: ['%', 0], metric: ['%', 0], name: 'share' },
  conductance: { us: ['Btu/(h·ft2·°F)', 3], metric: ['W/(m2·K)', 2], name: 'conductance' },
  count: { us: ['count', 2], metric: ['count', 2], name: 'number' },
};

/** The unit in which a kind is shown, and which a bare number then has. */
export const shownUnit = (kind: QuantityKind, system: 'us' | 'metric'): Unit => SHOWN[kind][system][0];

/** An SI value (temperatures in °C) for people: `180 °F`, `20 psi`, `2.6 L`. */
export function formatQuantity(valueSI: number, kind: QuantityKind, system: 'us' | 'metric'): string {
  const [unit, decimals] = SHOWN[kind][system];
  return `${formatNumber(fromSI(valueSI, unit), decimals)}${UNIT_SPACE}${UNITS[unit].symbol}`.trimEnd();
}

const QUANTITY = new RegExp(`^([+-]?) ?(${AMOUNT}) ?(.*)$`);

/** A quantity as people type it, in SI (temperatures in °C). A bare number takes the fallback unit, or the one that the system shows. */
export function parseQuantity(text: string, kind: QuantityKind, fallback: Unit | 'us' | 'metric'): Parsed<'value'> {
  const { name } = SHOWN[kind];
  const example = exampleUnits(kind);
  const tidy = tidyText(text);
  if (tidy === '') return refuse(`Type a ${name}, in ${example}.`);
  const parts = text.length > MAX_TYPED ? null : QUANTITY.exec(tidy);
  if (!parts?.[2]) return refuse(`“${tidy.slice(0, MAX_TYPED)}” is not a ${name}: write it in ${example}.`);
  const unit = parts[3] ? findUnit(parts[3], kind) : isSystem(fallback) ? shownUnit(kind, fallback) : fallback;
  if (unit === null) return refuse(`“${parts[3]}” is not a unit of ${name} here: use ${example}.`);
  const size = parseAmount(parts[2]);
  return size.ok ? { ok: true, value: withoutDust(toSI(parts[1] === '-' ? -size.value : size.value, unit)) } : size;
}

const isSystem = (fallback: Unit | 'us' | 'metric') => fallback === 'us' || fallback === 'metric';

function exampleUnits(kind: QuantityKind): string {
  const symbols = (['us', 'metric'] as const).map((system) => UNITS[shownUnit(kind, system)].symbol);
  return [...new Set(symbols)].join(' or ') || 'figures only';
}

function findUnit(word: string, kind: QuantityKind): Unit | null {
  const units = Object.keys(UNITS) as Unit[];
  return units.find((unit) => isOfKind(unit, kind) && isWordFor(unit, word.replace(/\.$/, ''))) ?? null;
}

const isOfKind = (unit: Unit, kind: QuantityKind) => [UNITS[unit].kind].flat().includes(kind);

function isWordFor(unit: Unit, word: string): boolean {
  const { symbol, words = [] } = UNITS[unit];
  return tidyText(symbol) === word || words.includes(word);
}
