import { type Drawing, drawThings, type Prim } from '../../../drawing';
import { type ItemShape, shapesOf } from '../../../editor';
import type { Scene } from '../../../scene';

/** What the canvas shows as one group: the drawing of one thing, with what belongs to it above. */
export interface DrawnItem {
  /** Unlike all others on the canvas, and the same from frame to frame. */
  readonly key: string;
  /** Id of the thing that a press on it takes; null for what is only seen. */
  readonly id: string | null;
  readonly prims: Drawing;
  /** Ids of what a press on a part of it takes, back to front: the fittings of a table. */
  readonly parts: readonly string[];
}

/** Things of the plan as the canvas groups them: the room, and what stands and hangs in it. Back to front. */
export interface DrawnThings {
  readonly room: readonly DrawnItem[];
  readonly items: readonly DrawnItem[];
}

const ROOM: ReadonlySet<string> = new Set<ItemShape['kind']>(['corner', 'opening', 'column', 'floor-drain']);

const known = new WeakMap<Scene, DrawnThings>();

/** The display list of a plan's things, divided by whose drawing each primitive is; a table’s fittings stand in its group. */
export function groupThings(scene: Scene): DrawnThings {
  const before = known.get(scene);
  if (before !== undefined) return before;
  const kindOf = createKindOf(scene);
  const tables = new Map(scene.tables.flatMap(({ table, fittings }) => fittings.map(({ fitting }) => [fitting.id, table.id] as const)));
  const isItem = (id: string) => kindOf(id) !== undefined && kindOf(id) !== 'stub';
  const items = groupBy(drawThings(scene), (subject) => tables.get(subject) ?? subject, isItem);
  const isRoom = ({ key }: DrawnItem) => ROOM.has(kindOf(key) ?? '');
  const things = { room: items.filter(isRoom), items: items.filter((item) => !isRoom(item)) };
  known.set(scene, things);
  return things;
}

/** Marks and notes. A stub has no body but its mark, so that is its group. */
export function groupNotes(scene: Scene, prims: Drawing): DrawnItem[] {
  const kindOf = createKindOf(scene);
  const isStub = (id: string) => kindOf(id) === 'stub';
  return groupBy(prims, (subject) => (isStub(subject) ? subject : ''), isStub);
}

const createKindOf = (scene: Scene) => {
  const shapes = shapesOf(scene);
  return (id: string) => shapes.get(id)?.kind;
};

/**
 * Divides a display list where the owner changes, so that the order from back to front stays. The first group of an owner
 * has its id as key; what is drawn of it later, above other things, is another group, that no press takes.
 */
function groupBy(prims: Drawing, ownerOf: (subject: string) => string, isItem: (id: string) => boolean): DrawnItem[] {
  const groups: (DrawnItem & { owner: string; prims: Prim[]; parts: string[] })[] = [];
  const counts = new Map<string, number>();
  for (const prim of prims) {
    const subject = prim.subject ?? '';
    const owner = ownerOf(subject);
    let group = groups.at(-1);
    if (group?.owner !== owner) {
      const count = counts.get(owner) ?? 0;
      counts.set(owner, count + 1);
      const name = count === 0 ? { key: owner, id: isItem(owner) ? owner : null } : { key: `${owner}+${count}`, id: null };
      group = { ...name, owner, prims: [], parts: [] };
      groups.push(group);
    }
    group.prims.push(prim);
    if (subject !== owner && isItem(subject) && group.parts.at(-1) !== subject) group.parts.push(subject);
  }
  return groups;
}

/** Whether two groups show the very same primitives, so that neither need be painted again. */
export const isSameDrawing = (a: Drawing, b: Drawing): boolean => a === b || (a.length === b.length && a.every((prim, i) => prim === b[i]));
