import { z } from 'zod/mini';
import type { FieldNote, FieldRule } from '../../catalog';
import { optionWords } from '../../text';
import type { QuantityKind } from '../../units';
import type { FieldKind, FieldOption } from './field';
import { kindsOf, unwrapNullable } from './schemaAt';

/** What the schema says of one value that people type. */
export interface Leaf {
  kind: FieldKind;
  /** What a `quantity` is of. */
  of: QuantityKind | null;
  min: number | null;
  max: number | null;
  nullable: boolean;
  options: FieldOption[];
}

/** Reads a leaf of the schema, in the words of its field; null for what has parts of its own, and for permanent names. */
export function leafOf(schema: z.ZodMiniType, field = ''): Leaf | null {
  const inner = unwrapNullable(schema);
  const option = (value: string | number | boolean): FieldOption => ({ value, label: optionWords(value, field) });
  const { min = null, max = null, of = null } = ruleOf(inner) ?? {};
  const common = { of, min, max, nullable: inner !== schema, options: [] };
  if (inner instanceof z.ZodMiniNumber) return { ...common, kind: numberKind(inner) };
  if (inner instanceof z.ZodMiniString) return { ...common, kind: 'text' };
  if (inner instanceof z.ZodMiniBoolean) return { ...common, kind: 'toggle', options: [true, false].map(option) };
  const words = choicesOf(inner);
  return words === null ? null : { ...common, kind: 'choice', options: words.map(option) };
}

/** What the schema keeps of a field: its unit and its limits. */
function ruleOf(schema: z.ZodMiniType): FieldRule | undefined {
  return z.globalRegistry.get(schema) as FieldRule | undefined;
}

const KIND_OF_UNIT: Record<NonNullable<FieldNote['unit']>, FieldKind> = {
  mm: 'length',
  deg: 'angle',
  s: 'seconds',
  C: 'temperature',
  L: 'volume',
  kPa: 'pressure',
  V: 'voltage',
  A: 'current',
  kW: 'power',
  ratio: 'slope',
  count: 'count',
};

function numberKind(schema: z.ZodMiniNumber): FieldKind {
  if (ruleOf(schema)?.of !== undefined) return 'quantity';
  const unit = ruleOf(schema)?.unit ?? 'count';
  if (unit === 'mm' && (ruleOf(schema)?.min ?? 0) < 0) return 'coordinate';
  return KIND_OF_UNIT[unit];
}

function choicesOf(schema: z.ZodMiniType): (string | number)[] | null {
  if (schema instanceof z.ZodMiniEnum) return schema.options;
  // One word alone is a part's kind, and no choice.
  if (schema instanceof z.ZodMiniLiteral) return schema.def.values.length > 1 ? schema.def.values.filter(isWord) : null;
  if (schema instanceof z.ZodMiniDiscriminatedUnion) return kindsOf(schema);
  if (!(schema instanceof z.ZodMiniUnion)) return null;
  return schema.def.options.flatMap((one) => (one instanceof z.ZodMiniLiteral ? one.def.values.filter(isWord) : []));
}

const isWord = (value: unknown): value is string | number => typeof value === 'string' || typeof value === 'number';
