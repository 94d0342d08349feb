import { test } from 'vitest';
import { bellmouthEntry, wallEntry } from '../../src/engineering';
import { expectNear } from '../support/expectNear';

// source: A-X6 · Idelchik 3-1, thin edge, as in Principles of HVAC, 9th ed. supplement · secondary · exact
test.each([
  [0, 0.5],
  [0.002, 0.57],
  [0.01, 0.68],
  [0.05, 0.8],
  [0.2, 0.92],
  [0.5, 1],
])('through a wall, L/D %d: %d', (projectionRatio, printed) => expectNear(wallEntry({ projectionRatio }), printed, 1e-12));

// source: A-X7 · Idelchik bellmouth without an end wall, as in Principles of HVAC, 9th ed. supplement · secondary · exact
test.each([
  [0, 1],
  [0.05, 0.4],
  [0.1, 0.15],
  [0.2, 0.03],
])('rounded, r/D %d: %d', (radiusRatio, printed) => expectNear(bellmouthEntry({ radiusRatio }), printed, 1e-12));
