import { expect, test } from 'vitest';
import { type FormulaRecord, findOutOfRange } from '../../src/rules/record';

interface Inputs {
  lengthM: number;
  kind: string;
  flows: number[];
}

const RECORD: FormulaRecord<Inputs> = {
  id: 'own',
  title: 'own formula',
  formula: '',
  inputs: {
    lengthM: { text: '', unit: 'm', min: 1, max: 3 },
    kind: { text: '', choices: ['steel', 'copper'] },
    flows: { text: '', unit: 'm3/s', min: 0, max: 2 },
  },
  result: { text: '', unit: 'm', min: 0, max: 1 },
  source: [],
  examples: [],
};
const GOOD: Inputs = { lengthM: 2, kind: 'steel', flows: [0, 1, 2] };

const range = (input: string, value: unknown, min: number, max: number, unit: string) => ({
  code: 'out-of-range',
  formula: 'own',
  title: 'own formula',
  input,
  value,
  min,
  max,
  unit,
  choices: null,
  params: {},
});

test.each([
  { name: 'within', change: {}, refusal: null },
  { name: 'the least', change: { lengthM: 1 }, refusal: null },
  { name: 'the most', change: { lengthM: 3 }, refusal: null },
  { name: 'less', change: { lengthM: 0.99 }, refusal: range('lengthM', 0.99, 1, 3, 'm') },
  { name: 'more', change: { lengthM: 3.01 }, refusal: range('lengthM', 3.01, 1, 3, 'm') },
  { name: 'no number', change: { lengthM: Number.NaN }, refusal: range('lengthM', 'NaN', 1, 3, 'm') },
  { name: 'a word for a number', change: { lengthM: '2' as never }, refusal: range('lengthM', '2', 1, 3, 'm') },
  { name: 'another choice', change: { kind: 'copper' }, refusal: null },
  {
    name: 'no choice of the list',
    change: { kind: 'lead' },
    refusal: { ...range('kind', 'lead', 0, 0, ''), code: 'not-a-choice', min: null, max: null, unit: null, choices: ['steel', 'copper'] },
  },
  { name: 'an empty list', change: { flows: [] }, refusal: null },
  { name: 'one of a list', change: { flows: [0, 2.5, 9] }, refusal: range('flows', 2.5, 0, 2, 'm3/s') },
  { name: 'two at once: the first input', change: { lengthM: 9, flows: [9] }, refusal: range('lengthM', 9, 1, 3, 'm') },
])('inputs of a formula: $name', ({ change, refusal }) => {
  expect(findOutOfRange(RECORD, { ...GOOD, ...change })).toEqual(refusal);
});
