import { type FigureRule } from '../../rules';
import { figureWords } from '../../text';
import type { Formatter } from '../../units';
import type { ManualEntry } from '../types';

/** A figure: what it is of, its unit, and the formulas that it is worked out with. */
export function createFigureEntry({ id, title, group, unit }: FigureRule, formulas: readonly string[], f: Formatter): ManualEntry {
  return {
    id: `figure/${id}`,
    kind: 'figure',
    title,
    group,
    parts: [
      {
        kind: 'facts',
        rows: [
          ['Part of the work', group],
          ['Unit', unit === 'm' ? 'feet and inches, or millimetres' : symbolOf(figureWords(1, unit, f, group))],
          ['Id', id],
        ],
      },
      formulas.length > 0
        ? { kind: 'links', title: 'Worked out with', to: formulas.map((formula) => `formula/${formula}`) }
        : {
            kind: 'text',
            text: 'Measured on the plan, or read off a table: how, and from where, stands under the figure itself, on its card.',
          },
    ],
  };
}

/** What stands after the number. */
const symbolOf = (words: string) => words.replace(/^[\d.,−\s]+/, '') || 'a number';
