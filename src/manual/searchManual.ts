import type { ManualEntry, ManualPart } from './types';

/** Entries in which every word of the query stands; those with all of them in the title or the id first, and rules before their sources. */
export function searchManual(entries: readonly ManualEntry[], query: string): ManualEntry[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [...entries];
  const has = (text: string) => words.every((word) => text.includes(word));
  const found = entries.filter((entry) => has(wordsOf(entry)));
  const isNamed = ({ title, id }: ManualEntry) => has(`${title} ${id}`.toLowerCase());
  const inOrder = [...found.filter(isNamed), ...found.filter((entry) => !isNamed(entry))];
  return [...inOrder.filter((entry) => !isSource(entry)), ...inOrder.filter(isSource)];
}

const isSource = ({ id }: ManualEntry) => id.startsWith('source/');

const wordsOf = ({ id, title, group, parts }: ManualEntry) => [id, title, group, ...parts.map(partWords)].join(' ').toLowerCase();

function partWords(part: ManualPart): string {
  switch (part.kind) {
    case 'text':
    case 'formula':
      return part.text;
    case 'facts':
      return part.rows.flat().join(' ');
    case 'table':
      return part.rows.flat().join(' ');
    case 'links':
      return part.to.join(' ');
  }
}
