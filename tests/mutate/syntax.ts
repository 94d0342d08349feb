import { parseAst } from 'vite';

/** A node of the syntax tree, in the form that JavaScript tools share (ESTree). Places are counted in UTF-16 units. */
export interface Node {
  type: string;
  start: number;
  end: number;
  [field: string]: unknown;
}

export function parseSource(text: string, file: string): Node {
  return parseAst(text, { lang: file.endsWith('x') ? 'tsx' : 'ts' }) as unknown as Node;
}

export const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value && 'start' in value;

/** Nodes right below, in the order of the text. */
export function childrenOf(node: Node): Node[] {
  return Object.values(node)
    .flatMap((value) => (Array.isArray(value) ? value : [value]))
    .filter(isNode)
    .sort((a, b) => a.start - b.start);
}
