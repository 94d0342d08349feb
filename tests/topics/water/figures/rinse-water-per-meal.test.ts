import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/rinse-water-per-meal';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { DEMAND, sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];
const demandPlan = (change: Partial<Plan['demand']>): Plan =>
  sheetPlan({ rinseWaterL: fromSI(toSI(0.75, 'gal'), 'L') }, (plan) => void Object.assign(plan.demand, DEMAND, change));

describeFigure(rule, [
  {
    name: '6 of 20 pieces of a rack at 0.75 gal: 0.225 gal',
    plan: demandPlan({}),
    expect: [{ subjects, value: toSI(0.225, 'gal'), notes: 'Rinse water alone' }],
  },
  {
    name: 'pieces a meal are not known',
    plan: demandPlan({ piecesPerMeal: null }),
    expect: [{ subjects, value: null, asks: 'demand.piecesPerMeal' }],
  },
  {
    name: 'pieces a rack are not known',
    plan: demandPlan({ piecesPerRack: null }),
    expect: [{ subjects, value: null, asks: 'demand.piecesPerRack' }],
  },
  { name: 'meals a day are not needed', plan: demandPlan({ mealsPerDay: null }), expect: [{ subjects, value: toSI(0.225, 'gal') }] },
]);
