import { inches } from '../lengths';
import { type Limit, limit } from '../limit';

/** Least nominal size of a branch that lies under ground and takes a floor drain or a stack of sinks. */
export const UNDERGROUND_BRANCH_SIZE: Limit = limit(
  'underground-branch-size',
  'Size of an underground branch from a floor drain',
  'm',
  { min: inches(2) },
  { text: 'Chicago plumbing code, 0-0-0-2692176 (W-DP2)', confidence: 'read' },
);
