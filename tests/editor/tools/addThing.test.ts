import { describe, expect, it } from 'vitest';
import { cursorFor, hintOf, type ThingToAdd } from '../../../src/editor';
import { facingFrom } from '../../../src/editor/tools/facing';
import { edit, type Plan } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan } from '../plans';

/** A room of 8 × 5 m, in steps of 50 mm. */
const plan: Plan = edit(emptyPlan(), 'metric', (draft) => void (draft.settings.units = 'metric')).plan;
const add = (what: ThingToAdd, of = plan) => Driver.with(of, { tool: 'add-thing', add: what });
const thing = (kind: Plan['things'][number]['kind']): ThingToAdd => ({ kind: 'thing', thing: kind });

describe('a thing', () => {
  it.each([
    ['three-compartment-sink', 2286, 762, 914, 'none', 'Add three-compartment sink'],
    ['hand-sink', 432, 382, 864, 'none', 'Add hand sink'],
    ['shelving', 1219, 457, 1829, 'clean', 'Add shelving'],
    ['cart', 762, 508, 965, 'none', 'Add cart'],
    ['bin', 559, 559, 762, 'none', 'Add bin'],
    ['work-table', 1524, 762, 864, 'none', 'Add work table'],
    ['panel-board', 508, 146, 1829, 'none', 'Add panel board'],
    ['other', 610, 610, 914, 'none', 'Add thing'],
  ] as const)('%s is %d × %d × %d', (kind, width, depth, height, ware, label) => {
    const driver = add(thing(kind)).press(at(4013, 2512), { alt: true });
    expect(driver.plan.things).toMatchObject([{ kind, name: '', x: 4013, y: 2512, rotationDeg: 0, width, depth, height, ware }]);
    expect(driver.labels).toEqual([label]);
    expect(driver.state).toMatchObject({ selection: [driver.plan.things[0]?.id], handle: null, preview: null, tool: { tool: 'select' } });
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
  });

  it.each([
    // Caught by the wall within 45 mm, else in steps of 50 mm from it; along the wall in steps too.
    { name: 'the wall above', to: at(4000, 250), kind: 'shelving', turned: 0, place: at(3990.5, 228.5) },
    { name: 'the right wall', to: at(7760, 2500), kind: 'shelving', turned: 90, place: at(7771.5, 2509.5) },
    { name: 'the wall below', to: at(4000, 4780), kind: 'shelving', turned: 180, place: at(3990.5, 4771.5) },
    { name: 'the left wall', to: at(250, 2500), kind: 'hand-sink', turned: 270, place: at(241, 2516) },
    { name: 'a wall 600 before its back', to: at(828.5, 2500), kind: 'shelving', turned: 270, place: at(828.5, 2509.5) },
    { name: 'no wall farther off', to: at(829.5, 2500), kind: 'shelving', turned: 0, place: at(809.5, 2478.5) },
    { name: 'no wall, for a cart', to: at(390, 2500), kind: 'cart', turned: 0, place: at(381, 2504) },
  ] as const)('turns its back to $name', ({ to, kind, turned, place }) => {
    const [placed] = add(thing(kind)).press(to).plan.things;
    expect(placed).toMatchObject(nearly({ ...place, rotationDeg: turned }));
  });

  it('with alt turns to no wall and catches none', () => {
    expect(add(thing('shelving')).press(at(4000, 250), { alt: true }).plan.things[0]).toMatchObject({ rotationDeg: 0, x: 4000, y: 250 });
    expect(add(thing('shelving')).press(at(250, 2500), { alt: true }).plan.things[0]).toMatchObject({ rotationDeg: 0, x: 250 });
  });

  it('is caught by the wall behind it, and shows it', () => {
    const driver = add(thing('shelving')).move(at(4000, 250));
    expect(driver.state.preview?.plan.things[0]?.y).toBeCloseTo(228.5, 8);
    expect(driver.state.preview?.guides.map(({ kind }) => kind)).toContain('flush');
    expect(driver.state.preview?.readouts.length).toBe(3);
  });

  it.each([
    { keys: [['r', false]], turned: 90 },
    { keys: [['R', true]], turned: 270 },
    {
      keys: [
        ['r', false],
        ['r', false],
        ['r', false],
        ['r', false],
        ['r', false],
      ],
      turned: 90,
    },
    { keys: [['x', false]], turned: 0 },
  ] as const)('$keys turn it to $turned°', ({ keys, turned }) => {
    const driver = add(thing('cart')).move(at(4000, 2500));
    for (const [name, shift] of keys) driver.key(name, { shift });
    expect(driver.press(at(4000, 2500)).plan.things[0]?.rotationDeg).toBe(turned);
    // From the wall on, where it turns to one.
    const wall = add(thing('shelving'));
    for (const [name, shift] of keys) wall.key(name, { shift });
    expect(wall.press(at(250, 2500)).plan.things[0]?.rotationDeg).toBe((270 + turned) % 360);
  });

  it('R with ctrl is not for it', () => {
    expect(add(thing('cart')).key('r', { ctrl: true }).state.tool).toMatchObject({ turns: 0 });
  });

  it('with shift it stays in hand, and the last one is chosen', () => {
    const driver = add(thing('cart')).press(at(2000, 2500), { shift: true });
    expect(driver.state.tool).toMatchObject({ tool: 'add-thing', name: 'idle' });
    expect(driver.state.selection).toEqual([driver.plan.things[0]?.id]);
  });

  it('says what it waits for', () => {
    expect(hintOf(add(thing('work-table')).state.tool)).toBe(
      'Press where the work table goes. R turns it; shift keeps the tool for another.',
    );
    expect(hintOf(add({ kind: 'column' }).state.tool)).toContain('the column goes');
    expect(hintOf(add({ kind: 'stub', stub: 'cold-water' }).state.tool)).toContain('the cold water goes');
    expect(cursorFor(add(thing('cart')).state)).toBe('crosshair');
  });

  it('Escape first drops what is shown', () => {
    const driver = add(thing('cart')).move(at(4000, 2500)).cancel();
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'add-thing', name: 'idle' } });
  });
});

