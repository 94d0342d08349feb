import { produce } from 'immer';
import { describe, expect, test } from 'vitest';
import { divideDrawing } from '../../src/app/stage/divideDrawing';
import { drawThings, type PlanOptions, type Prim } from '../../src/drawing';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { examplePlan } from '../support/examplePlans';

const OPTIONS: PlanOptions = { units: 'us', scaleDenominator: 48 };

const plan = examplePlan('school-corner');

const ROWS: { name: string; moved: string; move: (draft: Plan, by: number) => void }[] = [
  { name: 'a machine with its tables', moved: plan.machines[0]?.id ?? '', move: ({ machines: [machine] }, by) => shift(machine, by) },
  { name: 'a thing', moved: plan.things[0]?.id ?? '', move: ({ things: [thing] }, by) => shift(thing, by) },
];

function shift(item: { x: number } | undefined, by: number): void {
  if (item) item.x += by;
}

const divide = (after: Plan) =>
  divideDrawing(deriveScene(plan), { scene: deriveScene(after), findings: [], numbers: new Map() }, OPTIONS, null);

describe.each(ROWS)('$name dragged', ({ moved, move }) => {
  const after = produce(plan, (draft) => move(draft, 30));
  const { still, moving } = divide(after);

  test('stands in the part that moves, and nowhere else', () => {
    expect(moving.some(({ subject }) => subject === moved)).toBe(true);
    expect(still.filter(({ subject }) => subject === moved)).toEqual([]);
  });

  test('everything that is drawn of things is in one of the parts', () => {
    const drawn = new Set<Prim>([...still, ...moving]);
    expect(drawThings(deriveScene(after)).filter((prim) => !drawn.has(prim))).toEqual([]);
  });

  test('what stands still is the same list at the next step', () => {
    expect(divide(produce(plan, (draft) => move(draft, 31))).still).toBe(still);
  });
});

test('a wall that moves takes everything with it, since the floor lies under all', () => {
  const wider = produce(plan, (draft) => {
    const right = Math.max(...draft.room.outline.map(({ x }) => x));
    for (const corner of draft.room.outline) if (corner.x === right) corner.x += 50;
  });
  expect(divide(wider).still).toEqual([]);
});
