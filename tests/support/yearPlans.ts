import type { DataSheet } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { fromSI, toSI } from '../../src/units';
import { cycleOf, sheetPlan, versionOf } from './figurePlans';

/** 80 racks a day on 364 days, 29,120 racks. */
const DEMAND: Partial<Plan['demand']> = { mealsPerDay: 200, piecesPerMeal: 8, piecesPerRack: 20, hoursPerDay: 10, daysPerYear: 364 };

/**
 * A machine without a tank that takes so many gallons a rack. All-electric: from 70 °F to 140 °F in the building, from there
 * to 180 °F in its booster of 9 kW; beside the booster its 10 kW leave 1 kW for pumps, which run 50 s of each cycle.
 */
export const yearPlan = (gallons: number, sheet: Partial<DataSheet> = {}, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan(
    {
      rinseWaterL: fromSI(toSI(gallons, 'gal'), 'L'),
      tank: null,
      idle: null,
      booster: 9000,
      cycle: cycleOf(50, 5),
      temperatures: { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(140, 'F') },
      electrical: versionOf(10, 208, 3, 27.8),
      ...sheet,
    },
    (plan) => {
      Object.assign(plan.demand, DEMAND);
      Object.assign(plan.supply, { hotWaterC: toSI(140, 'F'), coldWaterC: toSI(70, 'F') });
      Object.assign(plan.tariff, { electricity: 0.15, gas: 0.05, water: 3, waterHeatedBy: 'electricity', heaterEfficiency: 0.98 });
      change(plan);
    },
  );

/** 37,565 gal a year in 29,120 racks: the conventional machine. */
export const CONVENTIONAL = 37_565 / 29_120;
