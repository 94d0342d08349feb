import { test } from 'vitest';
import { airHeat, STANDARD_DENSITY, vapourFlow } from '../../src/topics/air';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

/** Btu/h that a cfm of standard air brings by a °F, by so much vapour to its dry air, by a Btu/lb. */
const perDegree = fromSI(toSI(1, 'cfm') * airHeat({ densityKgM3: STANDARD_DENSITY, humidityRatio: 0 }) * toSI(1, 'deltaF'), 'Btu/h');
const dryAirKgS = toSI(1, 'cfm') * STANDARD_DENSITY;
const perRatio = (ratio: number) =>
  (dryAirKgS * ratio) / valueOf(vapourFlow({ latentW: toSI(1, 'Btu/h'), vapourJkg: toSI(1076, 'Btu/lb') }));

// source: Standard-air constants, citing ASHRAE Fundamentals 2021, 16.12 · read · 0.5 %
test.each([
  ['1.08 to a °F', perDegree, 1.08],
  ['4840 to a W', perRatio(1), 4840],
  ['4.5 to a Btu/lb', fromSI(dryAirKgS * toSI(1, 'Btu/lb'), 'Btu/h'), 4.5],
])('%s', (_name, computed, printed) => expectNear(computed, printed, '0.5 %'));

// source: Standard-air constants, 0.68 to a grain, two figures · read · 2 %
test('0.68 to a grain', () => expectNear(perRatio(1 / 7000), 0.68, '2 %'));
