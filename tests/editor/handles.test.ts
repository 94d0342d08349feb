import { describe, expect, it } from 'vitest';
import { handlesFor } from '../../src/editor';
import type { Point3 } from '../../src/geometry';
import { edit, freeTable, type Plan, tableLength } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at, Driver, SCALE } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

/** Chooses a thing and drags one of its handles by so much. */
function pull(plan: Plan, id: string, handle: string, dx: number, dy: number, options = { alt: true }) {
  const grip = handlesFor(deriveScene(plan), id, SCALE).find((item) => item.id === handle);
  if (grip === undefined) throw new Error(`${id} has no handle ${handle}`);
  const driver = new Driver(plan);
  driver.state = { ...driver.state, selection: [id] };
  return driver.drag(grip.point, at(grip.point.x + dx, grip.point.y + dy), options);
}

const freed = (plan: Plan) => edit(plan, 'free', freeTable('soiled-table')).plan;
const room = withThing(emptyPlan());
const thing = (plan: Plan) => plan.things[0];
const soiled = (plan: Plan) => plan.tables[0]!;

describe('handles', () => {
  it.each([
    { id: 'machine', plan: straightPlan(), handles: ['rotate'] },
    { id: 'soiled-table', plan: straightPlan(), handles: ['leg-0'] },
    { id: 'soiled-table', plan: freed(straightPlan()), handles: ['leg-0', 'start', 'rotate'] },
    { id: 'pre-rinse', plan: straightPlan(), handles: ['from', 'to'] },
    {
      id: 'hood',
      plan: straightPlan(),
      handles: ['left', 'right', 'back', 'front', 'left-back', 'right-back', 'right-front', 'left-front', 'rotate'],
    },
    { id: 'run', plan: straightPlan('direct-vent'), handles: ['point-0', 'point-1', 'fan'] },
    { id: 'wall-1', plan: emptyPlan(), handles: ['corner-wall-1', 'corner-wall-2'] },
    { id: 'door-1', plan: emptyPlan(), handles: ['from', 'to'] },
  ])('$id has $handles', ({ id, plan, handles }) => {
    expect(handlesFor(deriveScene(plan), id, SCALE).map((handle) => handle.id)).toEqual(handles);
  });

  it.each([
    { handle: 'right', dx: 120, dy: 70, gives: { x: 2060, y: 3500, width: 920, depth: 500 } },
    { handle: 'left', dx: 120, dy: 0, gives: { x: 2060, width: 680 } },
    { handle: 'front', dx: 5, dy: 100, gives: { y: 3550, depth: 600 } },
    { handle: 'left-back', dx: -100, dy: -50, gives: { x: 1950, y: 3475, width: 900, depth: 550 } },
    { handle: 'right', dx: -2000, dy: 0, gives: { width: 10 } },
  ])('the $handle edge of a thing moves by ($dx, $dy); the opposite one stays', ({ handle, dx, dy, gives }) => {
    const after = pull(room, 'cart-1', handle, dx, dy).plan;
    expect(thing(after)).toMatchObject(gives);
  });

  it('an edge catches a wall', () => {
    const after = pull(room, 'cart-1', 'left', -1590, 0, { alt: false }).plan;
    expect((thing(after)?.x ?? 0) - (thing(after)?.width ?? 0) / 2).toBeCloseTo(0, 9);
  });

  it('a size keeps to whole inches at this zoom', () => {
    const width = thing(pull(room, 'cart-1', 'right', 107, 0, { alt: false }).plan)?.width ?? 0;
    expect(width / 25.4).toBeCloseTo(36, 9);
  });

  it('the end of a table changes its length; fittings stay on it', () => {
    const plan = straightPlan();
    const before = tableLength(soiled(plan));
    expect(tableLength(soiled(pull(plan, 'soiled-table', 'leg-0', -100, 40).plan))).toBeCloseTo(before + 100, 6);
    const short = soiled(pull(plan, 'soiled-table', 'leg-0', 900, 0).plan);
    expect(tableLength(short)).toBeCloseTo(before - 900, 6);
    expect(short.fittings.every(({ at: centre, length }) => centre + length / 2 <= tableLength(short) + 1e-6)).toBe(true);
  });

  it('the end of a table catches the wall before it', () => {
    const plan = straightPlan();
    const start = deriveScene(plan).tables[0]?.path[0]?.x ?? 0;
    const length = tableLength(
      soiled(pull(plan, 'soiled-table', 'leg-0', -(start - tableLength(soiled(plan)) - 20), 0, { alt: false }).plan),
    );
    expect(length).toBeCloseTo(start, 6);
  });

  it('a turn moves along the leg before it, and what lies beyond goes along', () => {
    const plan = edit(straightPlan(), 'turn', (draft) => void soiled(draft).legs.push({ length: 800, turnDeg: -90 })).plan;
    const first = soiled(plan).legs[0]?.length ?? 0;
    const after = soiled(pull(plan, 'soiled-table', 'leg-0', 100, 0).plan);
    expect(after.legs[0]?.length).toBeCloseTo(first - 100, 6);
    expect(after.legs[1]?.length).toBe(800);
  });

  it('the start of a free table moves; its end and its fittings stay in the room', () => {
    const plan = freed(straightPlan());
    const before = deriveScene(plan).tables[0]!;
    const after = deriveScene(pull(plan, 'soiled-table', 'start', 200, 0).plan).tables[0]!;
    expect(after.length).toBeCloseTo(before.length + 200, 6);
    expect(after.path.at(-1)).toEqual({ x: expect.closeTo(before.path.at(-1)!.x, 6), y: expect.closeTo(before.path.at(-1)!.y, 6) });
    expect(after.fittings[1]?.centre.x).toBeCloseTo(before.fittings[1]!.centre.x, 6);
  });

  // The wall runs toward −x, so that +x is back along it.
  it.each([
    { handle: 'from', dx: 100, from: 900, width: 1014 },
    { handle: 'from', dx: -100, from: 1100, width: 814 },
    { handle: 'to', dx: -100, from: 1000, width: 1014 },
    { handle: 'to', dx: 2000, from: 1000, width: 50 },
  ])('an edge of a door: $handle by $dx', ({ handle, dx, from, width }) => {
    const door = pull(emptyPlan(), 'door-1', handle, dx, 0).plan.room.openings[0];
    expect(door?.from).toBeCloseTo(from, 6);
    expect(door?.width).toBeCloseTo(width, 6);
  });

  it('ends of a fitting', () => {
    const plan = straightPlan();
    const sink = (p: Plan) => soiled(p).fittings.find(({ id }) => id === 'pre-rinse')!;
    const after = sink(pull(plan, 'pre-rinse', 'to', -60, 0).plan);
    expect(after.length).toBeCloseTo(sink(plan).length + 60, 6);
    expect(after.at - after.length / 2).toBeCloseTo(sink(plan).at - sink(plan).length / 2, 6);
  });

  it('a point of a run moves over the paper and keeps its height', () => {
    const plan = straightPlan('direct-vent');
    const [, before] = plan.runs[0]!.points;
    const [, after] = pull(plan, 'run', 'point-1', 300, 0).plan.runs[0]!.points;
    expect(after).toEqual({ x: expect.closeTo(before!.x + 300, 6), y: before!.y, z: before!.z });
  });

  it('the fan slides along its run', () => {
    const plan = edit(straightPlan('direct-vent'), 'fan', (draft) => {
      const fan = draft.runs[0]?.fan;
      const scene = deriveScene(straightPlan('direct-vent')).runs[0]!;
      if (fan) fan.at = scene.length - 300;
    }).plan;
    const before = plan.runs[0]!.fan!.at;
    // The leg falls a little: what is pulled is seen from above, in thousandths of a millimetre, the fan's place is along the run.
    const [from, to] = plan.runs[0]!.points.slice(-2) as [Point3, Point3];
    const along = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z) / Math.hypot(to.x - from.x, to.y - from.y);
    expect(along).toBeGreaterThan(1);
    expect(pull(plan, 'run', 'fan', 0, 100).plan.runs[0]!.fan!.at).toBeCloseTo(before - 100 * along, 3);
  });

  it('a corner dropped on its neighbour goes', () => {
    const plan = edit(emptyPlan(), 'notch', (draft) => draft.room.outline.splice(1, 0, { id: 'wall-5', x: 4000, y: 0 })).plan;
    const after = pull(plan, 'wall-5', 'corner-wall-5', 3990, 10, { alt: false }).plan;
    expect(after.room.outline.map(({ id }) => id)).toEqual(['wall-1', 'wall-2', 'wall-3', 'wall-4']);
  });

  it('a corner catches a right angle', () => {
    const after = pull(emptyPlan(), 'wall-1', 'corner-wall-2', 1010, 25, { alt: false }).plan;
    expect(after.room.outline[1]?.y).toBe(0);
    expect((after.room.outline[1]?.x ?? 0) / 25.4).toBeCloseTo(Math.round((after.room.outline[1]?.x ?? 0) / 25.4), 9);
  });

  it('walls that would cross keep the last sound place', () => {
    const driver = pull(emptyPlan(), 'wall-1', 'corner-wall-2', -1000, 0);
    const crossed = new Driver(driver.plan);
    crossed.state = { ...crossed.state, selection: ['wall-1'] };
    crossed.down(at(7000, 0)).move(at(3000, 500), { alt: true }).move(at(7500, 7000), { alt: true }).up(at(7500, 7000), { alt: true });
    expect(crossed.plan.room.outline[1]).toMatchObject({ x: 3000, y: 500 });
  });
});
