import {
  formatAngle,
  formatLength,
  formatNumber,
  formatQuantity,
  formatSlope,
  formatTemperature,
  parseAngle,
  parseLength,
  parseQuantity,
  parseSlope,
  parseTemperature,
  type QuantityKind,
  UNIT_SPACE,
  type Units,
} from '../../units';
import type { Field, FieldKind, FieldOption, FieldValue } from './field';

export type ReadField = { readonly ok: true; readonly value: FieldValue } | { readonly ok: false; readonly problem: string };

/** What a field reads, in the units that people have chosen. Unknown is empty. */
export function formatField(field: Pick<Field, 'kind' | 'of' | 'value' | 'options'>, units: Units): string {
  const { kind, of, value, options } = field;
  if (value === null) return '';
  if (typeof value === 'number' && kind === 'quantity' && of !== null) return formatQuantity(value, of, units);
  if (typeof value === 'number') return FORMATS[kind]?.(value, units) ?? labelOf(options, value);
  return labelOf(options, value);
}

/** Reads what was typed into a field. Nothing, where the field may be unknown, means unknown. */
export function readFieldText(field: Pick<Field, 'kind' | 'of' | 'nullable' | 'options'>, text: string, units: Units): ReadField {
  if (field.nullable && isUnknown(text)) return { ok: true, value: null };
  if (field.kind === 'quantity') return readQuantity(text, field.of ?? 'count', units);
  return READERS[field.kind](text, units, field.options);
}

const labelOf = (options: readonly FieldOption[], value: FieldValue) =>
  options.find((option) => option.value === value)?.label ?? String(value);

const isUnknown = (text: string) => ['', '?', 'not known', 'unknown'].includes(text.trim().toLowerCase());

const FORMATS: Partial<Record<FieldKind, (value: number, units: Units) => string>> = {
  length: (value, units) => formatLength(value, units),
  coordinate: (value, units) => formatLength(value, units),
  angle: (value) => formatAngle(value),
  slope: (value, units) => formatSlope(value, units),
  temperature: (value, units) => formatTemperature(value, units),
  pressure: (value, units) => formatQuantity(value * 1000, 'pressure', units),
  voltage: (value, units) => formatQuantity(value, 'voltage', units),
  current: (value, units) => formatQuantity(value, 'current', units),
  power: (value, units) => formatQuantity(value * 1000, 'power', units),
  volume: (value, units) => formatQuantity(value / 1000, 'volume', units),
  seconds: (value) => `${formatNumber(value, 1)}${UNIT_SPACE}s`,
  count: (value) => String(value),
};

type Reader = (text: string, units: Units, options: readonly FieldOption[]) => ReadField;

const readLength: Reader = (text, units) => {
  const read = parseLength(text, units === 'us' ? 'in' : 'mm');
  return read.ok ? { ok: true, value: read.mm } : { ok: false, problem: read.reason };
};

const readCount: Reader = (text) => {
  const tidy = text.trim().replaceAll(/[\s\u202f]/g, '');
  return /^[+-]?\d+([.,]\d+)?$/.test(tidy)
    ? { ok: true, value: Number(tidy.replace(',', '.')) }
    : { ok: false, problem: `“${text.trim()}” is not a number.` };
};

const readOption: Reader = (text, _units, options) => {
  const wanted = text.trim().toLowerCase();
  const found = options.find(({ value, label }) => [String(value), label.toLowerCase()].includes(wanted));
  if (found !== undefined) return { ok: true, value: found.value };
  return { ok: false, problem: `“${text.trim()}” is not one of: ${options.map(({ label }) => label).join(', ')}.` };
};

/** `stored` is what one of the stored unit is in SI. */
function readQuantity(text: string, of: QuantityKind, units: Units, stored = 1): ReadField {
  const read = parseQuantity(text, of, units);
  return read.ok ? { ok: true, value: read.value / stored } : { ok: false, problem: read.reason };
}

const READERS: Record<Exclude<FieldKind, 'quantity'>, Reader> = {
  length: readLength,
  coordinate: readLength,
  angle: (text) => {
    const read = parseAngle(text);
    return read.ok ? { ok: true, value: read.deg } : { ok: false, problem: read.reason };
  },
  slope: (text, units) => {
    const read = parseSlope(text, units);
    return read.ok ? { ok: true, value: read.ratio } : { ok: false, problem: read.reason };
  },
  temperature: (text, units) => {
    const read = parseTemperature(text, units);
    return read.ok ? { ok: true, value: read.tempC } : { ok: false, problem: read.reason };
  },
  pressure: (text, units) => readQuantity(text, 'pressure', units, 1000),
  voltage: (text, units) => readQuantity(text, 'voltage', units),
  current: (text, units) => readQuantity(text, 'current', units),
  power: (text, units) => readQuantity(text, 'power', units, 1000),
  volume: (text, units) => readQuantity(text, 'volume', units, 0.001),
  seconds: (text, units) => readQuantity(text, 'duration', units),
  count: readCount,
  choice: readOption,
  toggle: readOption,
  text: (text) => ({ ok: true, value: text.trim() }),
};
