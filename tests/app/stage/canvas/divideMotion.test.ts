import { produce } from 'immer';
import { describe, expect, test } from 'vitest';
import { divideMotion } from '../../../../src/app/stage/canvas/deriveShown';
import { type DrawnItem, isSameDrawing } from '../../../../src/app/stage/canvas/drawnItem';
import { drawThings, type PlanOptions, type Prim } from '../../../../src/drawing';
import type { Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { examplePlan } from '../../../support/examplePlans';

const OPTIONS: PlanOptions = { units: 'us', scaleDenominator: 48 };

const plan = examplePlan('school-corner');

const machine = plan.machines[0]?.id ?? '';
const joined = plan.tables.map(({ id }) => id);
const [thing = '', other = ''] = plan.things.map(({ id }) => id);

const ROWS: { name: string; moved: string[]; still: string[]; move: (draft: Plan, by: number) => void }[] = [
  {
    name: 'a machine with its tables',
    moved: [machine, ...joined],
    still: [thing],
    move: ({ machines: [first] }, by) => shift(first, by),
  },
  { name: 'a thing', moved: [thing], still: [other, machine, ...joined], move: ({ things: [first] }, by) => shift(first, by) },
];

function shift(item: { x: number } | undefined, by: number): void {
  if (item) item.x += by;
}

const divide = (after: Plan, before: Plan) =>
  divideMotion(deriveScene(before), { scene: deriveScene(after), findings: [], numbers: new Map() }, OPTIONS, null);

const primsOf = (items: readonly DrawnItem[]): Prim[] => items.flatMap(({ prims }) => prims);

describe.each(ROWS)('$name dragged', ({ moved, still, move }) => {
  // Stages of the scene are remembered from the last plan: each drag begins with a plan of its own.
  const before = structuredClone(plan);
  deriveScene(before);
  const after = produce(before, (draft) => move(draft, 30));
  const shown = divide(after, before);

  test('moves, and what stands beside it does not', () => {
    expect(moved.filter((id) => !shown.moving.has(id))).toEqual([]);
    expect(still.filter((id) => shown.moving.has(id))).toEqual([]);
  });

  test('its marks go with it: no note or dimension of it stays behind', () => {
    const left = [...primsOf(shown.notes), ...shown.dimensions].filter(({ subject }) => subject !== undefined && moved.includes(subject));
    expect(left).toEqual([]);
    expect(shown.motion.some(({ subject }) => subject === moved[0])).toBe(true);
  });

  test('notes of what stands still stay', () => {
    expect(primsOf(shown.notes).some(({ subject }) => subject === still[0])).toBe(true);
  });

  test('everything that is drawn of things is in a group, once', () => {
    const drawn = primsOf([...shown.room, ...shown.items]);
    expect(new Set(drawn)).toEqual(new Set(drawThings(deriveScene(after))));
    expect(drawn).toHaveLength(drawThings(deriveScene(after)).length);
  });

  test('what stands still has the same primitives at the next step, so that it is not painted again', () => {
    const next = divide(
      produce(before, (draft) => move(draft, 31)),
      before,
    );
    const stillOf = (of: typeof shown) => primsOf(of.items.filter(({ key }) => !of.moving.has(key)));
    expect(stillOf(shown).length).toBeGreaterThan(0);
    expect(isSameDrawing(stillOf(next), stillOf(shown))).toBe(true);
    expect(isSameDrawing(primsOf(next.room), primsOf(shown.room))).toBe(true);
    expect(isSameDrawing(primsOf(next.notes), primsOf(shown.notes))).toBe(true);
    expect(isSameDrawing(next.dimensions, shown.dimensions)).toBe(true);
  });
});

test('a wall that moves takes every note and dimension with it; what stands in the room is not painted again', () => {
  const before = structuredClone(plan);
  deriveScene(before);
  const wider = produce(before, (draft) => {
    const right = Math.max(...draft.room.outline.map(({ x }) => x));
    for (const corner of draft.room.outline) if (corner.x === right) corner.x += 50;
  });
  const shown = divide(wider, before);
  expect(primsOf(shown.notes)).toEqual([]);
  expect(shown.dimensions).toEqual([]);
  expect(shown.moving.has(thing)).toBe(false);
  expect(shown.motion.some(({ subject }) => subject === machine)).toBe(true);
});
