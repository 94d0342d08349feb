import { afterEach } from 'vitest';

declare module 'vitest' {
  interface TaskMeta {
    reachedMutants?: number[];
  }
}

declare global {
  var reachedMutants: Set<number> | undefined;
}

/** Marks of `markReached` that this test file ran, from the loading of its first module on. */
const reached = new Set<number>();
globalThis.reachedMutants = reached;

afterEach(({ task }) => {
  task.file.meta.reachedMutants = [...reached];
});
