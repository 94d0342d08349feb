/**
 * Remembers what a pure function answered, by the identity of its arguments. Arguments that are
 * objects are held weakly, so answers go when the plan that they came from goes; put them first,
 * and words or numbers after them.
 */
export function memoizeByIdentity<A extends readonly unknown[], R>(derive: (...args: A) => R): (...args: A) => R {
  const root: Node<R> = {};
  return (...args) => {
    let node = root;
    for (const arg of args) node = stepTo(node, arg);
    node.answer ??= { value: derive(...args) };
    return node.answer.value;
  };
}

/**
 * Gives a list that was only rebuilt the identity of the earlier one with the same members, so that
 * stages which take a list are not derived again. Remembers the last few lists.
 */
export function createListKeeper<T>(): (items: T[]) => T[] {
  let lately: T[][] = [];
  return (items) => {
    const kept = lately.find((list) => hasSameMembers(list, items)) ?? items;
    if (lately[0] !== kept) lately = [kept, ...lately.filter((list) => list !== kept)].slice(0, KEPT_LISTS);
    return kept;
  };
}

/** Enough for every machine of a plan, and of its preview while something is dragged. */
const KEPT_LISTS = 64;

function hasSameMembers<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, i) => item === b[i]);
}

interface Node<R> {
  objects?: WeakMap<object, Node<R>>;
  others?: Map<unknown, Node<R>>;
  answer?: { value: R };
}

function stepTo<R>(node: Node<R>, arg: unknown): Node<R> {
  if (typeof arg === 'object' && arg !== null) {
    node.objects ??= new WeakMap();
    return findOrMake(node.objects, arg);
  }
  node.others ??= new Map();
  return findOrMake(node.others, arg);
}

function findOrMake<K, R>(nodes: { get: (key: K) => Node<R> | undefined; set: (key: K, node: Node<R>) => unknown }, key: K): Node<R> {
  const found = nodes.get(key);
  if (found !== undefined) return found;
  const made: Node<R> = {};
  nodes.set(key, made);
  return made;
}
