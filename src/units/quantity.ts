import { formatDuration, parseDuration } from './duration';
import { convert, dimensionOf, type Unit } from './factors';
import { formatNumber, formatWithUnit } from './formatNumber';
import { NUMBER, parseNumber } from './parseNumber';
import { parseUnit } from './parseUnit';
import { plainText } from './plainText';
import { type Refusal, refuse } from './refusal';
import type { Units } from './system';

/** A unit as it is shown: what stands behind the number, and the most decimals. */
interface Shown {
  unit: Unit;
  label: string;
  decimals: number;
}

/** What the program holds inside, and what people read. */
interface Kind {
  /** Word for messages: "a temperature". */
  name: string;
  inside: Unit;
  us: Shown;
  metric: Shown;
}

const shown = (unit: Unit, label: string, decimals: number): Shown => ({ unit, label, decimals });

const both = (name: string, inside: Unit, one: Shown): Kind => ({ name, inside, us: one, metric: one });

const KINDS = {
  temperature: { name: 'a temperature', inside: 'C', us: shown('F', '°F', 1), metric: shown('C', '°C', 1) },
  temperatureDifference: {
    name: 'a temperature difference',
    inside: 'differenceK',
    us: shown('differenceF', '°F', 1),
    metric: shown('differenceK', 'K', 1),
  },
  pressure: { name: 'a pressure', inside: 'kPa', us: shown('psi', 'psi', 1), metric: shown('kPa', 'kPa', 1) },
  draft: { name: 'a draft', inside: 'Pa', us: shown('inH2O', 'in H₂O', 3), metric: shown('Pa', 'Pa', 1) },
  flow: { name: 'a flow of water', inside: 'm3/s', us: shown('gpm', 'gpm', 2), metric: shown('L/s', 'L/s', 3) },
  airflow: { name: 'a flow of air', inside: 'm3/s', us: shown('cfm', 'cfm', 0), metric: shown('L/s', 'L/s', 0) },
  volume: { name: 'a volume', inside: 'L', us: shown('gal', 'gal', 2), metric: shown('L', 'L', 2) },
  power: both('a power', 'kW', shown('kW', 'kW', 2)),
  heat: { name: 'a heat output', inside: 'kW', us: shown('Btu/h', 'Btu/h', 0), metric: shown('kW', 'kW', 2) },
  energy: both('an energy', 'kWh', shown('kWh', 'kWh', 2)),
  mass: { name: 'a mass', inside: 'kg', us: shown('lb', 'lb', 1), metric: shown('kg', 'kg', 1) },
  speed: { name: 'a speed', inside: 'm/s', us: shown('fpm', 'fpm', 0), metric: shown('m/s', 'm/s', 2) },
  illuminance: { name: 'an illuminance', inside: 'lx', us: shown('fc', 'fc', 1), metric: shown('lx', 'lx', 0) },
  hardness: { name: 'a hardness', inside: 'mg/L', us: shown('gpg', 'gpg', 1), metric: shown('mg/L', 'mg/L', 0) },
  current: both('a current', 'A', shown('A', 'A', 1)),
  voltage: both('a voltage', 'V', shown('V', 'V', 1)),
} as const satisfies Record<string, Kind>;

/** Quantities with units of their own, the duration (in s) and the plain count. Lengths, slopes and angles have functions of their own. */
export type QuantityKind = keyof typeof KINDS | 'duration' | 'count';

export type ParsedQuantity = { ok: true; value: number } | Refusal;

const QUANTITY = new RegExp(String.raw`^([-+]?) ?(${NUMBER}) ?(\D.*)?$`, 'u');

/**
 * Reads a quantity in the unit that the program holds inside: °C, kPa, m³/s, L, kW, A, V, s. A number
 * without a unit is in the unit that people of that system read.
 */
export function parseQuantity(text: string, kind: QuantityKind, units: Units): ParsedQuantity {
  const plain = plainText(text);
  if (plain === '') return refuse('Nothing was typed: give a number.');
  if (kind === 'duration') return parseDuration(plain);
  const [, sign, number, spelling] = QUANTITY.exec(plain) ?? [];
  if (number === undefined) return refuse(`“${text.trim()}” is not a number${kind === 'count' ? '' : ' with a unit'}.`);
  const parsed = parseNumber(number);
  if (!parsed.ok) return parsed;
  const value = (sign === '-' ? -parsed.value : parsed.value) + 0;
  if (kind === 'count')
    return spelling === undefined ? { ok: true, value } : refuse(`“${spelling}” does not belong here: give a number only.`);
  return toInside(value, spelling, KINDS[kind], units);
}

function toInside(value: number, spelling: string | undefined, kind: Kind, units: Units): ParsedQuantity {
  const { inside } = kind;
  const unit = spelling === undefined ? kind[units].unit : unitWithin(spelling, inside);
  if (unit === null) return refuse(`“${spelling}” is not a unit of ${kind.name.replace(/^an? /u, '')}. Use ${labels(kind)}.`);
  const converted = convert(value, unit, inside);
  return Number.isFinite(converted) ? { ok: true, value: converted } : refuse('The number is too large: it would be infinite.');
}

/** The unit so spelled that measures the same as `inside`; degrees of a difference are spelled as degrees. */
function unitWithin(spelling: string, inside: Unit): Unit | null {
  const unit = parseUnit(spelling);
  if (unit === null) return null;
  if (inside === 'differenceK' && dimensionOf(unit) === 'temperature') return unit === 'F' ? 'differenceF' : 'differenceK';
  return dimensionOf(unit) === dimensionOf(inside) ? unit : null;
}

const labels = ({ us, metric }: Kind) => (us.label === metric.label ? us.label : `${us.label} or ${metric.label}`);

/** A quantity, held in the unit of `parseQuantity`, as people of that system read it. */
export function formatQuantity(value: number, kind: QuantityKind, units: Units): string {
  if (kind === 'duration') return formatDuration(value);
  if (kind === 'count') return formatNumber(value, 2);
  const { inside, [units]: as }: Kind = KINDS[kind];
  return formatWithUnit(convert(value, inside, as.unit), as.label, as.decimals);
}
