import type { Plan } from '../planSchema';
import { createProblem, type PlanProblem, pathText } from './planProblem';

/** An id and the path of the thing that bears it. */
export interface NamedPath {
  id: string;
  path: (string | number)[];
}

/** Ids that stand twice. Every id is unique in the whole plan; those inside a data sheet are unique there, kind by kind. */
export function findIdProblems(plan: Plan): PlanProblem[] {
  const inSheets = plan.sheets.flatMap((sheet, index) => [
    ...findRepeats(named(sheet.controls, ['sheets', index, 'controls'])),
    ...findRepeats(named(sheet.connections, ['sheets', index, 'connections'])),
    ...findRepeats(named(sheet.electrical, ['sheets', index, 'electrical'])),
  ]);
  return [...findRepeats(listIds(plan)), ...inSheets];
}

/** Every id of the plan with its path, in the order of the document. */
export function listIds(plan: Plan): NamedPath[] {
  const { room } = plan;
  return [
    ...named(room.outline, ['room', 'outline']),
    ...named(room.openings, ['room', 'openings']),
    ...named(room.columns, ['room', 'columns']),
    ...named(room.floorDrains, ['room', 'floorDrains']),
    ...named(room.stubs, ['room', 'stubs']),
    ...named(plan.machines, ['machines']),
    ...plan.tables.flatMap((table, index) => [
      { id: table.id, path: ['tables', index] },
      ...named(table.fittings, ['tables', index, 'fittings']),
    ]),
    ...named(plan.things, ['things']),
    ...named(plan.hoods, ['hoods']),
    ...named(plan.runs, ['runs']),
    ...named(plan.sheets, ['sheets']),
  ];
}

function named(items: readonly { id: string }[], path: (string | number)[]): NamedPath[] {
  return items.map((item, index) => ({ id: item.id, path: [...path, index] }));
}

function findRepeats(names: readonly NamedPath[]): PlanProblem[] {
  const first = new Map<string, NamedPath>();
  return names.flatMap((name) => {
    const before = first.get(name.id);
    if (before === undefined) {
      first.set(name.id, name);
      return [];
    }
    return [createProblem('duplicate-id', [...name.path, 'id'], { id: name.id, first: pathText(before.path) })];
  });
}
