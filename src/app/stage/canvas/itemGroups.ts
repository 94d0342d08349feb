import type { Container } from 'konva/lib/Container';
import { Group } from 'konva/lib/Group';
import type { Shape } from 'konva/lib/Shape';
import { type DrawnItem, isSameDrawing } from './drawnItem';

/** Groups of the canvas by the key of what they show. */
export type ItemGroups = Map<string, ItemGroup>;

interface ItemGroup {
  readonly group: Group;
  readonly shape: Shape;
  item: DrawnItem;
}

/** What makes the shapes of a group. */
export interface ShapeMaker {
  /** The one that paints an item as it then is, and that a press on it meets. */
  readonly createShape: (read: () => DrawnItem) => Shape;
  /** One above it that only a press on a part of it meets. */
  readonly createPart: (id: string) => Shape;
}

/** What stands in one container, back to front. */
export interface Placed {
  readonly container: Container;
  readonly items: readonly DrawnItem[];
}

/**
 * Brings the groups in line with what is to be shown: one a thing, kept as long as the thing is shown. Gives the containers in
 * which anything is not as it was.
 */
export function syncGroups(groups: ItemGroups, placed: readonly Placed[], maker: ShapeMaker): Set<Container> {
  const changed = new Set<Container>();
  const note = (container: Container | null) => container && changed.add(container);
  removeGone(groups, new Set(placed.flatMap(({ items }) => items.map(({ key }) => key))), note);
  for (const { container, items } of placed) {
    items.forEach((item, index) => {
      const entry = groups.get(item.key) ?? create(groups, item.key, maker);
      placeGroup(entry.group, container, index, note);
      if (!isSameDrawing(entry.item.prims, item.prims)) note(container);
      takeItem(entry, item, maker);
    });
  }
  return changed;
}

type Note = (container: Container | null) => unknown;

function removeGone(groups: ItemGroups, keys: ReadonlySet<string>, note: Note): void {
  for (const [key, { group }] of groups) {
    if (keys.has(key)) continue;
    note(group.getParent());
    group.destroy();
    groups.delete(key);
  }
}

function create(groups: ItemGroups, key: string, { createShape }: ShapeMaker): ItemGroup {
  const group = new Group();
  const entry: ItemGroup = { group, shape: createShape(() => entry.item), item: { key, id: null, prims: [], parts: [] } };
  group.add(entry.shape);
  entry.shape.listening(false);
  groups.set(key, entry);
  return entry;
}

function placeGroup(group: Group, container: Container, index: number, note: Note): void {
  const before = group.getParent();
  if (before === container && group.zIndex() === index) return;
  note(before);
  group.moveTo(container);
  group.zIndex(index);
  note(container);
}

/** The group carries the id of its thing; what has none hears no press. */
function takeItem(entry: ItemGroup, item: DrawnItem, { createPart }: ShapeMaker): void {
  const { group, shape, item: before } = entry;
  entry.item = item;
  if (before.id !== item.id) {
    group.id(item.id ?? '');
    shape.listening(item.id !== null);
  }
  if (before.parts.join(' ') === item.parts.join(' ')) return;
  for (const part of group.getChildren((node) => node !== shape)) part.destroy();
  for (const id of item.parts) group.add(createPart(id));
}
