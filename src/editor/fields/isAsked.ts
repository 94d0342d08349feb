import { type FieldPath, findSheet, type Plan } from '../../plan';
import { pattern } from './references';

/** Whether a property has a meaning as the plan stands: some wait for what is said beside them. */
export function isAsked(plan: Plan, path: FieldPath): boolean {
  return CONDITIONS[pattern(path)]?.(plan, path) ?? true;
}

type Condition = (plan: Plan, path: FieldPath) => boolean;

const hasBooster: Condition = ({ machines, sheets }, path) => {
  const machine = machines[Number(path[1])];
  return machine !== undefined && (findSheet({ sheets }, machine.sheet)?.booster ?? 0) > 0;
};

const isBoosterApart: Condition = (plan, path) => hasBooster(plan, path) && plan.machines[Number(path[1])]?.hookUp.boosterPlace === 'apart';

const CONDITIONS: Readonly<Record<string, Condition>> = {
  'machines.hookUp.boosterPlace': hasBooster,
  'machines.hookUp.boosterWay': isBoosterApart,
  'machines.hookUp.boosterBelow': isBoosterApart,
  'machines.hookUp.boosterOffWall': isBoosterApart,
  'things.basins.heater': (plan, path) => plan.things[Number(path[1])]?.basins?.sanitizing === 'hot-water',
};
