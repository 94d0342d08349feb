import { mutateNode } from './mutateNode';
import { childrenOf, type Node, parseSource } from './syntax';
import type { Mutant } from './types';

/** Every mutant of a source, in the order of the text. Whether it still type-checks is found out later. */
export function findMutants(text: string, file: string): Mutant[] {
  const lineOf = createLineFinder(text);
  const mutants: Mutant[] = [];
  visit(parseSource(text, file), null, (node, parent) => {
    for (const change of mutateNode(node, parent, text)) mutants.push({ file, line: lineOf(change.start), ...change });
  });
  return dropTwins(mutants);
}

function visit(node: Node, parent: Node | null, act: (node: Node, parent: Node | null) => void): void {
  if (isLeftAlone(node)) return;
  act(node, parent);
  for (const child of childrenOf(node)) visit(child, node, act);
}

/** Of TypeScript's own nodes only these hold code that runs. */
const WRAPPERS = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression']);
/** Imports hold no code; a template is words for people or a name made of parts; what is thrown is for developers. */
const NO_CODE = new Set(['ImportDeclaration', 'ExportAllDeclaration', 'TemplateLiteral', 'ThrowStatement', 'Decorator']);
/** What a rule says of itself, and where it has it from. */
const FACTS = new Set(['id', 'title', 'why', 'source']);

function isLeftAlone(node: Node): boolean {
  if (node.type.startsWith('TS')) return !WRAPPERS.has(node.type);
  return NO_CODE.has(node.type) || (node.type === 'Property' && FACTS.has(keyName(node)));
}

function keyName({ key }: Node): string {
  const { name, value } = key as Node;
  return String(name ?? value);
}

/** Two ways to the same text count once. */
function dropTwins(mutants: readonly Mutant[]): Mutant[] {
  const seen = new Map(mutants.map((mutant) => [`${mutant.start} ${mutant.end} ${mutant.replacement}`, mutant]));
  return [...seen.values()];
}

function createLineFinder(text: string): (place: number) => number {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (place) => starts.findLastIndex((start) => start <= place) + 1;
}
