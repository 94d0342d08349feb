import { describe, expect, it } from 'vitest';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { cornerPlan, emptyPlan, straightPlan, withThing } from './plans';

describe('choosing', () => {
  it.each([
    { name: 'a machine', point: at(4000, 800), id: 'machine' },
    { name: 'a thing', point: at(2000, 3500), id: 'cart-1' },
    { name: 'a wall', point: at(10, 3000), id: 'wall-4' },
  ])('a press on $name chooses it', ({ point, id }) => {
    const driver = new Driver(withThing(straightPlan())).press(point);
    expect(driver.state.selection).toEqual([id]);
    expect(driver.path).toEqual(['select/idle', 'select/pressed', 'select/idle']);
    expect(driver.labels).toEqual([]);
  });

  it('a press on the bare floor lets go', () => {
    const driver = new Driver(withThing(straightPlan())).press(at(2000, 3500)).press(at(5000, 4500));
    expect(driver.state.selection).toEqual([]);
  });

  it('pressing the same place again goes down to what lies below, and round again', () => {
    const driver = new Driver(straightPlan());
    const landing = at(4000 - 400 - 500, 800);
    const seen = [0, 1, 2].map(() => driver.press(landing).state.selection[0]);
    expect(seen[0]).toBe('soiled-landing');
    expect(seen[1]).toBe('soiled-table');
    expect(seen[2]).toBe('soiled-landing');
  });

  it('shift adds and takes away', () => {
    const driver = new Driver(withThing(straightPlan())).press(at(2000, 3500)).press(at(4000, 800), { shift: true });
    expect(driver.state.selection).toEqual(['cart-1', 'machine']);
    expect(driver.press(at(2000, 3500), { shift: true }).state.selection).toEqual(['machine']);
  });

  it('a frame drawn on the floor takes what lies wholly inside', () => {
    const driver = new Driver(withThing(withThing(straightPlan()), { id: 'cart-2', x: 3500 }));
    driver.down(at(1400, 3000)).move(at(3000, 4200));
    expect(driver.state.selection).toEqual(['cart-1']);
    expect(driver.state.preview?.box).toEqual({ from: at(1400, 3000), to: at(3000, 4200) });
    driver.move(at(4500, 4200)).up(at(4500, 4200));
    expect(driver.state.selection).toEqual(['cart-1', 'cart-2']);
    expect(driver.state.preview).toBeNull();
  });

  it('a finger slides the paper unless what it drags was chosen first', () => {
    const driver = new Driver(withThing(straightPlan()));
    driver.down(at(2000, 3500), { pointer: 'touch' }).move(at(2500, 3500), { pointer: 'touch' });
    expect(driver.labels).toEqual([]);
    expect(driver.state.view.dx).toBeCloseTo(100);
  });
});

describe('dragging', () => {
  it('less than 3 px is a press', () => {
    const driver = new Driver(withThing(straightPlan())).down(at(2000, 3500)).move(at(2012, 3500)).up(at(2012, 3500));
    expect(driver.labels).toEqual([]);
    expect(driver.path).not.toContain('select/dragging');
  });

  it('goes from idle over pressed to dragging and back, and commits one transaction', () => {
    const plan = withThing(emptyPlan());
    const driver = new Driver(plan).drag(at(2000, 3500), at(3010, 2500), { alt: true });
    expect(driver.path).toEqual(['select/idle', 'select/pressed', 'select/dragging', 'select/idle']);
    expect(driver.labels).toEqual(['Move cart']);
    expect(driver.plan.things[0]).toMatchObject({ x: 3010, y: 2500 });
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
    expect(driver.key('z', { ctrl: true, shift: true }).plan.things[0]).toMatchObject({ x: 3010, y: 2500 });
  });

  it.each([
    { name: 'Escape', act: (driver: Driver) => driver.key('Escape') },
    { name: 'a cancelled pointer', act: (driver: Driver) => driver.cancel() },
    { name: 'undo', act: (driver: Driver) => driver.key('z', { ctrl: true }) },
  ])('$name in the middle leaves the same plan', ({ act }) => {
    const plan = withThing(emptyPlan());
    const driver = new Driver(plan).down(at(2000, 3500)).move(at(3000, 3000));
    expect(driver.state.preview?.plan).not.toBe(plan);
    act(driver);
    expect(driver.plan).toBe(plan);
    expect(driver.state.preview).toBeNull();
    expect(driver.up(at(3000, 3000)).labels).toEqual([]);
  });

  it('shift keeps to one direction', () => {
    const driver = new Driver(withThing(emptyPlan())).drag(at(2000, 3500), at(3000, 3300), { shift: true, alt: true });
    expect(driver.plan.things[0]).toMatchObject({ x: 3000, y: 3500 });
  });

  it('a wall must be chosen before it is dragged', () => {
    const driver = new Driver(emptyPlan()).drag(at(0, 3000), at(500, 3000));
    expect(driver.labels).toEqual([]);
    driver.press(at(0, 3000)).drag(at(0, 3000), at(500, 3000), { alt: true });
    expect(driver.labels).toEqual(['Move wall 4']);
    expect(driver.plan.room.outline.map(({ x }) => x)).toEqual([500, 8000, 8000, 500]);
  });
});

