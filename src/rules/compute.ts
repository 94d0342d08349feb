import type { Derivation, FigureReading } from './figure';
import type { FormulaRecord, FormulaResult } from './record';

type Answer = Pick<FigureReading, 'value' | 'refusal' | 'how'>;

/** Runs a formula: its value, or why it refuses; and how. */
export function compute<Inputs extends object>(
  record: FormulaRecord<Inputs>,
  run: (inputs: Inputs) => FormulaResult,
  inputs: Inputs,
): Answer {
  const result = run(inputs);
  const how = explain(record, inputs);
  return result.ok ? { value: result.value, how } : { value: null, refusal: result.refusal, how };
}

/** The formula by hand, its inputs in words, and its source. */
export function explain<Inputs extends object>(record: FormulaRecord<Inputs>, inputs: Inputs): Derivation {
  const names = Object.keys(record.inputs) as (keyof Inputs & string)[];
  return {
    formula: record.formula,
    record: record.id,
    source: record.source,
    inputs: names.flatMap((name) => {
      const note = record.inputs[name];
      const unit = 'choices' in note ? ('word' as const) : note.unit;
      return [inputs[name]].flat().map((value) => ({ name: note.text, value: value as number | string, unit }));
    }),
  };
}

/** The same derivation, with more sources than the formula's own. */
export const withSources = (how: Derivation | null, ...more: Derivation['source']): Derivation | null =>
  how === null ? null : { ...how, source: [...how.source, ...more] };
