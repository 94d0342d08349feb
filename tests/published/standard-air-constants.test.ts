import { test } from 'vitest';
import { latentHeat, STANDARD_DENSITY, sensibleHeat, totalHeat } from '../../src/engineering';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const cfm = { airflowM3s: toSI(1, 'cfm'), densityKgM3: STANDARD_DENSITY };
const vapourJkg = toSI(1076, 'Btu/lb');
const imperial = (outcome: Parameters<typeof valueOf<number>>[0]) => fromSI(valueOf(outcome), 'Btu/h');

// source: A-T1 · Standard-air constants, citing ASHRAE Fundamentals 2021, 16.12 · read · 0.5 %
test.each([
  ['1.08 to a °F', imperial(sensibleHeat({ ...cfm, differenceK: toSI(1, 'deltaF'), humidityRatio: 0 })), 1.08],
  ['4840 to a W', imperial(latentHeat({ ...cfm, ratioDifference: 1, vapourJkg })), 4840],
  ['4.5 to a Btu/lb', imperial(totalHeat({ ...cfm, enthalpyDifferenceJkg: toSI(1, 'Btu/lb') })), 4.5],
])('%s', (_name, computed, printed) => expectNear(computed, printed, '0.5 %'));

// source: A-T1 · Standard-air constants, 0.68 to a grain, two figures · read · 2 %
test('0.68 to a grain', () => expectNear(imperial(latentHeat({ ...cfm, ratioDifference: 1 / 7000, vapourJkg })), 0.68, '2 %'));
