import type { PlacedThing, Scene, Solid, SolidKind } from '../../scene';
import { hoodName, runName } from './airNames';
import { machineName, markOf, tableName } from './names';

/** What a body is called in the middle of a sentence: `the hand sink`, `the overshelf of the soiled table`. */
export function bodyName(scene: Scene, { owner, kind }: Pick<Solid, 'owner' | 'kind'>): string {
  return PART_WORDS[kind].replace('*', ownerName(scene, owner));
}

/** Parts that bear no name of their own are named after what they belong to. */
const PART_WORDS: Record<SolidKind, string> = {
  machine: '*',
  table: '*',
  backsplash: 'the backsplash of *',
  overshelf: 'the overshelf of *',
  thing: '*',
  hood: '*',
  run: '*',
  column: 'a column',
  'door-lift': 'the open doors of *',
  'recovery-box': 'the heat-recovery box of *',
};

/** What the owner of a body is called. */
export function ownerName(scene: Scene, id: string): string {
  const machine = scene.machines.find((item) => item.machine.id === id);
  if (machine !== undefined) return machineName(scene, machine);
  const table = scene.tables.find((item) => item.table.id === id);
  if (table !== undefined) return tableName(scene, table);
  const thing = scene.things.find((item) => item.thing.id === id);
  if (thing !== undefined) return thingName(scene, thing);
  const hood = scene.hoods.find((item) => item.hood.id === id);
  if (hood !== undefined) return hoodName(scene, hood);
  const run = scene.runs.find((item) => item.run.id === id);
  return run === undefined ? 'a column' : runName(scene, run);
}

/** Its own name, or the usual one with `the`; the item mark where the plan has several of that name. */
function thingName(scene: Scene, { thing, name }: PlacedThing): string {
  const isOnly = scene.things.filter((other) => other.name === name).length < 2;
  if (!isOnly) return `${thing.name === '' ? name.toLowerCase() : name} ${markOf(scene, thing.id)}`;
  return thing.name === '' ? `the ${name.toLowerCase()}` : name;
}
