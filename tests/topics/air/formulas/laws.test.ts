import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Formula, Note } from '../../../../src/rules';
import { FORMULAS, groupOf } from '../../../../src/topics/registry';
import { isBound } from '../../../support/isBound';

/** Any inputs within the ranges of the record; lists as long as those of its first example, and rising where they do. */
function anyInputs({ record }: Formula): fc.Arbitrary<Record<string, unknown>> {
  const example = record.examples[0]?.inputs ?? {};
  const values = Object.entries(record.inputs).map(([key, note]) => {
    const like = example[key];
    const one = anyValue(note);
    return [key, Array.isArray(like) ? fc.array(one, { minLength: like.length, maxLength: like.length }) : one] as const;
  });
  return fc.record(Object.fromEntries(values));
}

/** Formulas of hood, duct and room air. */
const OF_AIR = FORMULAS.filter((formula) => groupOf(formula) === 'air');

function anyValue(note: Note): fc.Arbitrary<unknown> {
  if ('choices' in note) return fc.constantFrom(...note.choices);
  return fc.double({ min: 0, max: 1, noNaN: true }).map((part) => note.min + part ** 2 * (note.max - note.min));
}

describe.each(OF_AIR.map((formula) => [formula.record.id, formula] as const))('%s', (_id, formula) => {
  const { record, run } = formula;

  test('answers within the range of its result, or says which bound stands against it', () => {
    const { min, max } = 'choices' in record.result ? { min: 0, max: 0 } : record.result;
    fc.assert(
      fc.property(anyInputs(formula), (inputs) => {
        const outcome = run(inputs);
        // A formula that stands on another hands on what that one refuses.
        if (!outcome.ok) return outcome.refusal.code === 'out-of-range' || isBound(record, outcome.refusal);
        return Number.isFinite(outcome.value) && outcome.value >= min - 1e-9 && outcome.value <= max * (1 + 1e-9);
      }),
      { seed: 3361, numRuns: 200 },
    );
  });

  test('gives the same answer again and leaves its inputs alone', () => {
    fc.assert(
      fc.property(anyInputs(formula), (inputs) => {
        const before = JSON.stringify(inputs);
        expect(run(inputs)).toEqual(run(inputs));
        expect(JSON.stringify(inputs)).toBe(before);
      }),
      { seed: 3362, numRuns: 30 },
    );
  });
});

test('the friction forms refuse the transition, and nothing else of their range', () => {
  const factor = OF_AIR.find(({ record }) => record.id === 'friction-factor');
  const at = (reynolds: number) => factor?.run({ reynolds, relativeRoughness: 0.001, method: 'colebrook' }).ok;
  expect([2300, 2301, 3999, 4000].map(at)).toEqual([true, false, false, true]);
});
