import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addThing,
  createLinePlan,
  edit,
  moveItems,
  type Plan,
  type Recipe,
  removeItems,
  revertChange,
  rotateItems,
  setField,
  transformPlan,
  tryEdit,
} from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { arbitraryEdit, arbitraryLine } from '../laws/arbitraryPlan';

const line = createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand: 'left-to-right' });
const turned = transformPlan(line, { rotateDeg: 37 });
const shelf = line.things[0] as Plan['things'][number];

/** The dust that a drag of three tenths thrice leaves: 0.1 + 0.2 is not 0.3. */
const DUSTY = 3962.2999999999997;

const isDusty = (value: unknown) => typeof value === 'number' && !/^-?(0\.\d{1,12}|\d+(\.\d{1,9})?)$/.test(String(value));

/** Paths of the numbers that have more than nine decimals, or twelve below one. */
function dustIn(value: unknown, path = ''): string[] {
  if (isDusty(value)) return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) => dustIn(item, `${path}.${key}`));
}

const changed = (plan: Plan, recipe: Recipe) => edit(plan, 'Test', recipe).plan;

describe('the dust of arithmetic does not get into a plan', () => {
  it.each([
    { name: 'a value set', recipe: setField(['things', 0, 'x'], DUSTY), read: (plan: Plan) => plan.things[0]?.x, wanted: 3962.3 },
    {
      name: 'a thing moved',
      recipe: moveItems([shelf.id], { x: DUSTY - shelf.x, y: 0 }),
      read: (plan: Plan) => plan.things[0]?.x,
      wanted: 3962.3,
    },
    {
      name: 'a thing brought along',
      recipe: addThing({ ...shelf, id: 'other', x: DUSTY }),
      read: (plan: Plan) => plan.things.at(-1)?.x,
      wanted: 3962.3,
    },
    {
      name: 'a list put in place of another',
      recipe: setField(['tables', 0, 'legs'], [{ length: DUSTY, turnDeg: 0 }]),
      read: (plan: Plan) => plan.tables[0]?.legs,
      wanted: [{ length: 3962.3, turnDeg: 0 }],
    },
    {
      name: 'a sixteenth of an inch stays exact',
      recipe: setField(['things', 0, 'x'], 25.4 / 16),
      read: (plan: Plan) => plan.things[0]?.x,
      wanted: 1.5875,
    },
    {
      name: 'a sixty-fourth too',
      recipe: setField(['things', 0, 'x'], 25.4 / 64),
      read: (plan: Plan) => plan.things[0]?.x,
      wanted: 0.396875,
    },
    {
      name: 'what is no number of a plan is left to the validation',
      recipe: setField(['things', 0, 'x'], Infinity),
      read: (plan: Plan) => plan.things[0]?.x,
      wanted: Infinity,
    },
  ])('$name', ({ recipe, read, wanted }) => {
    expect(read(changed(line, recipe))).toEqual(wanted);
  });

  it('leaves alone what the recipe did not change, also where it moved up in its list', () => {
    const dusty = { ...line, things: [shelf, { ...shelf, id: 'second', x: DUSTY }, { ...shelf, id: 'third', x: DUSTY }] };
    const after = changed(dusty, removeItems([shelf.id]));
    expect(after.things).toEqual(dusty.things.slice(1));
    expect(after.things[0]).toBe(dusty.things[1]);
    expect(changed(dusty, setField(['things', 1, 'y'], 5)).things[1]).toEqual({ ...dusty.things[1], y: 5 });
  });

  it('takes what is held elsewhere as it is, and rounds a copy', () => {
    const held = Object.freeze({ ...shelf, id: 'held', x: DUSTY });
    expect(changed(line, addThing(held)).things.at(-1)?.x).toBe(3962.3);
    expect(held.x).toBe(DUSTY);
  });

  it('a change that is dust alone is none', () => {
    const nudge = edit(line, 'Nudge', moveItems([shelf.id], { x: 1e-12, y: -1e-12 }));
    expect(nudge).toMatchObject({ patches: [], inverse: [] });
    expect(nudge.plan).toBe(line);
  });

  it('in a turned room too, and undoing is exact', () => {
    fc.assert(
      fc.property(arbitraryLine, arbitraryEdit, (plan, { name, make }) => {
        const result = tryEdit(plan, name, make(plan));
        if (!result.ok) return;
        const { transaction } = result;
        const before = new Set(dustIn(plan));
        // A list that became shorter moves what it holds up; nothing else may have more decimals than before.
        expect(dustIn(transaction.plan).filter((path) => !before.has(path))).toEqual([]);
        expect(revertChange(transaction.plan, transaction)).toEqual(plan);
      }),
      { seed: 2141, numRuns: 300 },
    );
  });

  it('joints stay flush when a line is turned and moved', () => {
    const ids = [...turned.machines, ...turned.things].map(({ id }) => id);
    const after = changed(turned, (draft) => {
      rotateItems(ids, 23, { x: 1000, y: 1000 })(draft);
      moveItems(ids, { x: 1 / 3, y: 2 / 3 })(draft);
    });
    for (const joint of deriveScene(after).joints) {
      expect([joint.gap, joint.offset, joint.angleDeg].map((value) => Math.abs(value) < 1e-6)).toEqual([true, true, true]);
    }
    const places = [...after.machines, ...after.things].map(({ x, y, rotationDeg }) => ({ x, y, rotationDeg }));
    expect(dustIn(places)).toEqual([]);
  });
});
