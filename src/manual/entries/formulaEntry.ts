import { type Example, type Formula, type Note } from '../../rules';
import { figureWords } from '../../text';
import type { Formatter } from '../../units';
import { sourcePart } from '../sourceParts';
import type { ManualEntry, ManualPart } from '../types';

type FormulaRecord = Formula['record'];

/** A formula as its record has it: how it is written, what goes in and comes out, where it comes from, and worked examples. */
export function createFormulaEntry({ record }: Formula, group: string, usedBy: readonly string[], f: Formatter): ManualEntry {
  const { id, title, formula, also, source } = record;
  return {
    id: `formula/${id}`,
    kind: 'formula',
    title,
    group,
    parts: [
      { kind: 'formula', text: formula },
      notesPart(record, group, f),
      ...(also === undefined ? [] : [{ kind: 'text' as const, text: `It holds only where: ${also}.` }]),
      sourcePart(source),
      ...examplesPart(record, group, f),
      ...(usedBy.length === 0 ? [] : [{ kind: 'links' as const, title: 'Figures that it works out', to: usedBy }]),
    ],
  };
}

function notesPart({ inputs, result }: FormulaRecord, group: string, f: Formatter): ManualPart {
  const row = (note: Note) => [note.text, rangeWords(note, group, f)];
  return {
    kind: 'table',
    title: 'What goes in, and what comes out',
    head: ['What it is', 'Range'],
    rows: [...Object.values(inputs).map(row), [`Result: ${result.text}`, rangeWords(result, group, f)]],
  };
}

function rangeWords(note: Note, group: string, f: Formatter): string {
  if ('choices' in note) return note.choices.map((choice) => choice.replaceAll('-', ' ')).join(', ');
  const [low, high] = [note.min, note.max].map((value) => (Number.isFinite(value) ? figureWords(value, note.unit, f, group) : null));
  if (high === null) return low === null ? 'any' : `${low} and more`;
  return low === null ? `up to ${high}` : `${low} to ${high}`;
}

const KINDS: Record<Example<object>['kind'], string> = {
  source: 'printed in the source',
  memory: 'said to be printed there, unread',
  regression: 'our own working',
};

function examplesPart(record: FormulaRecord, group: string, f: Formatter): ManualPart[] {
  const { examples, result } = record;
  if (examples.length === 0) return [];
  const out = (value: number) => ('choices' in result ? String(value) : figureWords(value, result.unit, f, group));
  return [
    {
      kind: 'table',
      title: 'Worked examples',
      head: ['Inputs', 'Result', 'From'],
      rows: examples.map((example) => [
        inputWords(record, example.inputs, group, f),
        out(example.result),
        [example.from, KINDS[example.kind]].filter((words) => words !== '').join('; '),
      ]),
    },
  ];
}

/** Longer lists are cut short. */
const MOST = 6;

function inputWords({ inputs }: FormulaRecord, values: Record<string, unknown>, group: string, f: Formatter): string {
  return Object.entries(inputs)
    .filter(([name]) => values[name] !== undefined)
    .map(([name, note]) => {
      const all = [values[name]].flat();
      const shown = all.slice(0, MOST).map((value) => valueWords(value, note, group, f));
      return `${note.text} ${shown.join(', ')}${all.length > MOST ? ` … (${all.length})` : ''}`;
    })
    .join('; ');
}

const valueWords = (value: unknown, note: Note, group: string, f: Formatter) =>
  typeof value === 'number' && !('choices' in note) ? figureWords(value, note.unit, f, group) : String(value).replaceAll('-', ' ');
