import { z } from 'zod';
import type { FieldNote } from '../../catalog';
import type { FieldKind, FieldOption } from './field';
import { optionLabel } from './fieldWords';
import { kindsOf, unwrapNullable } from './schemaAt';

/** What the schema says of one value that people type. */
export interface Leaf {
  kind: FieldKind;
  help: string;
  min: number | null;
  max: number | null;
  nullable: boolean;
  options: FieldOption[];
}

/** Reads a leaf of the schema; null for what has parts of its own, and for permanent names. */
export function leafOf(schema: z.ZodType): Leaf | null {
  const inner = unwrapNullable(schema);
  const common = { help: noteOf(inner)?.text ?? '', min: null, max: null, nullable: inner !== schema, options: [] };
  if (inner instanceof z.ZodNumber) return { ...common, kind: numberKind(inner), min: inner.minValue, max: inner.maxValue };
  if (inner instanceof z.ZodString) return { ...common, kind: 'text', max: inner.maxLength };
  if (inner instanceof z.ZodBoolean) return { ...common, kind: 'toggle', options: [true, false].map(option) };
  const words = choicesOf(inner);
  return words === null ? null : { ...common, kind: 'choice', options: words.map(option) };
}

/** The note of a field: its unit and its sentence. */
export function noteOf(schema: z.ZodType): Partial<FieldNote> | undefined {
  return schema.meta() as Partial<FieldNote> | undefined;
}

const KIND_OF_UNIT: Record<NonNullable<FieldNote['unit']>, FieldKind> = {
  mm: 'length',
  deg: 'angle',
  s: 'count',
  C: 'temperature',
  L: 'count',
  kPa: 'pressure',
  V: 'voltage',
  A: 'count',
  kW: 'count',
  ratio: 'slope',
  count: 'count',
};

function numberKind(schema: z.ZodNumber): FieldKind {
  const unit = noteOf(schema)?.unit ?? 'count';
  if (unit === 'mm' && (schema.minValue ?? 0) < 0) return 'coordinate';
  return KIND_OF_UNIT[unit];
}

function choicesOf(schema: z.ZodType): (string | number)[] | null {
  if (schema instanceof z.ZodEnum) return schema.options;
  if (schema instanceof z.ZodDiscriminatedUnion) return kindsOf(schema);
  if (!(schema instanceof z.ZodUnion)) return null;
  return schema.options.flatMap((one) => (one instanceof z.ZodLiteral ? [...one.values].filter(isWord) : []));
}

const option = (value: string | number | boolean): FieldOption => ({ value, label: optionLabel(value) });

const isWord = (value: unknown): value is string | number => typeof value === 'string' || typeof value === 'number';
