import { describe, expect, test } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { nominalSize } from '../../src/topics/drain';
import { gaugeOf, WIRE_SIZES } from '../../src/topics/power';
import { CHECKS } from '../../src/topics/registry';
import { hookUp } from '../support/hookUpPlans';
import { linePlan } from '../support/linePlan';
import { valueOf } from '../support/valueOf';

// Trade facts of drain and power. All of them are common practice: there is no published source.

const INCH = 0.0254;

describe('drain pipe is named by about its inside diameter', () => {
  test.each([
    [1.96, 2],
    [2.067, 2],
    [2.96, 3],
    [3.068, 3],
    [3.94, 4],
    [4.026, 4],
    [6.065, 6],
  ])('%d in inside is %d in', (bore, size) => expect(valueOf(nominalSize({ boreM: bore * INCH })) / INCH).toBeCloseTo(size, 9));
});

test('copper wire is the thinner the higher its number, and 1/0 is followed by 2/0', () => {
  const gauges = WIRE_SIZES.map(gaugeOf);
  expect(gauges).toEqual([...gauges].sort((a, b) => b - a));
  expect(gauges.slice(-4)).toEqual([0, -1, -2, -3]);
});

describe('the 120 V signals of a machine carry the coil of a contactor, never a motor', () => {
  test.each(FAMILIES.map(({ id }) => id))('%s', (family) => {
    const plan = linePlan({ family }, (draft) => hookUp(draft, { ventSignal: 'motor', rinseAidSignal: 'motor', detergentSignal: 'motor' }));
    const found = runChecks(deriveScene(plan), CHECKS).filter(({ check }) => check === 'signals-drive-contactors');
    expect(found.map(({ part, verdict }) => `${verdict} ${part}`)).toEqual(['stop vent', 'stop rinse-aid', 'stop detergent']);
  });
});
