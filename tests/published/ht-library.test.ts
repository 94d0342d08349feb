import { test } from 'vitest';
import { INSULATIONS } from '../../src/topics/air';
import { expectNear } from '../support/expectNear';

// Open library `ht` (MIT).

// source: ht library, insulation.py, conductivities · read · exact
test.each([
  ['mineral-fiber', 0.036],
  ['glass-fiber-board', 0.036],
  ['cellular-glass', 0.048],
  ['elastomeric-foam', 0.05],
])('%s: %d W/(m·K)', (id, printed) => expectNear(INSULATIONS.find((one) => one.id === id)?.conductivityWmK ?? 0, printed, 0));
