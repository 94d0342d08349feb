import type { Scene } from '../../scene';
import { optionWords } from '../../text';
import { nameSubject } from './names';

/** A thing of the plan in the list beside the canvas. */
export interface Item {
  readonly id: string;
  readonly name: string;
  /** What it is, in a word or two ("soiled table"). */
  readonly what: string;
  /** Item mark of the drawing, where it bears one. */
  readonly mark: string | null;
  /** Things that belong to it: fittings of a table. */
  readonly parts: readonly Item[];
}

export interface ItemGroup {
  readonly group: 'line' | 'room' | 'things' | 'air';
  readonly title: string;
  readonly items: readonly Item[];
}

/** Everything of the plan that can be chosen, for the list beside the canvas: the line, the room, what stands in it, the air. */
export function listItems(scene: Scene): ItemGroup[] {
  const { plan } = scene;
  const { room } = plan;
  const all = (items: readonly { id: string }[], what: string) => items.map(({ id }) => itemOf(scene, id, what));
  return [
    {
      group: 'line',
      title: 'Line',
      items: byMark([...all(plan.machines, 'machine'), ...plan.tables.map((table) => tableItem(scene, table))]),
    },
    { group: 'things', title: 'Things', items: byMark(plan.things.map(({ id, kind }) => itemOf(scene, id, optionWords(kind)))) },
    { group: 'air', title: 'Air', items: byMark([...all(plan.hoods, 'hood'), ...all(plan.runs, 'duct run')]) },
    {
      group: 'room',
      title: 'Room',
      items: [
        ...all(room.outline, 'wall'),
        ...room.openings.map(({ id, kind }) => itemOf(scene, id, optionWords(kind))),
        ...all(room.columns, 'column'),
        ...room.floorDrains.map(({ id, kind }) => itemOf(scene, id, optionWords(kind))),
        ...room.stubs.map(({ id, kind }) => itemOf(scene, id, `${optionWords(kind)} stub`)),
      ],
    },
  ];
}

/** One thing of the list, a fitting too; null where the plan has none of this id. */
export function findItem(scene: Scene, id: string): Item | null {
  const items = listItems(scene).flatMap((group) => group.items);
  return [...items, ...items.flatMap(({ parts }) => parts)].find((item) => item.id === id) ?? null;
}

function itemOf({ plan, marks }: Scene, id: string, what: string, parts: readonly Item[] = []): Item {
  return { id, name: nameSubject(plan, id), what, mark: marks[id] ?? null, parts };
}

function tableItem(scene: Scene, { id, role, fittings }: Scene['plan']['tables'][number]): Item {
  const parts = fittings.toSorted((a, b) => b.at - a.at).map((fitting) => itemOf(scene, fitting.id, optionWords(fitting.kind)));
  return itemOf(scene, id, `${role} table`, role === 'soiled' ? parts : parts.toReversed());
}

/** In the order of their marks, as numbers; what bears none last. */
function byMark(items: Item[]): Item[] {
  const order = ({ mark }: Item) => (mark === null ? Infinity : Number.parseFloat(mark));
  return items.toSorted((a, b) => order(a) - order(b) || 0);
}
