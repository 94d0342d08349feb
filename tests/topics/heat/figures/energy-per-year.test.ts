import { describe, expect, it } from 'vitest';
import { rule } from '../../../../src/topics/heat/figures/energy-per-year';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { CONVENTIONAL, yearPlan } from '../../../support/yearPlans';

const subjects = ['machine'];
const kWh = (value: number) => toSI(value, 'kWh');

/** 10,294 kWh for 37,565 gal by 110 °F with 8.33 lb and 3412 Btu: 70 °F of it in the building, 40 °F in the booster. */
const HEAT = 10_294;
const BUILDING = (HEAT * 70) / 110;
const BOOSTER = (HEAT * 40) / 110;
/** 1 kW of pumps for 50 s in each of 29,120 cycles. */
const PUMPS = (29_120 * 50) / 3600;

describeFigure(rule, [
  {
    name: 'the conventional machine',
    plan: yearPlan(CONVENTIONAL),
    expect: [
      { part: 'machine', subjects, value: kWh(BOOSTER + PUMPS), within: kWh(1), notes: 'without a tank' },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1), notes: 'pipes lose' },
    ],
  },
  {
    // 2 kW of its 13 are the heater of the tank, which starts at 140 °F and stands ready at 1 kW: 3640 h less 29,120 · 55 s.
    name: 'and a tank of 30 L at 150 °F, filled on 364 days',
    plan: yearPlan(CONVENTIONAL, {
      tank: { volume: 0.03, heater: 2000 },
      electrical: [{ id: 'only', voltage: 208, phase: 3, powerKw: 12, currentA: 33 }],
    }),
    expect: [
      {
        part: 'machine',
        subjects,
        value: kWh(BOOSTER + PUMPS + (10_920 / 3.785411784) * 10 * (8.33 / (0.98 * 3412)) + 3640 - (29_120 * 55) / 3600),
        within: kWh(1),
        notes: 'ENERGY STAR 1.0',
      },
      { part: 'water-heater', subjects, value: kWh(BUILDING * (1 + 10_920 / 3.785411784 / 37_565)), within: kWh(1) },
    ],
  },
  {
    // 0.5 kW for the hours of 3640 in which none of 29,120 cycles of 55 s runs.
    name: 'idle at 500 W as the data sheet states',
    plan: yearPlan(CONVENTIONAL, { idle: 500 }),
    expect: [
      {
        part: 'machine',
        subjects,
        value: kWh(BOOSTER + PUMPS + 0.5 * (3640 - (29_120 * 55) / 3600)),
        within: kWh(1),
        notes: 'idle power of the data sheet',
      },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1) },
    ],
  },
  {
    // The 10 kW of the machine are without it: pumps take them all.
    name: 'a booster that stands apart',
    plan: yearPlan(CONVENTIONAL, {}, ({ machines }) => {
      for (const { hookUp } of machines) hookUp.boosterPlace = 'apart';
    }),
    expect: [
      { part: 'machine', subjects, value: kWh(BOOSTER + 10 * PUMPS), within: kWh(1), notes: 'turned off at night' },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1) },
    ],
  },
  {
    name: 'chemicals: no booster',
    plan: yearPlan(CONVENTIONAL, { sanitizing: 'chemical', booster: null }),
    expect: [
      { part: 'machine', subjects, value: kWh(10 * PUMPS), within: kWh(1) },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1) },
    ],
  },
  {
    name: 'hours a day are not known',
    plan: yearPlan(CONVENTIONAL, {}, ({ demand }) => void (demand.hoursPerDay = null)),
    expect: [
      { part: 'machine', subjects, value: null, asks: 'demand.hoursPerDay' },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1) },
    ],
  },
  {
    name: 'the efficiency of the heater is not known',
    plan: yearPlan(CONVENTIONAL, {}, ({ tariff }) => void (tariff.heaterEfficiency = null)),
    expect: [
      { part: 'machine', subjects, value: kWh(BOOSTER + PUMPS), within: kWh(1) },
      { part: 'water-heater', subjects, value: null, asks: 'tariff.heaterEfficiency' },
    ],
  },
  {
    name: 'the booster is not known',
    plan: yearPlan(CONVENTIONAL, { booster: null }),
    expect: [
      { part: 'machine', subjects, value: null, asks: 'sheets.0.booster' },
      { part: 'water-heater', subjects, value: kWh(BUILDING), within: kWh(1) },
    ],
  },
]);

describe('a cold-fed machine', () => {
  const readings = figuresOf(rule, linePlan({ family: 'heat-recovery' }));
  it('takes nothing from the building’s heater', () => expect(readings.map(({ part }) => part)).toEqual(['machine']));
});
