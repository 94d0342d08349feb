import { createHash } from 'node:crypto';
import type { Mutant } from './types';

/**
 * All mutants in the order in which a sample takes them. The order comes from what a mutant says and not from where it stands,
 * so that a change in one file leaves the sample of the others as it was.
 */
export function orderMutants(mutants: readonly Mutant[], textOf: (file: string) => string, seed: number): Mutant[] {
  const met = new Map<string, number>();
  const ranked = mutants.map((mutant) => {
    const words = [seed, mutant.file, mutant.operator, lineText(textOf(mutant.file), mutant.line)].join('\n');
    const nth = met.get(words) ?? 0;
    met.set(words, nth + 1);
    return { mutant, rank: createHash('sha1').update(`${words}\n${nth}`).digest('hex') };
  });
  return ranked.sort((a, b) => (a.rank < b.rank ? -1 : 1)).map(({ mutant }) => mutant);
}

const lineText = (text: string, line: number): string => (text.split('\n')[line - 1] ?? '').trim();
