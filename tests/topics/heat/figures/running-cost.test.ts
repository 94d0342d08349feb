import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/running-cost';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { CONVENTIONAL, yearPlan } from '../../../support/yearPlans';

const subjects = ['machine'];
/** Water of the printed year, heat of it with 8.33 lb and 3412 Btu, and pumps of 1 kW for 50 s a rack. */
const WATER = 3 * toSI(37_565, 'gal');
const BUILDING = (10_294 * 70) / 110;
const MACHINE = (10_294 * 40) / 110 + (29_120 * 50) / 3600;

const costs = (year: number) => [
  { part: 'year', subjects, value: year, within: 0.5, notes: 'In $.' },
  { part: 'hundred-racks', subjects, value: year / 291.2, within: 0.5 / 291.2 },
];
const asks = (path: string) => ['year', 'hundred-racks'].map((part) => ({ part, subjects, value: null, asks: path }));
const without = (change: (plan: Plan) => void) => yearPlan(CONVENTIONAL, {}, change);

describeFigure(rule, [
  { name: 'all by electricity', plan: yearPlan(CONVENTIONAL), expect: costs(WATER + 0.15 * (MACHINE + BUILDING)) },
  {
    name: 'hot water by gas',
    plan: without(({ tariff }) => void (tariff.waterHeatedBy = 'gas')),
    expect: costs(WATER + 0.15 * MACHINE + 0.05 * BUILDING),
  },
  { name: 'no price of water', plan: without(({ tariff }) => void (tariff.water = null)), expect: asks('tariff.water') },
  { name: 'no price of electricity', plan: without(({ tariff }) => void (tariff.electricity = null)), expect: asks('tariff.electricity') },
  { name: 'heated by what', plan: without(({ tariff }) => void (tariff.waterHeatedBy = null)), expect: asks('tariff.waterHeatedBy') },
  {
    name: 'no price of gas',
    plan: without(({ tariff }) => void Object.assign(tariff, { waterHeatedBy: 'gas', gas: null })),
    expect: asks('tariff.gas'),
  },
  { name: 'no days', plan: without(({ demand }) => void (demand.daysPerYear = null)), expect: asks('demand.daysPerYear') },
  {
    name: 'no rack in the year',
    plan: without(({ demand }) => void (demand.mealsPerDay = 0)),
    expect: [
      { part: 'year', subjects, value: 0 },
      { part: 'hundred-racks', subjects, value: null, refuses: 'no rack' },
    ],
  },
]);

describe('the cost of a year', () => {
  const costOf = (change: (plan: Plan) => void) => figuresOf(rule, without(change))[0]?.value ?? Number.NaN;
  const base = costOf(() => {});
  it.each(['water', 'electricity'] as const)('grows with the price of %s', (price) =>
    expect(costOf(({ tariff }) => void (tariff[price] = 2 * (tariff[price] ?? 0)))).toBeGreaterThan(base),
  );
  it('grows with colder water and with a worse heater', () => {
    expect(costOf(({ supply }) => void (supply.coldWaterC = 5))).toBeGreaterThan(base);
    expect(costOf(({ tariff }) => void (tariff.heaterEfficiency = 0.7))).toBeGreaterThan(base);
  });
});
