import { describe, expect, test } from 'vitest';
import type { Formula, Note, Refusal } from '../../src/rules';
import { FORMULAS } from '../../src/topics/registry';
import { isBound } from '../support/isBound';

test('no two formulas share an id', () => {
  const ids = FORMULAS.map(({ record }) => record.id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(FORMULAS.map((formula) => [formula.record.id, formula] as const))('%s', (_id, { record, run }) => {
  test('has a source, a worked example from it or a word why it prints none, and a kebab-case id', () => {
    expect(record.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(record.source.length).toBeGreaterThan(0);
    expect(record.examples.length).toBeGreaterThan(0);
    expect(record.examples.some((example) => example.kind === 'source')).toBe(record.unprinted === undefined);
  });

  test.each(record.examples)('$kind: $from', ({ inputs, result, tolerance }) => {
    const outcome = run(inputs);
    expect(outcome.ok).toBe(true);
    if (!outcome.ok) return;
    expect(Math.abs(outcome.value - result)).toBeLessThanOrEqual(tolerance);
    expect(isWithin(record.result, outcome.value)).toBe(true);
  });

  test.each(outOfRange({ record, run }))('refuses %s = %s', (key, value) => {
    const outcome = run({ ...record.examples[0]?.inputs, [key]: value });
    expect(outcome).toMatchObject({ ok: false, refusal: { input: key } });
    expect(JSON.parse(JSON.stringify(outcome))).toEqual(outcome);
  });

  test('answers at both ends of every range, unless a bound on several inputs stands against it', () => {
    expect(refusalsAtEnds({ record, run }).filter((refusal) => !isBound(record, refusal))).toEqual([]);
  });
});

function refusalsAtEnds({ record, run }: Formula): Refusal[] {
  const inputs = record.examples[0]?.inputs ?? {};
  return Object.entries(record.inputs).flatMap(([key, note]) => {
    const ends = 'choices' in note ? [] : [note.min, note.max];
    const outcomes = ends.map((end) => run({ ...inputs, [key]: like(inputs[key], end) }));
    return outcomes.flatMap((outcome) => (outcome.ok ? [] : [outcome.refusal]));
  });
}

/** Each input just outside its range, and what is no number at all. */
function outOfRange({ record }: Formula): [string, unknown][] {
  const example = record.examples[0]?.inputs ?? {};
  return Object.entries(record.inputs).flatMap(([key, note]) => {
    const bad: unknown[] =
      'choices' in note ? ['no-such-word'] : [note.min - 1e-6, note.max * (1 + 1e-6), Number.NaN, Number.POSITIVE_INFINITY];
    return bad.map((value): [string, unknown] => [key, like(example[key], value)]);
  });
}

/** A list keeps its other items. */
const like = (example: unknown, value: unknown) => (Array.isArray(example) ? [...example.slice(0, -1), value] : value);

const isWithin = (note: Note, value: number) => 'choices' in note || (value >= note.min && value <= note.max);
