import { type Check, inOrder } from '../../rules';

/** Every check there is: each file of a topic's folder of checks. */
export const CHECKS: readonly Check[] = inOrder(
  Object.values(import.meta.glob<Check>('../*/checks/*.ts', { eager: true, import: 'check' })),
);
