import { test } from 'vitest';
import { DUCT_ROUGHNESS } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';

const find = (id: string) => DUCT_ROUGHNESS.find((one) => one.id === id);

// source: Griggs 1987 duct roughness, public table, in feet · read · exact
test.each([
  ['galvanized', 0.0003, 0.00016, 0.00032],
  ['galvanized-spiral', 0.0004, 0.0002, 0.0004],
  ['galvanized-old-chart', 0.0005, 0.0005, 0.0005],
  ['galvanized-rectangular', 0.0005, 0.00027, 0.0005],
  ['aluminum', 0.0002, 0.00012, 0.0002],
  ['commercial-steel', 0.00015, 0.00015, 0.00015],
  ['pvc', 0.00015, 0.00003, 0.00015],
  ['flexible', 0.003, 0.0003, 0.003],
])('%s', (id, value, low, high) => {
  const row = find(id);
  expectNear((row?.roughnessM ?? 0) / 0.3048, value, 1e-12);
  expectNear((row?.lowM ?? 0) / 0.3048, low, 1e-12);
  expectNear((row?.highM ?? 0) / 0.3048, high, 1e-12);
});