describe('a machine', () => {
  it.each([
    { name: 'straight', plan: straightPlan(), centre: at(4000, 800) },
    { name: 'corner', plan: cornerPlan(), centre: at(5000, 800) },
  ])('takes its $name tables and its hood along, flush', ({ plan, centre }) => {
    const before = deriveScene(plan);
    const driver = new Driver(plan).drag(centre, at(centre.x - 210, centre.y + 930), { alt: true });
    const after = deriveScene(driver.plan);
    expect(driver.labels[0]).toMatch(/^Move /);
    expect(after.joints.map(({ gap, offset, angleDeg }) => [gap, offset, angleDeg].map((v) => Math.abs(v) < 1e-6))).toEqual([
      [true, true, true],
      [true, true, true],
    ]);
    expect(after.hoods[0]?.hood.x).toBeCloseTo((before.hoods[0]?.hood.x ?? 0) - 210);
    expect(after.hoods[0]?.hood.y).toBeCloseTo((before.hoods[0]?.hood.y ?? 0) + 930);
    expect(driver.plan.tables).toEqual(plan.tables);
  });

  it('reads its distances from the ends of its tables', () => {
    const plan = straightPlan();
    const [soiled, clean] = deriveScene(plan).tables;
    const driver = new Driver(plan).down(at(4000, 800)).move(at(4020, 1100), { alt: true });
    const values = driver.state.preview?.readouts.map(({ value }) => Math.round(value));
    expect(values).toContain(Math.round((soiled?.path.at(-1)?.x ?? 0) + 20));
    expect(values).toContain(Math.round(8000 - (clean?.path.at(-1)?.x ?? 0) - 20));
  });

  it('turns with its tables and its hood by R, a quarter clockwise, and back by shift R', () => {
    const plan = cornerPlan();
    const driver = new Driver(plan).press(at(5000, 800)).key('r');
    expect(driver.plan.machines[0]?.rotationDeg).toBe(90);
    expect(driver.plan.hoods[0]?.rotationDeg).toBe(90);
    expect(deriveScene(driver.plan).joints.every(({ gap }) => Math.abs(gap) < 1e-6)).toBe(true);
    driver.key('R', { shift: true });
    expect(driver.plan.machines[0]?.rotationDeg).toBe(0);
    expect(driver.plan.hoods[0]?.x).toBeCloseTo(plan.hoods[0]?.x ?? 0);
  });

  it('stretches its run: the riser goes along, the leg through the wall keeps its direction', () => {
    const line = straightPlan('direct-vent');
    const driver = new Driver(line).drag(at(4000, 800), at(4300, 1000), { alt: true });
    const [riser, exit] = driver.plan.runs[0]?.points ?? [];
    const [wasRiser, wasExit] = line.runs[0]?.points ?? [];
    expect(riser?.x).toBeCloseTo((wasRiser?.x ?? 0) + 300);
    expect(riser?.y).toBeCloseTo((wasRiser?.y ?? 0) + 200);
    // The leg runs toward −y, so its end goes along across, and stays where it was lengthways.
    expect(exit?.x).toBeCloseTo((wasExit?.x ?? 0) + 300);
    expect(exit?.y).toBeCloseTo(wasExit?.y ?? 0);
  });
});
