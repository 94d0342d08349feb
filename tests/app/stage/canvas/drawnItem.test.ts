import { produce } from 'immer';
import { describe, expect, test } from 'vitest';
import { type DrawnItem, groupNotes, groupThings, isSameDrawing } from '../../../../src/app/stage/canvas/drawnItem';
import { drawPlan, drawThings, type Prim } from '../../../../src/drawing';
import { deriveScene } from '../../../../src/scene';
import { examplePlan } from '../../../support/examplePlans';

const plan = examplePlan('school-corner');
const scene = deriveScene(plan);
const { room, items } = groupThings(scene);

const idsOf = (all: readonly DrawnItem[]) => all.flatMap(({ id }) => id ?? []);
const primsOf = (all: readonly DrawnItem[]): Prim[] => all.flatMap(({ prims }) => prims);

describe('groups of what is drawn', () => {
  test('the room holds its walls, openings, columns and drains, one group each', () => {
    const { outline, openings, columns, floorDrains } = plan.room;
    expect(idsOf(room).toSorted()).toEqual([...outline, ...openings, ...columns, ...floorDrains].map(({ id }) => id).toSorted());
  });

  test('what stands and hangs in the room has one group each', () => {
    const { machines, tables, things, hoods, runs } = plan;
    expect(idsOf(items).toSorted()).toEqual([...machines, ...tables, ...things, ...hoods, ...runs].map(({ id }) => id).toSorted());
  });

  test('the fittings of a table stand in its group, and not beside it', () => {
    for (const { id, fittings } of plan.tables) {
      const group = items.find((item) => item.id === id);
      const ids = fittings.map((fitting) => fitting.id);
      expect(group?.parts).toEqual(ids);
      expect(new Set(group?.prims.map(({ subject }) => subject))).toEqual(new Set([id, ...ids]));
    }
  });

  test('the order from back to front is that of the display list', () => {
    expect(primsOf([...room, ...items])).toEqual(drawThings(scene));
  });

  test('no two groups have the same key', () => {
    const keys = [...room, ...items].map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('the way of ware over a machine is drawn, but a press does not meet it', () => {
    const path = items.filter(({ prims }) => prims.some(({ layer }) => layer === 'path'));
    expect(path.length).toBeGreaterThan(0);
    expect(path.map(({ id }) => id)).toEqual(path.map(() => null));
  });

  test('a stub is met where its mark stands, not along the line to what it feeds', () => {
    const stubs = plan.room.stubs.map(({ id }) => id);
    expect(stubs.length).toBeGreaterThan(0);
    const things = new Set(drawThings(scene));
    const notes = drawPlan(scene, { units: 'us', scaleDenominator: 48 }).filter((prim) => !things.has(prim));
    expect(idsOf(groupNotes(scene, notes)).toSorted()).toEqual(stubs.toSorted());
    expect(primsOf(groupNotes(scene, notes))).toEqual(notes);
    expect(idsOf(items).filter((id) => stubs.includes(id))).toEqual([]);
  });
});

describe('a group is painted again', () => {
  const shifted = groupThings(deriveScene(produce(plan, ({ things: [thing] }) => void (thing && (thing.x += 10)))));
  const same = (id: string) => {
    const [a, b] = [items, shifted.items].map((all) => all.find((item) => item.id === id));
    return a !== undefined && b !== undefined && isSameDrawing(a.prims, b.prims);
  };

  test.each([
    { name: 'the thing that moved', id: plan.things[0]?.id ?? '', isSame: false },
    { name: 'another thing', id: plan.things[1]?.id ?? '', isSame: true },
    { name: 'a table with its fittings', id: plan.tables[0]?.id ?? '', isSame: true },
  ])('$name', ({ id, isSame }) => {
    expect(same(id)).toBe(isSame);
  });

  test('where one of its fittings changed', () => {
    const [table] = plan.tables;
    const after = groupThings(
      deriveScene(
        produce(plan, (draft) => {
          const fitting = draft.tables[0]?.fittings[0];
          if (fitting) fitting.at += 25;
        }),
      ),
    );
    const [a, b] = [items, after.items].map((all) => all.find((item) => item.id === table?.id));
    expect(a && b && isSameDrawing(a.prims, b.prims)).toBe(false);
  });
});