describe('what belongs to the room', () => {
  const low = edit(plan, 'low', (draft) => void (draft.room.ceilingHeight = 2400)).plan;
  const open = edit(plan, 'open', (draft) => void (draft.room.ceilingHeight = null)).plan;
  it.each<{ what: ThingToAdd; of: Plan; list: 'columns' | 'floorDrains' | 'stubs'; gives: object; label: string }>([
    { what: { kind: 'column' }, of: plan, list: 'columns', gives: { width: 305, depth: 305, rotationDeg: 0 }, label: 'Add column' },
    {
      what: { kind: 'floor-drain', drain: 'floor-drain' },
      of: plan,
      list: 'floorDrains',
      gives: { kind: 'floor-drain', size: 203 },
      label: 'Add floor drain',
    },
    {
      what: { kind: 'floor-drain', drain: 'floor-sink' },
      of: plan,
      list: 'floorDrains',
      gives: { kind: 'floor-sink', size: 305 },
      label: 'Add floor sink',
    },
    { what: { kind: 'stub', stub: 'cold-water' }, of: plan, list: 'stubs', gives: { z: 457 }, label: 'Add cold water' },
    { what: { kind: 'stub', stub: 'hot-water' }, of: plan, list: 'stubs', gives: { z: 457 }, label: 'Add hot water' },
    { what: { kind: 'stub', stub: 'power' }, of: plan, list: 'stubs', gives: { z: 1219 }, label: 'Add power' },
    { what: { kind: 'stub', stub: 'duct-exit' }, of: open, list: 'stubs', gives: { z: 2591 }, label: 'Add duct exit' },
    { what: { kind: 'stub', stub: 'duct-exit' }, of: low, list: 'stubs', gives: { z: 2400 }, label: 'Add duct exit' },
  ])('$label', ({ what, of, list, gives, label }) => {
    const driver = add(what, of).press(at(4013, 2512), { alt: true });
    expect(driver.plan.room[list]).toMatchObject([{ x: 4013, y: 2512, ...gives }]);
    expect(driver.labels).toEqual([label]);
  });

  it('a stub is caught by the wall itself', () => {
    const [stub] = add({ kind: 'stub', stub: 'power' }).press(at(20, 2500)).plan.room.stubs;
    expect(stub?.x).toBeCloseTo(0, 8);
  });
});

describe('which way a thing looks', () => {
  const scene = deriveScene(plan);
  it.each([
    [at(4000, 800), 400, 0],
    [at(4000, 801), 400, 0],
    [at(7200, 2500), 400, 90],
    [at(7199, 2500), 400, 0],
    [at(4000, 4200), 400, 180],
    [at(800, 2500), 400, 270],
    [at(700, 2500), 198, 0],
    [at(700, 2500), 200, 270],
  ])('at %o, %d deep: %d°', (place, depth, deg) => {
    expect(facingFrom(scene, place, depth)).toBe(deg);
  });
});
