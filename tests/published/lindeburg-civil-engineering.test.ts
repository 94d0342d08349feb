import { test } from 'vitest';
import { colebrook, haaland, swameeJain } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';

const flow = { reynolds: 4e5, relativeRoughness: 0.004 };

// source: Lindeburg Civil Engineering Reference Manual, 12th ed., example 17.2, as worked in an open package · read · 0.0001
test.each([
  ['Colebrook', colebrook(flow), 0.0287],
  ['Swamee and Jain', swameeJain(flow), 0.0288],
])('%s', (_name, computed, printed) => expectNear(computed, printed, 1e-4));

// source: Lindeburg Civil Engineering Reference Manual, 12th ed., example 17.2, chart reading 0.028 · read · 3 %
test('the chart', () => expectNear(colebrook(flow), 0.028, '3 %'));

// regression: the same by Haaland · computed · 1e-6
test('Haaland', () => expectNear(haaland(flow), 0.028724, 1e-6));
