import type { Plan } from '../planSchema';

/** What an id can name. */
export const ITEM_KINDS = [
  'corner',
  'opening',
  'column',
  'floor-drain',
  'stub',
  'machine',
  'table',
  'fitting',
  'thing',
  'hood',
  'run',
  'sheet',
] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

export interface FoundItem {
  kind: ItemKind;
  /** From the root of the document to the item. */
  path: (string | number)[];
}

/** What an id names in a plan and where it stands; null when nothing bears it. */
export function findItem(plan: Plan, id: string): FoundItem | null {
  for (const [kind, path, items] of itemLists(plan)) {
    const index = items.findIndex((item) => item.id === id);
    if (index >= 0) return { kind, path: [...path, index] };
  }
  return null;
}

type ItemList = [kind: ItemKind, path: (string | number)[], items: readonly { id: string }[]];

function itemLists(plan: Plan): ItemList[] {
  const { room } = plan;
  const fittings = plan.tables.map((table, index): ItemList => ['fitting', ['tables', index, 'fittings'], table.fittings]);
  return [
    ['corner', ['room', 'outline'], room.outline],
    ['opening', ['room', 'openings'], room.openings],
    ['column', ['room', 'columns'], room.columns],
    ['floor-drain', ['room', 'floorDrains'], room.floorDrains],
    ['stub', ['room', 'stubs'], room.stubs],
    ['machine', ['machines'], plan.machines],
    ['table', ['tables'], plan.tables],
    ...fittings,
    ['thing', ['things'], plan.things],
    ['hood', ['hoods'], plan.hoods],
    ['run', ['runs'], plan.runs],
    ['sheet', ['sheets'], plan.sheets],
  ];
}
