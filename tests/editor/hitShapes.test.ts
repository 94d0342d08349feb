import { describe, expect, it } from 'vitest';
import { createEditor, type ItemShape, select, shapesOf } from '../../src/editor';
import { itemsInFrame } from '../../src/editor/hit/itemsInFrame';
import { edit, type Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at } from './driver';
import { pick } from './pick';
import { cornerPlan, emptyPlan, straightPlan, withThing } from './plans';

const shapeOf = (plan: Plan, id: string): ItemShape => {
  const shape = shapesOf(deriveScene(plan)).get(id);
  if (shape === undefined) throw new Error(`${id} has no shape`);
  return shape;
};

const VIEW = { scale: 0.2, dx: 0, dy: 0 };
const viewport = { width: 1400, height: 900 };
const editorOf = (plan: Plan, chosen: string[] = []) => ({ ...select(createEditor(plan, viewport), chosen), view: VIEW });

describe('true shapes', () => {
  it('everything that can be chosen has one', () => {
    const plan = withThing(straightPlan('direct-vent'));
    const { room, machines, tables, things, hoods, runs } = plan;
    const chosen = [room.outline, room.openings, room.columns, room.floorDrains, room.stubs, machines, tables, things, hoods, runs].flat();
    const ids = [...chosen, ...tables.flatMap(({ fittings }) => fittings)].map(({ id }) => id);
    expect([...shapesOf(deriveScene(plan)).keys()].toSorted()).toEqual(ids.toSorted());
  });

  it('a thing is its rectangle and half the reach around it', () => {
    const ring = [at(1600, 3250), at(2400, 3250), at(2400, 3750), at(1600, 3750)];
    expect(shapeOf(withThing(emptyPlan()), 'cart-1')).toMatchObject({ kind: 'thing', areas: [ring], reach: 0.5, corners: ring });
  });

  it('a wall is its hatched band, outside the room, and the reach along its face', () => {
    const wall = shapeOf(emptyPlan(), 'wall-1');
    const [a, b, c, d] = wall.areas[0]!;
    expect([a, b]).toEqual([at(0, 0), at(8000, 0)]);
    expect([c!.x, d!.x]).toEqual([8000, 0]);
    expect(c!.y).toBe(d!.y);
    expect(c!.y).toBeLessThan(0);
    expect(wall).toMatchObject({ reach: 1, corners: [], lines: [{ points: [at(0, 0), at(8000, 0)], closed: false }] });
  });

  it('an opening is its stretch of the band', () => {
    const plan = emptyPlan();
    const { from, width } = plan.room.openings[0]!;
    const { areas, lines, reach } = shapeOf(plan, 'door-1');
    // Its wall runs from right to left.
    const xs = areas[0]!.map(({ x }) => x);
    expect([Math.max(...xs), Math.min(...xs)]).toEqual([8000 - from, 8000 - from - width]);
    expect(lines[0]?.points).toHaveLength(2);
    expect(reach).toBe(1.5);
  });

  it('a run is its way, no narrower than the duct', () => {
    const plan = straightPlan('direct-vent');
    const [run] = plan.runs;
    const { lines, least, areas } = shapeOf(plan, 'run');
    expect({ least, areas }).toEqual({ least: run!.diameter / 2, areas: [] });
    expect(lines[0]?.points.slice(-run!.points.length)).toMatchObject(run!.points.map(({ x, y }) => ({ x, y })));
  });

  it('a table is its deck, marked by its outline', () => {
    const [table] = deriveScene(cornerPlan()).tables;
    expect(shapeOf(cornerPlan(), table!.table.id)).toMatchObject({
      areas: table!.deck,
      outlines: [{ points: table!.outline, closed: true }],
    });
  });

  it('a hood over a machine is only its edge, a hood over nothing all of it', () => {
    const over = straightPlan();
    expect(shapeOf(over, 'hood').areas).toEqual([]);
    const alone = edit(over, 'away', (draft) => {
      const [hood] = draft.hoods;
      if (hood) [hood.x, hood.y] = [4000, 4500];
    }).plan;
    expect(shapeOf(alone, 'hood').areas).toEqual([deriveScene(alone).hoods[0]!.polygon]);
  });

  it('a stub is a point with half as much reach again', () => {
    const plan = edit(emptyPlan(), 'stub', (draft) => {
      draft.room.stubs.push({ id: 'water', kind: 'cold-water', x: 3000, y: 0, z: 500 });
    }).plan;
    expect(shapeOf(plan, 'water')).toMatchObject({ areas: [], reach: 1.5, lines: [{ closed: false }], corners: [at(3000, 0)] });
  });
});

describe('what a press meets, topmost first', () => {
  const plan = withThing(straightPlan());
  const [hood] = plan.hoods;
  const edge = at(4000, hood!.y + hood!.depth / 2);
  it.each([
    { name: 'a fitting before its table', point: at(3100, 800), ids: ['soiled-landing', 'soiled-table'] },
    { name: 'the machine, not the hood over it', point: at(4000, 800), ids: ['machine'] },
    { name: 'the edge of a hood', point: edge, ids: ['hood'] },
    { name: 'within reach of that edge', point: at(edge.x, edge.y + 30), ids: ['hood'] },
    { name: 'beyond its reach', point: at(edge.x, edge.y + 31), ids: [] },
    { name: 'a wall from within the room', point: at(3000, 4971), ids: ['wall-3'] },
    { name: 'a wall on its band', point: at(3000, 5040), ids: ['wall-3'] },
    { name: 'nothing on the bare floor', point: at(6000, 4000), ids: [] },
    { name: 'nothing outside', point: at(-2000, 900), ids: [] },
    { name: 'a thing from half a reach away', point: at(2415, 3500), ids: ['cart-1'] },
    { name: 'nothing a little farther off', point: at(2416, 3500), ids: [] },
  ])('$name', ({ point, ids }) => {
    expect(pick(editorOf(plan), point, 30).map(({ id }) => id)).toEqual(ids);
  });

  it('a handle of the one chosen thing before the thing', () => {
    expect(pick(editorOf(plan, ['cart-1']), at(2400, 3500), 30)).toEqual([
      { id: 'cart-1', handle: 'right' },
      { id: 'cart-1', handle: null },
    ]);
    expect(pick(editorOf(plan, ['cart-1', 'machine']), at(2400, 3500), 30)).toEqual([{ id: 'cart-1', handle: null }]);
  });
});

describe('a frame', () => {
  const scene = deriveScene(withThing(straightPlan()));
  it.each([
    { name: 'takes what lies wholly inside', from: at(1590, 3240), to: at(2410, 3760), ids: ['cart-1'] },
    { name: 'drawn the other way', from: at(2410, 3760), to: at(1590, 3240), ids: ['cart-1'] },
    { name: 'on its very edge', from: at(1600, 3250), to: at(2400, 3750), ids: ['cart-1'] },
    { name: 'not what reaches out of it', from: at(1590, 3240), to: at(2399, 3760), ids: [] },
    {
      name: 'neither walls, nor openings, nor fittings',
      from: at(-500, -500),
      to: at(8500, 5500),
      ids: ['cart-1', 'clean-table', 'hood', 'machine', 'soiled-table'],
    },
  ])('$name', ({ from, to, ids }) => {
    expect(itemsInFrame(scene, from, to).toSorted()).toEqual(ids);
  });
});
