import { test } from 'vitest';
import { scaleFanCurve } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';

const [slower] = scaleFanCurve([{ airflowM3s: 40, pressurePa: 126 }], { speedRatio: 1700 / 3500, densityRatio: 1 });

// The laws are ratios: feet of water stand in as they are printed.
// source: Flow of Fluids TP-410, problem 7.33, 400 gpm, 126 ft, 3500 to 1700 rpm · read · 1e-4
test.each([
  ['flow', slower?.airflowM3s ?? 0, 19.42857],
  ['head', slower?.pressurePa ?? 0, 29.7257],
])('affinity: %s', (_name, computed, printed) => expectNear(computed, printed, 1e-4));
