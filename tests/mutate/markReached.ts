import type { Mutant } from './types';

/**
 * The source with a mark at the place of each mutant: whoever runs it adds the mutant's number to the list of its test file
 * (`reachSetup.ts`). The marks change nothing else.
 */
export function markReached(text: string, mutants: readonly { mutant: Mutant; number: number }[]): string {
  const insertions = mutants.flatMap(({ mutant, number }, order) => insertionsOf(mutant, number, order));
  // From the back, so that places stay true. At the same place the wider of two expressions opens first and closes last.
  insertions.sort((a, b) => b.at - a.at || a.rank - b.rank);
  return insertions.reduce((marked, { at, words }) => marked.slice(0, at) + words + marked.slice(at), text);
}

interface Insertion {
  at: number;
  words: string;
  /** Of two at one place the lower is put in first, and so stands farther back. */
  rank: number;
}

function insertionsOf({ start, end, place }: Mutant, number: number, order: number): Insertion[] {
  const mark = `globalThis.reachedMutants?.add(${number})`;
  const width = end - start;
  if (place === 'block') return [{ at: start + 1, words: `${mark};`, rank: 0 }];
  const rank = (place === 'statement' ? 1e12 : 0) + width + order / 1e6;
  if (place === 'statement')
    return [
      { at: start, words: `{${mark};`, rank },
      { at: end, words: '}', rank: -rank },
    ];
  return [
    { at: start, words: `(${mark}, `, rank },
    { at: end, words: ')', rank: -rank },
  ];
}
