import { Group } from 'konva/lib/Group';
import { Shape } from 'konva/lib/Shape';
import { describe, expect, test } from 'vitest';
import type { DrawnItem } from '../../../../src/app/stage/canvas/drawnItem';
import { type ItemGroups, type ShapeMaker, syncGroups } from '../../../../src/app/stage/canvas/itemGroups';
import type { Prim } from '../../../../src/drawing';

const line = (): Prim => ({ kind: 'line', layer: 'equipment', points: [] });

const item = (key: string, prims: Prim[] = [line()], parts: string[] = [], id: string | null = key): DrawnItem => ({
  key,
  id,
  prims,
  parts,
});

/** Two containers, as a layer and the one above it; `show` gives the names of those in which something changed. */
function createTree() {
  const containers = { still: new Group({ name: 'still' }), moving: new Group({ name: 'moving' }) };
  const groups: ItemGroups = new Map();
  const painted: (() => DrawnItem)[] = [];
  const maker: ShapeMaker = {
    createShape: (read) => {
      painted.push(read);
      return new Shape({});
    },
    createPart: (id) => new Shape({ id }),
  };
  const show = (still: DrawnItem[], moving: DrawnItem[] = []) =>
    [
      ...syncGroups(
        groups,
        [
          { container: containers.still, items: still },
          { container: containers.moving, items: moving },
        ],
        maker,
      ),
    ].map((container) => container.name());
  const idsIn = (name: keyof typeof containers) => containers[name].getChildren().map((node) => node.id());
  return { ...containers, show, idsIn, painted };
}

describe('groups of the canvas', () => {
  test('one a thing, in their order, with its id', () => {
    const tree = createTree();
    expect(tree.show([item('a'), item('b'), item('c')])).toContain('still');
    expect(tree.idsIn('still')).toEqual(['a', 'b', 'c']);
  });

  test('the same groups stay while their things are shown, and nothing changes where nothing did', () => {
    const tree = createTree();
    const [a, b] = [item('a'), item('b')];
    tree.show([a, b]);
    const before = [...tree.still.getChildren()];
    expect(tree.show([a, b])).toEqual([]);
    expect(tree.show([{ ...a }, { ...b, prims: [...b.prims] }])).toEqual([]);
    expect(tree.still.getChildren()).toEqual(before);
    expect(tree.painted).toHaveLength(2);
  });

  test('a group whose drawing is another paints that one', () => {
    const tree = createTree();
    const [a, b] = [item('a'), item('b')];
    tree.show([a, b]);
    const next = item('b');
    expect(tree.show([a, next])).toEqual(['still']);
    expect(tree.painted.map((read) => read().prims)).toEqual([a.prims, next.prims]);
  });

  test('a thing that moves goes to the other container, which both change, and comes back to its place', () => {
    const tree = createTree();
    const [a, b, c] = [item('a'), item('b'), item('c')];
    tree.show([a, b, c]);
    const group = tree.still.getChildren()[1];
    expect(tree.show([a, c], [b]).toSorted()).toEqual(['moving', 'still']);
    expect([tree.idsIn('still'), tree.idsIn('moving')]).toEqual([['a', 'c'], ['b']]);
    expect(tree.moving.getChildren()[0]).toBe(group);
    expect(tree.show([a, c], [item('b')])).toEqual(['moving']);
    expect(tree.show([a, b, c]).toSorted()).toEqual(['moving', 'still']);
    expect([tree.idsIn('still'), tree.idsIn('moving')]).toEqual([['a', 'b', 'c'], []]);
  });

  test('what is no longer shown is taken out', () => {
    const tree = createTree();
    tree.show([item('a'), item('b')]);
    expect(tree.show([item('b')])).toEqual(['still']);
    expect(tree.idsIn('still')).toEqual(['b']);
  });

  test('another order from back to front', () => {
    const tree = createTree();
    const [a, b, c] = [item('a'), item('b'), item('c')];
    tree.show([a, b, c]);
    expect(tree.show([c, a, b])).toEqual(['still']);
    expect(tree.idsIn('still')).toEqual(['c', 'a', 'b']);
  });

  test('the parts of a thing are met above it, in its group', () => {
    const tree = createTree();
    const prims = [line()];
    tree.show([item('table', prims, ['bowl', 'hole'])]);
    const [table] = tree.still.getChildren() as Group[];
    const ids = () => table?.getChildren().map((node) => node.id());
    expect(ids()).toEqual(['', 'bowl', 'hole']);
    const before = [...(table?.getChildren() ?? [])];
    expect(tree.show([item('table', prims, ['bowl', 'hole'])])).toEqual([]);
    expect(table?.getChildren()).toEqual(before);
    tree.show([item('table', prims, ['hole'])]);
    expect(ids()).toEqual(['', 'hole']);
    tree.show([item('table', prims)]);
    expect(ids()).toEqual(['']);
  });

  test('what has no id hears no press', () => {
    const tree = createTree();
    tree.show([item('a'), item('way', [line()], [], null)]);
    const shapes = tree.still.getChildren().map((group) => (group as Group).getChildren()[0]);
    expect(shapes.map((shape) => shape?.listening())).toEqual([true, false]);
    expect(tree.idsIn('still')).toEqual(['a', '']);
  });
});
