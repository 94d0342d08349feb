import type { FigureReading, How } from './figure';
import type { FormulaRecord, FormulaResult } from './record';

type Answer = Pick<FigureReading, 'value' | 'refusal' | 'how'>;

/** Runs a formula: its value, or why it refuses; and how, which is told when somebody asks. */
export function compute<Inputs extends object>(
  record: FormulaRecord<Inputs>,
  run: (inputs: Inputs) => FormulaResult,
  inputs: Inputs,
): Answer {
  const outcome = run(inputs);
  const how = () => explain(record, inputs);
  return outcome.ok ? { value: outcome.value, how } : { value: null, refusal: outcome.refusal, how };
}

/** The formula by hand, its inputs in words, and its source. */
export function explain<Inputs extends object>(record: FormulaRecord<Inputs>, inputs: Inputs): How {
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

/** The same how, with more sources than the formula's own. */
export const withSources = (how: FigureReading['how'], ...more: How['source']): (() => How) | null =>
  how === null
    ? null
    : () => {
        const told = readHow(how);
        return { ...told, source: [...told.source, ...more] };
      };

/** What is told when it is asked for. */
export const readHow = (how: How | (() => How)): How => (typeof how === 'function' ? how() : how);
