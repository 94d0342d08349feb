/**
 * Remembers what a pure function answered, by the identity of its arguments. Arguments that are
 * objects are held weakly, so answers go when the plan that they came from goes; put them first,
 * and words or numbers after them.
 */
export function memoizeByIdentity<A extends readonly unknown[], R>(derive: (...args: A) => R): (...args: A) => R {
  const root = createNode<R>();
  return (...args) => {
    let node = root;
    for (const arg of args) node = stepTo(node, arg);
    node.answer ??= { value: derive(...args) };
    return node.answer.value;
  };
}

/**
 * Gives lists with the same members the same identity, so that a stage which takes a list is not
 * derived again when the list was only rebuilt.
 */
export function createListKeeper<T extends object>(): (items: readonly T[]) => readonly T[] {
  const keep = memoizeByIdentity((...items: T[]): readonly T[] => items);
  return (items) => keep(...items);
}

interface Node<R> {
  objects: WeakMap<object, Node<R>>;
  others: Map<unknown, Node<R>>;
  answer: { value: R } | null;
}

const createNode = <R>(): Node<R> => ({ objects: new WeakMap(), others: new Map(), answer: null });

function stepTo<R>(node: Node<R>, arg: unknown): Node<R> {
  const isObject = typeof arg === 'object' && arg !== null;
  const next = isObject ? node.objects.get(arg) : node.others.get(arg);
  if (next !== undefined) return next;
  const made = createNode<R>();
  if (isObject) node.objects.set(arg, made);
  else node.others.set(arg, made);
  return made;
}
