import type { PlacedTable, Scene } from '../../scene';

/** `the machine`, or `machine 4` (its item mark) where the plan has several. */
export function machineName(scene: Scene, { machine }: { machine: { id: string } }): string {
  return scene.machines.length < 2 ? 'the machine' : `machine ${markOf(scene, machine.id)}`;
}

/** `the line`, or `the line of machine 4` where the plan has several. */
export const lineName = (scene: Scene, machine: { machine: { id: string } }) =>
  scene.machines.length < 2 ? 'the line' : `the line of ${machineName(scene, machine)}`;

/** `the soiled table`, or `soiled table 3` (its item mark) where the plan has several of that role. */
export function tableName(scene: Scene, { table }: Pick<PlacedTable, 'table'>): string {
  const isOnly = scene.tables.filter((other) => other.table.role === table.role).length < 2;
  return isOnly ? `the ${table.role} table` : `${table.role} table ${markOf(scene, table.id)}`;
}

/** Item mark; the id where it bears none. */
export const markOf = (scene: Scene, id: string) => scene.marks[id] ?? id;
