import { describe, expect, it } from 'vitest';
import type { DataSheet } from '../../../../src/catalog';
import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/first-heat-up';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { sheetPlan, versionOf } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const temperatures = { washC: toSI(120, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(60, 'F') };

/** A tank of 93 gal by 60 °F with 13.9 kW, and 31 gal by 120 °F with the same: an hour, and two thirds of it (by form EHD 16-01). */
const coldPlan = (powerKw: number, sheet: Partial<DataSheet> = {}, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan(
    {
      temperatures,
      tank: { volume: toSI(93, 'gal'), heater: 13_900 },
      booster: 13_900,
      rinseWaterL: 1000 * toSI(31, 'gal'),
      electrical: versionOf(powerKw, 480, 3, 40),
      ...sheet,
    },
    (plan) => {
      plan.supply.hotWaterC = toSI(60, 'F');
      change(plan);
    },
  );

describeFigure(rule, [
  { name: 'both at once', plan: coldPlan(30), expect: [{ subjects, value: 3600, within: 13, notes: 'at once' }] },
  { name: 'in turn, where the power is too small for both', plan: coldPlan(20), expect: [{ subjects, value: 6000, within: 22 }] },
  {
    name: 'both at once, as the booster stands apart with a circuit of its own',
    plan: coldPlan(20, {}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.hookUp.boosterPlace = 'apart';
    }),
    expect: [{ subjects, value: 3600, within: 13, notes: 'stands apart' }],
  },
  { name: 'no tank: the booster alone', plan: coldPlan(30, { tank: null }), expect: [{ subjects, value: 2400, within: 9 }] },
  {
    name: 'the booster is not known',
    plan: coldPlan(30, { booster: null }),
    expect: [{ subjects, value: null, asks: 'sheets.0.booster' }],
  },
  {
    name: 'the electrical version is not known',
    plan: coldPlan(30, {}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ subjects, value: null, asks: 'machines.0.electrical' }],
  },
  {
    name: 'the water is not known',
    plan: coldPlan(30, {}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.hotWaterC' }],
  },
  { name: 'chemicals', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
]);

describe('trade fact, common practice', () => {
  const timeOf = (family: string) => figuresOf(rule, linePlan({ family }))[0]?.value ?? Number.NaN;
  it('a cold-fed machine takes longer from cold than one that is fed hot', () =>
    expect(timeOf('heat-recovery')).toBeGreaterThan(3 * timeOf('recirculating-hot-water')));
});
