import type { z } from 'zod/mini';
import { createProblem, describeValue, type PlanProblem } from './planProblem';

/** The first thing that the schema found wrong, as a problem. `raw` is what was parsed. */
export function schemaProblem(issue: z.core.$ZodIssue, raw: unknown): PlanProblem {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  const value = valueAt(raw, path);
  if (issue.code === 'unrecognized_keys') return createProblem('unknown-key', [...path, ...issue.keys.slice(0, 1)]);
  const expected = expectation(issue);
  if (value === undefined) return createProblem('missing', path, { expected: expected.text });
  const found = describeValue(value);
  if (expected.kind === 'type') return createProblem('wrong-type', path, { expected: expected.text, found });
  if (expected.kind === 'choices') return createProblem('wrong-value', path, { choices: expected.text, found });
  if (expected.kind === 'bound') return createProblem('out-of-range', path, { bound: expected.text, found });
  return createProblem('wrong-form', path, { rule: expected.text, found });
}

interface Expectation {
  kind: 'type' | 'choices' | 'bound' | 'form';
  text: string;
}

function expectation(issue: z.core.$ZodIssue): Expectation {
  switch (issue.code) {
    case 'invalid_type':
      return { kind: 'type', text: TYPE_WORDS[issue.expected] ?? issue.expected };
    case 'invalid_value':
      return { kind: 'choices', text: choices(issue.values) };
    case 'invalid_union':
      return { kind: 'choices', text: choices(unionChoices(issue)) };
    case 'too_small':
      return { kind: 'bound', text: `at least ${issue.minimum}${unitOf(issue.origin)}` };
    case 'too_big':
      return { kind: 'bound', text: `at most ${issue.maximum}${unitOf(issue.origin)}` };
    default:
      return { kind: 'form', text: issue.message };
  }
}

const TYPE_WORDS: Record<string, string> = {
  number: 'a number',
  string: 'text',
  boolean: 'true or false',
  object: 'an object',
  array: 'a list',
  null: 'null',
};

function unitOf(origin: string): string {
  if (origin === 'string') return ' characters';
  return origin === 'array' ? ' items' : '';
}

/** What a union would have taken: its discriminator's values, or every literal and type of its branches. */
function unionChoices(issue: z.core.$ZodIssueInvalidUnion): unknown[] {
  const options = 'options' in issue && Array.isArray(issue.options) ? issue.options : null;
  if (options !== null) return options;
  return issue.errors.flat().flatMap((inner) => (inner.code === 'invalid_value' ? inner.values : []));
}

function choices(values: readonly unknown[]): string {
  const words = values.map((value) => (typeof value === 'string' ? JSON.stringify(value) : String(value)));
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function valueAt(raw: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? (value as Record<string | number, unknown>)[step] : undefined),
    raw,
  );
}
