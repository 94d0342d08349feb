import { z } from 'zod';
import { type FieldPath, planSchema } from '../../plan';

/** The schema of the place, for the plan's present shape (a union is decided by what stands there); null where the plan has no such place. */
export function schemaAt(plan: unknown, path: FieldPath): z.ZodType | null {
  let schema: z.ZodType | null = planSchema;
  let value: unknown = plan;
  for (const key of path) {
    schema = childSchema(schema, value, key);
    if (schema === null) return null;
    value = childValue(value, key);
  }
  return schema;
}

/** The schema without "may be null". */
export function unwrapNullable(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodNullable ? (schema.unwrap() as z.ZodType) : schema;
}

/** The object schema that fits the value, where the schema is an object or a choice between objects. */
export function objectSchema(schema: z.ZodType, value: unknown): z.ZodObject | null {
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodObject) return inner;
  if (!(inner instanceof z.ZodDiscriminatedUnion)) return null;
  const fits = (option: unknown): option is z.ZodObject => option instanceof z.ZodObject && isKind(option, childValue(value, 'kind'));
  return inner.options.find(fits) ?? null;
}

/** The words that a union of objects chooses between. */
export function kindsOf(schema: z.ZodDiscriminatedUnion): string[] {
  return schema.options.flatMap((option) => (option instanceof z.ZodObject ? literals(option.shape['kind']) : []));
}

function childSchema(schema: z.ZodType, value: unknown, key: string | number): z.ZodType | null {
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodArray)
    return typeof key === 'number' && Array.isArray(value) && key in value ? (inner.element as z.ZodType) : null;
  if (key === 'kind' && inner instanceof z.ZodDiscriminatedUnion) return inner;
  return (objectSchema(inner, value)?.shape[key] as z.ZodType | undefined) ?? null;
}

function childValue(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Record<string | number, unknown>)[key];
}

const isKind = (option: z.ZodObject, kind: unknown) => literals(option.shape['kind']).some((word) => word === kind);

const literals = (schema: unknown): string[] => (schema instanceof z.ZodLiteral ? [...schema.values].map(String) : []);
