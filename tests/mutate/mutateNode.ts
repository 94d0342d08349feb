import type { Node } from './syntax';
import type { Mutant } from './types';

export type Change = Omit<Mutant, 'file' | 'line'>;

/** What can be done to this node itself, its parts left as they are. */
export function mutateNode(node: Node, parent: Node | null, text: string): Change[] {
  return MUTATIONS[node.type]?.(node, parent, text) ?? [];
}

type Mutation = (node: Node, parent: Node | null, text: string) => Change[];

const MUTATIONS: Record<string, Mutation> = {
  BinaryExpression: swapOperator,
  LogicalExpression: swapOperator,
  AssignmentExpression: swapOperator,
  UnaryExpression: dropNegation,
  CallExpression: swapExtreme,
  ConditionalExpression: swapBranches,
  IfStatement: (node, _parent, text) => [...negateCondition(node, text), ...dropEarlyExit(node, text)],
  WhileStatement: (node, _parent, text) => negateCondition(node, text),
  BlockStatement: emptyBlock,
  Literal: changeLiteral,
};

const PAIRS = ['< <=', '> >=', '=== !==', '== !=', '+ -', '* /', '&& ||', '+= -=', '*= /='].map(
  (pair) => pair.split(' ') as [string, string],
);
const SWAPPED = new Map(PAIRS.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]));

function swapOperator(node: Node, _parent: Node | null, text: string): Change[] {
  const operator = node.operator as string;
  const other = SWAPPED.get(operator);
  if (other === undefined) return [];
  const at = text.indexOf(operator, (node.left as Node).end);
  // In brackets, so that what stood together stays together: `a && b && c` becomes `(a || b) && c`.
  const changed = `(${text.slice(node.start, at)}${other}${text.slice(at + operator.length, node.end)})`;
  return [replace(node, changed, `${operator} → ${other}`)];
}

function dropNegation(node: Node, _parent: Node | null, text: string): Change[] {
  if (node.operator !== '!') return [];
  return [replace(node, text.slice(node.start + 1, node.end), '! removed')];
}

function swapExtreme(node: Node): Change[] {
  const callee = node.callee as Node;
  if (callee.type !== 'MemberExpression' || (callee.object as Node).name !== 'Math') return [];
  const { name } = callee.property as Node;
  if (name !== 'min' && name !== 'max') return [];
  const other = name === 'min' ? 'max' : 'min';
  return [replace(callee, `Math.${other}`, `Math.${name} → Math.${other}`)];
}

function swapBranches(node: Node, _parent: Node | null, text: string): Change[] {
  const [test, then, otherwise] = [node.test, node.consequent, node.alternate].map((part) => sliceOf(part as Node, text));
  return [replace(node, `((${test}) ? (${otherwise}) : (${then}))`, 'branches swapped')];
}

/** An equality and a negation are turned over by mutants of their own. */
function negateCondition(node: Node, text: string): Change[] {
  const test = node.test as Node;
  if (['===', '!==', '==', '!=', '!'].includes(test.operator as string)) return [];
  return [replace(test, `!(${sliceOf(test, text)})`, 'condition negated')];
}

const EXITS = new Set(['ReturnStatement', 'ContinueStatement', 'BreakStatement']);

/** `if (…) return …;` goes as a whole. */
function dropEarlyExit(node: Node, text: string): Change[] {
  const last = lastStatement(node.consequent as Node);
  if (node.alternate !== null || last === undefined || !EXITS.has(last.type)) return [];
  const word = text.slice(last.start, last.start + last.type.indexOf('Statement'));
  return [{ ...replace(node, '{}', `early ${word} removed`), place: 'statement' }];
}

const lastStatement = (node: Node): Node | undefined => (node.type === 'BlockStatement' ? (node.body as Node[]).at(-1) : node);

/** Not the body of a `while`, which would never end, and not what goes with an early exit as a whole. */
function emptyBlock(node: Node, parent: Node | null): Change[] {
  const isLoop = parent?.type === 'WhileStatement' || parent?.type === 'DoWhileStatement';
  const isExit = parent?.type === 'IfStatement' && parent.alternate === null && EXITS.has(lastStatement(node)?.type ?? '');
  if (isLoop || isExit || (node.body as Node[]).length === 0) return [];
  return [{ ...replace(node, '{}', 'block emptied'), place: 'block' }];
}

function changeLiteral(node: Node, parent: Node | null): Change[] {
  const { value } = node;
  if (isName(node, parent)) return [];
  if (typeof value === 'number') return [replace(node, String(value + 1), `${value} → ${value + 1}`)];
  if (typeof value === 'boolean') return [replace(node, String(!value), `${value} → ${!value}`)];
  if (typeof value === 'string' && value !== '' && isCompared(parent)) return [replace(node, "''", `'${value}' → ''`)];
  return [];
}

/** A key is no value, and neither is what an attribute says in words. */
const isName = (node: Node, parent: Node | null): boolean =>
  parent?.type === 'JSXAttribute' || (parent?.key === node && parent.computed !== true);

const isCompared = (parent: Node | null): boolean =>
  parent?.type === 'SwitchCase' || (parent?.type === 'BinaryExpression' && /^[=!]==?$/.test(parent.operator as string));

const sliceOf = ({ start, end }: Node, text: string): string => text.slice(start, end);

const replace = ({ start, end }: Node, replacement: string, operator: string): Change => ({
  start,
  end,
  replacement,
  operator,
  place: 'expression',
});
