import type { Fitting } from '../../plan';
import type { Name } from '../../rules';
import type { PlacedHood, PlacedMachine, PlacedRun, PlacedTable, PlacedThing, Scene, Solid } from '../../scene';

/** Item mark; the id where it bears none. */
const markOf = (scene: Scene, id: string) => scene.marks[id] ?? id;

/** The mark of one of several; null for the only one. */
const markAmong = (scene: Scene, { length }: readonly unknown[], id: string) => (length < 2 ? null : markOf(scene, id));

export const nameMachine = (scene: Scene, { machine }: Pick<PlacedMachine, 'machine'>): Name => ({
  kind: 'machine',
  mark: markAmong(scene, scene.machines, machine.id),
});

/** The line of a machine. */
export const nameLine = (scene: Scene, { machine }: Pick<PlacedMachine, 'machine'>): Name => ({
  kind: 'line',
  mark: markAmong(scene, scene.machines, machine.id),
});

/** It bears a mark where the plan has several of its role. */
export const nameTable = (scene: Scene, { table }: Pick<PlacedTable, 'table'>): Name => {
  const ofRole = scene.tables.filter((other) => other.table.role === table.role);
  return { kind: 'table', role: table.role, mark: markAmong(scene, ofRole, table.id) };
};

export const nameHood = (scene: Scene, { hood }: Pick<PlacedHood, 'hood'>): Name => ({
  kind: 'hood',
  mark: markAmong(scene, scene.hoods, hood.id),
});

export const nameRun = (scene: Scene, { run }: Pick<PlacedRun, 'run'>): Name => ({
  kind: 'run',
  mark: markAmong(scene, scene.runs, run.id),
});

/** It bears a mark where the plan has several of that name. */
export const nameThing = (scene: Scene, { thing, name }: PlacedThing): Name => {
  const ofName = scene.things.filter((other) => other.name === name);
  return { kind: 'thing', name, isOwn: thing.name !== '', mark: markAmong(scene, ofName, thing.id) };
};

export const nameFitting = (fitting: Fitting): Name => ({
  kind: 'fitting',
  fitting: fitting.kind === 'sink' && fitting.spray ? 'pre-rinse' : fitting.kind,
});

/** A body: the overshelf of a table, the open doors of a machine, or what it is as a whole. */
export function nameBody(scene: Scene, { owner, kind }: Pick<Solid, 'owner' | 'kind'>): Name {
  if (kind === 'column') return { kind: 'column' };
  const of = nameOwner(scene, owner);
  return kind === 'backsplash' || kind === 'overshelf' || kind === 'door-lift' || kind === 'recovery-box'
    ? { kind: 'part', part: kind, of }
    : of;
}

/** Whatever bears the id. */
export function nameOwner(scene: Scene, id: string): Name {
  const machine = scene.machines.find((item) => item.machine.id === id);
  if (machine !== undefined) return nameMachine(scene, machine);
  const table = scene.tables.find((item) => item.table.id === id);
  if (table !== undefined) return nameTable(scene, table);
  const thing = scene.things.find((item) => item.thing.id === id);
  if (thing !== undefined) return nameThing(scene, thing);
  const hood = scene.hoods.find((item) => item.hood.id === id);
  if (hood !== undefined) return nameHood(scene, hood);
  const run = scene.runs.find((item) => item.run.id === id);
  return run === undefined ? { kind: 'column' } : nameRun(scene, run);
}
