import { z } from 'zod/mini';
import { type FieldPath, planSchema } from '../../plan';

/** The schema of the place, for the plan's present shape (a union is decided by what stands there); null where the plan has no such place. */
export function schemaAt(plan: unknown, path: FieldPath): z.ZodMiniType | null {
  let schema: z.ZodMiniType | null = planSchema;
  let value: unknown = plan;
  for (const key of path) {
    schema = childSchema(schema, value, key);
    if (schema === null) return null;
    value = childValue(value, key);
  }
  return schema;
}

/** The schema without "may be null". */
export function unwrapNullable(schema: z.ZodMiniType): z.ZodMiniType {
  return schema instanceof z.ZodMiniNullable ? (schema.def.innerType as z.ZodMiniType) : schema;
}

/** The object schema that fits the value, where the schema is an object or a choice between objects. */
export function objectSchema(schema: z.ZodMiniType, value: unknown): z.ZodMiniObject | null {
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodMiniObject) return inner;
  if (!(inner instanceof z.ZodMiniDiscriminatedUnion)) return null;
  const fits = (option: unknown): option is z.ZodMiniObject =>
    option instanceof z.ZodMiniObject && isKind(option, childValue(value, 'kind'));
  return inner.def.options.find(fits) ?? null;
}

/** The words that a union of objects chooses between. */
export function kindsOf(schema: z.ZodMiniDiscriminatedUnion): string[] {
  return schema.def.options.flatMap((option) => (option instanceof z.ZodMiniObject ? literals(option.shape['kind']) : []));
}

/** The schema of one step down from a value; null where it has no such part. */
export function childSchema(schema: z.ZodMiniType, value: unknown, key: string | number): z.ZodMiniType | null {
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodMiniArray)
    return typeof key === 'number' && Array.isArray(value) && key in value ? (inner.def.element as z.ZodMiniType) : null;
  if (key === 'kind' && inner instanceof z.ZodMiniDiscriminatedUnion) return inner;
  return (objectSchema(inner, value)?.shape[key] as z.ZodMiniType | undefined) ?? null;
}

/** One step down, into what the value itself holds. */
export function childValue(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Record<string | number, unknown>)[key];
}

const isKind = (option: z.ZodMiniObject, kind: unknown) => literals(option.shape['kind']).some((word) => word === kind);

const literals = (schema: unknown): string[] => (schema instanceof z.ZodMiniLiteral ? schema.def.values.map(String) : []);
