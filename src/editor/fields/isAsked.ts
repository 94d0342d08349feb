import { type FieldPath, findDataSheet, type Plan, type PlanField, placeOf } from '../../plan';

/** Whether a property has a meaning as the plan stands: some wait for what is said beside them. */
export function isAsked(plan: Plan, path: FieldPath): boolean {
  return CONDITIONS[placeOf(path)]?.(plan, path) ?? true;
}

type Condition = (plan: Plan, path: FieldPath) => boolean;

const hasBooster: Condition = ({ machines, sheets }, path) => {
  const machine = machines[Number(path[1])];
  return machine !== undefined && (findDataSheet({ sheets }, machine.sheet)?.booster ?? 0) > 0;
};

const isBoosterApart: Condition = (plan, path) => hasBooster(plan, path) && plan.machines[Number(path[1])]?.hookUp.boosterPlace === 'apart';

/** A plain opening has none of what belongs to a trough. */
const isTrough: Condition = ({ tables }, path) => {
  const fitting = tables[Number(path[1])]?.fittings[Number(path[3])];
  return fitting?.kind === 'scrap' && (fitting.troughDepth ?? 0) > 0;
};

const CONDITIONS: Readonly<Record<string, Condition>> = {
  'machines.hookUp.boosterPlace': hasBooster,
  'machines.hookUp.boosterWay': isBoosterApart,
  'machines.hookUp.boosterBelow': isBoosterApart,
  'machines.hookUp.boosterOffWall': isBoosterApart,
  'tables.fittings.troughSlope': isTrough,
  'tables.fittings.troughCovers': isTrough,
  'tables.fittings.troughInlets': isTrough,
  'things.basins.heater': (plan, path) => plan.things[Number(path[1])]?.basins?.sanitizing === 'hot-water',
} satisfies Partial<Record<PlanField, Condition>>;
