import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/capacity/checks/peak-kept';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

/** 43 s wash, 11 s rinse, 3 s dwell and 5 s to change racks: 3600 / 62 = 58.06 racks an hour. */
const RATE = 3600 / 62;
const found = (verdict: ExpectedFinding['verdict'], needed: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured: RATE,
  limit: needed,
});
const peak = (meals: number, more: Partial<Plan['demand']> = {}, sheet?: Parameters<typeof ownDataSheet>[0]) =>
  linePlan(sheet === undefined ? {} : { family: ownDataSheet(sheet) }, ({ demand }) =>
    Object.assign(demand, { peakMeals: meals, peakMinutes: 60, piecesPerMeal: 6, piecesPerRack: 20, ...more }),
  );

describeCheck(check, [
  {
    name: '90 meals in an hour, 27 racks',
    plan: peak(90),
    expect: [{ ...found('clear', 27), says: 'In the peak 27 racks an hour come back; the machine does 58.1, enough also at 0.70 of it.' }],
  },
  {
    name: '90 meals, but how strong the booster is nobody has said: it may wait longer than is counted',
    plan: peak(90, {}, { booster: null }),
    expect: [{ ...found('ask', 27), measured: null, asks: 'sheets.0.booster' }],
  },
  {
    name: '280 meals are too many, however strong the booster is',
    plan: peak(280, {}, { booster: null }),
    expect: [found('stop', 84)],
  },
  { name: '135 meals, 40.5 racks of the 40.6 that 0.70 keeps', plan: peak(135), expect: [found('clear', 40.5)] },
  { name: '136 meals: more than 0.70 of the rate', plan: peak(136), expect: [found('watch', 40.8)] },
  { name: '193 meals: the rate itself', plan: peak(193), expect: [found('watch', 57.9)] },
  {
    // 0.135 racks wait, and 2 h 51 min are left for the 300 − 194 meals: 9.6 racks an hour.
    name: '194 meals: more than the machine does, but what waits finds room',
    plan: peak(194),
    expect: [
      {
        ...found('watch', 58.2),
        says: 'In the peak 58.2 racks an hour come back and the machine does 58.1; what waits finds room, and is washed 10 s after the peak. A faster machine would leave nothing to wait.',
      },
    ],
  },
  {
    name: '280 meals: 26 racks wait, and find no room',
    plan: peak(280),
    expect: [
      {
        ...found('stop', 84),
        says: 'In the peak 84 racks an hour come back and the machine does 58.1: take a faster machine, a second one, or a longer peak.',
      },
    ],
  },
  {
    name: 'what waits finds room, but nobody knows how long the machine is on',
    plan: peak(194, { hoursPerDay: null }),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'demand.hoursPerDay' }],
  },
  {
    name: 'what waits finds room, but as many racks come after the peak',
    plan: peak(194, { mealsPerDay: 900 }),
    expect: [found('stop', 58.2)],
  },
  {
    // 3600/100 = 36 racks an hour by hand, 58.06 by machine, three places between them: 1 − 1/Σ 0.62ⁿ, n to 5, of 58.06.
    name: 'a person who takes 100 s to scrap a rack',
    plan: peak(130, { scrapSeconds: 100 }),
    expect: [
      {
        ...found('clear', 39),
        says: 'In the peak 39 racks an hour come back; the machine does 58.1, enough also at 0.70 of it. One person who scraps before it may let no more than 34.7 through: have a second one in the peak, or a longer landing.',
      },
    ],
  },
  {
    name: 'the meals are not known',
    plan: linePlan({}, ({ demand }) => void (demand.peakMeals = null)),
    expect: [
      {
        verdict: 'ask',
        subjects: ['machine'],
        measured: null,
        asks: 'demand.peakMeals',
        says: 'To know whether the machines keep up with the peak, say the meals in the peak.',
      },
    ],
  },
  {
    name: 'the supply is not known, on which the wait for the booster depends',
    plan: linePlan({}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'supply.hotWaterC' }],
  },
]);
