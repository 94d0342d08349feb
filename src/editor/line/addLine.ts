import type { DataSheet } from '../../catalog';
import type { Point } from '../../geometry';
import {
  createId,
  createLinePlan,
  findDataSheet,
  type LineConfiguration,
  type LineHand,
  type Plan,
  type Recipe,
  UNKNOWN_DUCT,
  UNKNOWN_HOOK_UP,
  UNKNOWN_MAKE,
} from '../../plan';
import { type CommandResult, carryOut, refusal } from './commandResult';

export interface LineOptions {
  readonly sheet: DataSheet;
  readonly configuration: LineConfiguration;
  readonly hand: LineHand;
  /** Centre of the machine. */
  readonly at: Point;
  readonly rotationDeg?: number;
}

export interface AddLineOptions extends Omit<LineOptions, 'sheet'> {
  /** Data sheet: one of the plan's own, or a family. */
  readonly sheet: string;
}

/** Adds a whole line: machine, both tables with their stations, hood or run as the family needs. */
export function addLine(plan: Plan, options: AddLineOptions): CommandResult {
  const sheet = findDataSheet(plan, options.sheet);
  if (sheet === undefined) return refusal(`There is no data sheet “${options.sheet}”.`);
  return carryOut(plan, 'Add line', lineRecipe({ ...options, sheet }), [createId(plan, 'machine')]);
}

/** The line of a whole line plan, put among what is there with ids of its own. Its room, its shelving and its services stay behind. */
export function lineRecipe({ sheet, ...options }: LineOptions): Recipe {
  const line = createLinePlan({ ...options, family: sheet });
  return (draft) => {
    const machine = createId(draft, 'machine');
    draft.machines.push(...line.machines.map((item) => ({ ...item, id: machine, hookUp: UNKNOWN_HOOK_UP })));
    for (const table of line.tables) {
      const place = table.place.kind === 'joined' ? { ...table.place, machine } : table.place;
      draft.tables.push({ ...table, id: createId(draft, table.id), place, make: UNKNOWN_MAKE, fittings: [] });
      for (const fitting of table.fittings) draft.tables.at(-1)?.fittings.push({ ...fitting, id: createId(draft, fitting.id) });
    }
    for (const hood of line.hoods) draft.hoods.push({ ...hood, id: createId(draft, 'hood'), exhaust: null, cavityAir: null });
    for (const run of line.runs) draft.runs.push({ ...run, id: createId(draft, 'run'), machine, duct: UNKNOWN_DUCT });
  };
}
