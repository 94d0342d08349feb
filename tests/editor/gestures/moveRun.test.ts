import { describe, expect, it } from 'vitest';
import { collarOf, ductExits, runLines } from '../../../src/editor/gestures/moveRun';
import { edit, type Plan } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { straightPlan } from '../plans';
import { pull } from '../pulls';

type Points = Plan['runs'][number]['points'];

/** The collar lies at (4000, 594.5), 1930 high. */
const runThrough = (points: Points, more: (draft: Plan) => void = () => {}): Plan =>
  edit(straightPlan('direct-vent'), 'run', (draft) => {
    draft.runs[0]!.points = points;
    more(draft);
  }).plan;
/** Up, back over 1000 mm, to the left over 2000 mm. */
const plan = runThrough([
  { x: 4000, y: 594.5, z: 2600 },
  { x: 4000, y: 1594.5, z: 2600 },
  { x: 2000, y: 1594.5, z: 2600 },
]);
const withExit = runThrough(plan.runs[0]!.points, (draft) => {
  draft.room.stubs.push(
    { id: 'exit', kind: 'duct-exit', x: 1000, y: 3000, z: 2750 },
    { id: 'water', kind: 'cold-water', x: 500, y: 500, z: 400 },
  );
});
const drag = (index: number, dx: number, dy: number, options = {}, of = plan) => {
  const result = pull(of, { id: 'run', handle: `point-${index}` }, dx, dy, options);
  return { ...result, point: result.plan.runs[0]!.points[index] };
};

describe('a point of a run', () => {
  it.each([
    { name: 'stays straight before its neighbour', index: 2, by: at(300, 20), options: {}, gives: { x: 2300, y: 1594.5, z: 2600 } },
    { name: 'free beyond the reach', index: 2, by: at(300, 31), options: {}, gives: { x: 2300, y: 1625.5, z: 2600 } },
    { name: 'in steps from its neighbour', index: 2, by: at(312, 20), options: { step: 50 }, gives: { x: 2300, y: 1594.5, z: 2600 } },
    { name: 'at half a right angle to its neighbour', index: 2, by: at(1000, 990), options: {}, gives: { x: 3005, y: 2589.5, z: 2600 } },
    { name: 'free with alt', index: 2, by: at(300, 20), options: { isFree: true }, gives: { x: 2300, y: 1614.5, z: 2600 } },
    { name: 'square between its neighbours', index: 1, by: at(20, -15), options: {}, gives: { x: 4000, y: 1594.5, z: 2600 } },
    { name: 'straight on from the last', index: 1, by: at(-500, 12), options: {}, gives: { x: 3500, y: 1594.5, z: 2600 } },
    { name: 'the first stays over the collar', index: 0, by: at(20, -10), options: {}, gives: { x: 4000, y: 594.5, z: 2600 } },
  ])('$name', ({ index, by, options, gives }) => {
    expect(drag(index, by.x, by.y, options).point).toEqual(nearly(gives));
  });

  it('is caught by a duct exit, and keeps its height', () => {
    expect(drag(2, -1018, 1405.5 - 24, {}, withExit).point).toEqual(nearly({ x: 1000, y: 3000, z: 2600 }));
    // In line with the exit, 2000 mm to the right of it.
    expect(drag(2, 1000, 1405.5 - 12, {}, withExit).point).toEqual(nearly({ x: 3000, y: 3000, z: 2600 }));
  });

  it('reads the legs on both sides, where they have a length', () => {
    const { readouts, label, guides } = drag(1, -500, 0, { isFree: true });
    expect(label).toBe('Move point of duct run');
    expect(guides).toEqual([]);
    expect(readouts).toEqual(
      nearly([
        { kind: 'length', from: at(4000, 594.5), to: at(3500, 1594.5), value: Math.sqrt(1_250_000) },
        { kind: 'length', from: at(2000, 1594.5), to: at(3500, 1594.5), value: 1500 },
      ]),
    );
    // The first stands over the collar; moved off it, the riser leans.
    expect(drag(0, 0, 0, { isFree: true }).readouts?.map(({ value }) => value)).toEqual([1000]);
    expect(drag(0, 300, 0, { isFree: true }).readouts?.map(({ value }) => value)).toEqual(nearly([300, Math.sqrt(1_090_000)]));
    expect(drag(2, 300, 20).guides).toMatchObject(nearly([{ kind: 'square', from: at(4000, 1594.5), to: at(2300, 1594.5) }]));
  });

  it('one that is not there moves nothing', () => {
    const result = pull(plan, { id: 'run', handle: 'point-7' }, 100, 100);
    expect(result.plan.runs).toEqual(plan.runs);
    expect(result.label).toBe('Move duct run');
  });
});

describe('the lines that a run keeps to', () => {
  it('lie square and at 45° to its machine', () => {
    const turned = edit(plan, 'turn', (draft) => void (draft.machines[0]!.rotationDeg = 30)).plan;
    const angles = (lines: ReturnType<typeof runLines>) =>
      lines.map(({ direction: { x, y } }) => Math.round((Math.atan2(y, x) * 180) / Math.PI));
    expect(angles(runLines(deriveScene(turned), 'machine', [at(0, 0)]))).toEqual([30, 120, 75, -15]);
    expect(angles(runLines(deriveScene(turned), 'nobody', [at(0, 0)]))).toEqual([0, 90, 45, -45]);
    expect(runLines(deriveScene(withExit), 'machine', [at(0, 0)]).map(({ kind }) => kind)).toEqual([
      'square',
      'square',
      'square',
      'square',
      'aligned',
      'aligned',
    ]);
  });

  it('begin at the collar and end at the duct exits', () => {
    expect(collarOf(deriveScene(plan), 'machine')).toEqual(nearly({ x: 4000, y: 594.5, z: 1930 }));
    expect(collarOf(deriveScene(plan), 'nobody')).toBeNull();
    expect(collarOf(deriveScene(straightPlan()), 'machine')).toBeNull();
    expect(ductExits(withExit)).toEqual([at(1000, 3000)]);
  });
});

describe('the fan of a run', () => {
  // A riser of 670 from the collar, then 1000 back and 2000 to the left.
  it.each([
    { name: 'on the first leg', to: at(4020, 994.5), step: 0, gives: 1070 },
    { name: 'on the second leg', to: at(3000, 1700), step: 0, gives: 2670 },
    { name: 'by steps', to: at(3000, 1700), step: 50, gives: 2650 },
    { name: 'never past the end', to: at(0, 1600), step: 0, gives: 3670 },
    { name: 'never past the end by a step', to: at(0, 1600), step: 100, gives: 3670 },
    { name: 'never on the riser', to: at(4000, 0), step: 0, gives: 670 },
    { name: 'at the turn', to: at(4300, 1900), step: 0, gives: 1670 },
  ])('$name', ({ to, step, gives }) => {
    const result = pull(plan, { id: 'run', handle: 'fan' }, to.x, to.y, { step });
    expect(result.plan.runs[0]?.fan?.at).toBeCloseTo(gives, 8);
    expect(result.label).toBe('Move fan');
  });

  it('none stays none', () => {
    const without = edit(plan, 'none', (draft) => void (draft.runs[0]!.fan = null)).plan;
    expect(pull(without, { id: 'run', handle: 'fan' }, 4000, 900).plan.runs[0]?.fan).toBeNull();
  });
});
