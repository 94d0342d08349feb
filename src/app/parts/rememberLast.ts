/** A pure function that keeps its last answer and gives it again for the same arguments (by identity). */
export function rememberLast<A extends readonly unknown[], R>(compute: (...args: A) => R): (...args: A) => R {
  let last: { args: A; result: R } | null = null;
  return (...args) => {
    if (!last?.args.every((arg, i) => Object.is(arg, args[i]))) last = { args, result: compute(...args) };
    return last.result;
  };
}
