import { type Entries, inches, type Limit, limit } from '../../../rules';

/** Least nominal size of a branch that lies under ground and takes a floor drain or a stack of sinks. */
export const UNDERGROUND_BRANCH_SIZE: Limit = limit(
  'underground-branch-size',
  'Size of an underground branch from a floor drain',
  'm',
  { min: inches(2) },
  { text: 'Chicago plumbing code, 0-0-0-2692176', documents: ['chicago-plumbing'], confidence: 'read' },
);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 530, limits: [UNDERGROUND_BRANCH_SIZE] }];
