import type { Plan } from '../../src/plan';
import { cycleOf, sheetPlan } from './figurePlans';

/**
 * A rush of 90 racks an hour for an hour, then 20 an hour for three, at a machine that washes 60 an hour: 55 s and 5 s to change racks
 *. It sanitises with chemicals, so that no booster holds it up.
 */
export const rushPlan = (change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ sanitizing: 'chemical', booster: null, cycle: cycleOf(55, 5) }, (plan) => {
    Object.assign(plan.demand, { mealsPerDay: 500, peakMeals: 300, peakMinutes: 60, piecesPerMeal: 6, piecesPerRack: 20, hoursPerDay: 4 });
    change(plan);
  });

/** Puts a cart for soiled ware into a plan, where its first thing stands. */
export function addCart({ things }: Plan, cart: Partial<Plan['things'][number]>): void {
  const [first] = things;
  if (first !== undefined) things.push({ ...first, id: 'cart', kind: 'cart', ware: 'soiled', ...cart });
}
