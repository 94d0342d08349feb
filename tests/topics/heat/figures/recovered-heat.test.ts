import { describe, expect, it } from 'vitest';
import { rule } from '../../../../src/topics/heat/figures/recovered-heat';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { linePlan, recoverySheet } from '../../../support/linePlan';

const subjects = ['machine'];
const temperatures = { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(40, 'F') };
/** 1 gal a rack, from 60 °F to 180 °F: 8.33 lb by 120 °F are 999.6 Btu, as form EHD 16-01 counts them. */
const recoveryPlan = (share: number | null, coldF: number | null = 60) =>
  linePlan(
    { family: recoverySheet(share, { temperatures, rinseWaterL: toSI(1, 'gal') * 1000 }) },
    ({ supply }) => void (supply.coldWaterC = coldF === null ? null : toSI(coldF, 'F')),
  );

describeFigure(rule, [
  {
    name: 'half of 999.6 Btu',
    plan: recoveryPlan(0.5),
    expect: [{ subjects, value: toSI(499.8, 'Btu'), within: 1, notes: 'Only with cold water in' }],
  },
  { name: 'nothing', plan: recoveryPlan(0), expect: [{ subjects, value: 0 }] },
  { name: 'the share is not known', plan: recoveryPlan(null), expect: [{ subjects, value: null, asks: 'sheets.0.vent.recovered' }] },
  { name: 'the cold water is not known', plan: recoveryPlan(0.5, null), expect: [{ subjects, value: null, asks: 'supply.coldWaterC' }] },
  { name: 'a machine under a hood', plan: linePlan(), expect: [] },
]);

describe('heat won back', () => {
  const heat = (share: number, coldF: number) => figuresOf(rule, recoveryPlan(share, coldF))[0]?.value ?? Number.NaN;
  it('is more with a larger share, less with warmer water', () => {
    expect(heat(0.6, 50)).toBeGreaterThan(heat(0.4, 50));
    expect(heat(0.4, 70)).toBeLessThan(heat(0.4, 50));
  });
});
