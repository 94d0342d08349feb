import { check } from '../../src/services/rules/peak-kept';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { linePlan } from '../support/linePlan';

/** 43 s wash, 11 s rinse, 3 s dwell and 5 s to change racks: 3600 / 62 = 58.06 racks an hour. */
const RATE = 3600 / 62;
const found = (verdict: ExpectedFinding['verdict'], needed: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured: RATE,
  limit: needed,
});
const peak = (meals: number) =>
  linePlan({}, ({ demand }) => Object.assign(demand, { peakMeals: meals, peakMinutes: 60, piecesPerMeal: 6, piecesPerRack: 20 }));

describeCheck(check, [
  {
    name: '90 meals in an hour, 27 racks',
    plan: peak(90),
    expect: [{ ...found('clear', 27), says: 'In the peak 27 racks an hour come back; the machine does 58.1, enough also at 0.70 of it.' }],
  },
  { name: '135 meals, 40.5 racks of the 40.6 that 0.70 keeps', plan: peak(135), expect: [found('clear', 40.5)] },
  { name: '136 meals: more than 0.70 of the rate', plan: peak(136), expect: [found('watch', 40.8)] },
  { name: '193 meals: the rate itself', plan: peak(193), expect: [found('watch', 57.9)] },
  { name: '194 meals: more than the machine does', plan: peak(194), expect: [found('stop', 58.2)] },
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
