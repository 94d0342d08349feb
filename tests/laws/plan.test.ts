import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createHistory,
  edit,
  type History,
  parsePlan,
  push,
  redo,
  renderPlanText,
  transformPlan,
  tryEdit,
  undo,
  validatePlan,
} from '../../src/plan';
import { type ArbitraryEdit, arbitraryEdit, arbitraryLine, arbitraryPlan } from './arbitraryPlan';

const edits = fc.array(arbitraryEdit, { minLength: 1, maxLength: 12 });

/** Records an edit; one that would be refused leaves the history as it is. */
function act(history: History, { name, make }: ArbitraryEdit): History {
  const result = tryEdit(history.present, name, make(history.present));
  return result.ok ? push(history, result.transaction) : history;
}

const repeat = (times: number, change: (history: History) => History, history: History) =>
  Array.from({ length: times }).reduce<History>(change, history);

describe('laws of the plan, on seeded random plans', () => {
  it('undoing everything restores the first plan, redoing everything the last', () => {
    fc.assert(
      fc.property(arbitraryLine, edits, (line, list) => {
        const done = list.reduce(act, createHistory(line));
        const undone = repeat(done.past.length, undo, done);
        expect(undone.present).toEqual(line);
        expect(undone.past).toEqual([]);
        expect(repeat(done.past.length, redo, undone)).toEqual(done);
      }),
      { seed: 2101, numRuns: 150 },
    );
  });

  it('every edit keeps the form of the plan, and what it refuses it can name', () => {
    fc.assert(
      fc.property(arbitraryPlan, arbitraryEdit, (plan, { name, make }) => {
        const result = tryEdit(plan, name, make(plan));
        const code = result.ok ? null : result.problem.code;
        // Only the room can be edited into something that is no room.
        expect([null, 'walls-cross', 'wall-too-short', 'no-area', 'opening-off-wall', 'openings-overlap', 'out-of-range']).toContain(code);
      }),
      { seed: 2102, numRuns: 400 },
    );
  });

  it('an edit leaves the plan that it was given as it was', () => {
    fc.assert(
      fc.property(arbitraryPlan, arbitraryEdit, (plan, { name, make }) => {
        const before = JSON.stringify(plan);
        edit(plan, name, make(plan));
        expect(JSON.stringify(plan)).toBe(before);
      }),
      { seed: 2103, numRuns: 150 },
    );
  });

  it('what was written reads back as the same plan, and writes as the same bytes', () => {
    fc.assert(
      fc.property(arbitraryPlan, (plan) => {
        const text = renderPlanText(plan);
        const read = parsePlan(text);
        expect(read).toEqual({ ok: true, plan, migratedFrom: null });
        expect(read.ok && renderPlanText(read.plan)).toBe(text);
      }),
      { seed: 2104, numRuns: 150 },
    );
  });

  it('moved, turned or mirrored, a sound plan is sound', () => {
    const transform = fc.record({
      mirror: fc.boolean(),
      rotateDeg: fc.integer({ min: -360, max: 360 }),
      move: fc.record({ x: fc.integer({ min: -9000, max: 9000 }), y: fc.integer({ min: -9000, max: 9000 }) }),
    });
    fc.assert(
      fc.property(arbitraryPlan, transform, (plan, motion) => {
        expect(validatePlan(transformPlan(plan, motion))).toBeNull();
      }),
      { seed: 2105, numRuns: 150 },
    );
  });

  it('a broken text is refused or read, never thrown over', () => {
    fc.assert(
      fc.property(arbitraryLine, fc.nat(), fc.nat(30), fc.string({ maxLength: 6 }), (plan, at, cut, put) => {
        const text = renderPlanText(plan);
        const from = at % text.length;
        const result = parsePlan(text.slice(0, from) + put + text.slice(from + cut));
        expect(result.ok || result.problem.reason !== '').toBe(true);
      }),
      { seed: 2106, numRuns: 400 },
    );
  });
});
