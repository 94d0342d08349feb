import { describe, expect, it } from 'vitest';
import { hintOf, TOOLS, type ToolChoice } from '../../src/editor';
import { parsePlan, renderPlanText, tableLength } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

const isSound = (driver: Driver) => parsePlan(renderPlanText(driver.plan)).ok;

describe('every tool', () => {
  const choices: ToolChoice[] = [
    { tool: 'select' },
    { tool: 'move-wall' },
    { tool: 'draw-room' },
    { tool: 'add-opening', kind: 'door' },
    { tool: 'add-table', role: 'clean' },
    { tool: 'add-thing', add: { kind: 'column' } },
    { tool: 'place-machine', sheet: 'tall-door' },
    { tool: 'draw-run' },
    { tool: 'add-hood' },
    { tool: 'pan' },
    { tool: 'measure' },
  ];

  it('is in the registry, and in this table', () => {
    expect(TOOLS.map(({ id }) => id).sort()).toEqual(choices.map(({ tool }) => tool).sort());
    expect(TOOLS.every(({ name }) => name.length > 0)).toBe(true);
  });

  it.each(choices.map((choice) => ({ choice })))(
    '$choice.tool says what it waits for; Escape drops what it began, then the tool',
    ({ choice }) => {
      const plan = straightPlan();
      const driver = Driver.with(plan, choice);
      expect(hintOf(driver.state.tool)).not.toBe('');
      driver.move(at(4000, 800)).down(at(4000, 800)).move(at(4300, 900));
      expect(hintOf(driver.state.tool)).not.toBe('');
      driver.key('Escape');
      expect(driver.plan).toBe(plan);
      expect(driver.state.preview?.transaction ?? null).toBeNull();
      driver.key('Escape');
      expect(driver.state.tool).toMatchObject({ tool: 'select', name: 'idle' });
      expect(driver.plan).toBe(plan);
    },
  );
});

describe('the pointer leaves the canvas', () => {
  it.each<{ choice: ToolChoice; over: [number, number] }>([
    { choice: { tool: 'add-thing', add: { kind: 'thing', thing: 'cart' } }, over: [2000, 3500] },
    { choice: { tool: 'add-opening', kind: 'window' }, over: [4000, 20] },
    { choice: { tool: 'place-machine', sheet: 'tall-door' }, over: [2000, 3500] },
    { choice: { tool: 'add-hood' }, over: [2000, 3500] },
  ])('what $choice.tool would add is no longer shown; the tool stays in hand', ({ choice, over: [x, y] }) => {
    const plan = straightPlan();
    const driver = Driver.with(plan, choice).move(at(x, y));
    expect(driver.state.preview?.transaction?.patches).not.toEqual([]);
    driver.leave();
    expect(driver.state.preview).toBeNull();
    expect(driver.state.tool).toMatchObject({ tool: choice.tool, name: 'idle' });
    expect(driver.plan).toBe(plan);
    driver.move(at(x, y));
    expect(driver.state.preview?.transaction).toBeTruthy();
  });

  it('walls that were begun stay begun, and what was measured stays measured', () => {
    const walls = Driver.with(emptyPlan(), { tool: 'draw-room' }).press(at(0, 0)).press(at(5000, 0)).leave();
    expect(walls.state.tool).toMatchObject({ name: 'chaining' });
    const measured = Driver.with(emptyPlan(), { tool: 'measure' }).press(at(0, 0)).press(at(5000, 0)).leave();
    expect(measured.state.preview?.readouts[0]).toMatchObject({ kind: 'length', value: 5000 });
  });

  it('nothing is under the pointer any more, and a second time changes nothing', () => {
    const driver = new Driver(withThing(emptyPlan())).move(at(2000, 3500));
    expect(driver.state.hover).toBe('cart-1');
    const { state } = driver.leave();
    expect(state.hover).toBeNull();
    expect(driver.leave().state).toBe(state);
  });
});

describe('drawing the walls', () => {
  it('a drag makes a rectangle, in whole inches at this zoom', () => {
    const driver = Driver.with(straightPlan(), { tool: 'draw-room' }).drag(at(0, 0), at(6003, 4001));
    expect(driver.path).toEqual(['draw-room/idle', 'draw-room/pressed', 'draw-room/stretching', 'select/idle']);
    expect(driver.labels).toEqual(['Draw the walls']);
    expect(driver.plan.room.outline.map(({ x, y }) => [x / 25.4, y / 25.4].map((v) => Math.round(v * 1e6) / 1e6))).toEqual([
      [0, 0],
      [236, 0],
      [236, 158],
      [0, 158],
    ]);
  });

  it('presses make corner after corner, square; the first corner closes', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'draw-room' })
      .press(at(0, 0))
      .press(at(5000, 60))
      .press(at(5030, 3000))
      .press(at(20, 2980))
      .press(at(10, 10));
    const outline = driver.plan.room.outline;
    expect(driver.path.at(-1)).toBe('select/idle');
    expect(outline).toHaveLength(4);
    expect(outline[0]?.y).toBe(outline[1]?.y);
    expect(outline[1]?.x).toBeCloseTo(outline[2]?.x ?? 0, 9);
    expect(driver.state.message?.text).toContain('doors and windows');
    expect(isSound(driver)).toBe(true);
  });

  it('a length can be typed for each wall, as people type it', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'draw-room' }).press(at(0, 0)).move(at(3000, 0)).type(`12' 6 1/2"`).key('Enter');
    driver.move(at(3823, 900)).type('2400mm').key('Enter').move(at(1000, 2400)).press(at(0, 2400)).key('Enter');
    expect(driver.plan.room.outline.slice(0, 3).map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [expect.closeTo(3822.7, 6), 0],
      [expect.closeTo(3822.7, 6), 2400],
    ]);
  });

  it('walls that cross are refused, and the room stays', () => {
    const plan = emptyPlan();
    const driver = Driver.with(plan, { tool: 'draw-room' });
    for (const corner of [at(0, 0), at(3000, 0), at(0, 2000), at(3000, 2000)]) driver.press(corner, { alt: true });
    driver.key('Enter');
    expect(driver.plan).toBe(plan);
    expect(driver.state.message?.tone).toBe('refused');
  });
});

describe('moving walls', () => {
  it('drags a wall at once; its neighbours keep their directions, its door its place', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'move-wall' }).drag(at(4000, 5000), at(4000, 4500), { alt: true });
    expect(driver.path).toEqual(['move-wall/idle', 'move-wall/pressed', 'move-wall/dragging', 'move-wall/idle']);
    expect(driver.plan.room.outline.map(({ y }) => y)).toEqual([0, 0, 4500, 4500]);
    expect(driver.plan.room.openings[0]?.from).toBe(1000);
  });

  it('two presses put a corner into a wall', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'move-wall' }).press(at(3000, 5)).press(at(3000, 5)).send('double', at(3000, 5));
    expect(driver.labels).toEqual(['Add corner']);
    expect(driver.plan.room.outline[1]).toMatchObject({ x: 3000, y: 0 });
  });
});

describe('openings', () => {
  it.each([
    { name: 'at the end of the wall', point: at(7560, 20), from: 7086 },
    { name: 'in the middle', point: at(4010, -10), from: 3543 },
  ])('a door $name', ({ point, from }) => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-opening', kind: 'door' }).move(point).down(point).up(point);
    expect(driver.plan.room.openings[1]).toMatchObject({ wall: 'wall-1', from: expect.closeTo(from, 6), width: 914 });
    expect(driver.state.selection).toEqual([driver.plan.room.openings[1]?.id]);
    expect(driver.state.tool.tool).toBe('select');
  });

  it('shows nothing away from walls, and none over another door', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-opening', kind: 'door' }).move(at(4000, 2500));
    expect(driver.state.preview).toBeNull();
    driver.move(at(8000 - 1457, 5000));
    expect(driver.state.preview).toBeNull();
  });
});

describe('things', () => {
  it('turns its back to the wall beside it, flush', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-thing', add: { kind: 'thing', thing: 'shelving' } }).press(at(250, 2500));
    const [shelf] = driver.plan.things;
    expect(shelf?.rotationDeg).toBe(270);
    expect(shelf?.x).toBeCloseTo((shelf?.depth ?? 0) / 2, 6);
    expect(driver.state.selection).toEqual([shelf?.id]);
  });

  it('R turns it before it is put down; shift keeps the tool for another', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-thing', add: { kind: 'thing', thing: 'cart' } })
      .move(at(4000, 2500))
      .key('r');
    driver.press(at(4000, 2500), { shift: true });
    expect(driver.plan.things[0]?.rotationDeg).toBe(90);
    expect(driver.state.tool.tool).toBe('add-thing');
    driver.press(at(6000, 2500));
    expect(driver.plan.things).toHaveLength(2);
    expect(driver.state.tool.tool).toBe('select');
  });

  it.each([
    { add: { kind: 'column' } as const, list: 'columns' as const },
    { add: { kind: 'floor-drain', drain: 'floor-sink' } as const, list: 'floorDrains' as const },
    { add: { kind: 'stub', stub: 'duct-exit' } as const, list: 'stubs' as const },
  ])('$add.kind', ({ add, list }) => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-thing', add }).press(at(4000, 2500));
    expect(driver.plan.room[list]).toHaveLength(1);
    expect(isSound(driver)).toBe(true);
  });
});

describe('the machine', () => {
  it('stands with its back to the wall, as far off as its service needs', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'place-machine', sheet: 'tall-door' }).press(at(4000, 380));
    const [machine] = driver.plan.machines;
    expect(machine).toMatchObject({ sheet: 'tall-door', rotationDeg: 0 });
    const [placed] = deriveScene(driver.plan).machines;
    expect(placed?.sides.back.wallDistance).toBeCloseTo(placed?.sheet.clearances.back ?? 0, 6);
    expect(driver.state.selection).toEqual([machine?.id]);
  });

  it('comes with its whole line where that is asked for', () => {
    const line = { configuration: 'left-front', hand: 'right-to-left' } as const;
    const driver = Driver.with(emptyPlan(), { tool: 'place-machine', sheet: 'recirculating-hot-water', line }).press(at(5000, 500));
    const [derived] = deriveScene(driver.plan).lines;
    expect(derived?.configuration).toEqual({ kind: 'corner', side: 'left' });
    expect(derived?.hand).toBe('right-to-left');
    expect(isSound(driver)).toBe(true);
  });
});

describe('tables', () => {
  const alone = () => Driver.with(emptyPlan(), { tool: 'place-machine', sheet: 'recirculating-hot-water' }).press(at(4000, 380)).plan;

  it('a drag from a door makes a straight table, joined flush', () => {
    const plan = alone();
    const door = deriveScene(plan).machines[0]?.sides.left.door ?? at(0, 0);
    const driver = Driver.with(plan, { tool: 'add-table', role: 'soiled' }).drag(
      at(door.x - 40, door.y + 60),
      at(door.x - 2040, door.y + 300),
    );
    expect(driver.path).toEqual(['add-table/idle', 'add-table/chaining', 'select/idle']);
    const [table] = driver.plan.tables;
    expect(table?.place).toEqual({ kind: 'joined', machine: 'machine-1', side: 'left', gap: 0, offset: 0, skewDeg: 0 });
    expect(table && tableLength(table) / 25.4).toBeCloseTo(80, 9);
    expect(table?.operatorSide).toBe('left');
  });

  it('presses make one with turns; a typed length is kept exactly', () => {
    const plan = alone();
    const door = deriveScene(plan).machines[0]?.sides.right.door ?? at(0, 0);
    const driver = Driver.with(plan, { tool: 'add-table', role: 'clean' })
      .press(door)
      .move(at(door.x + 900, door.y))
      .type(`5'`)
      .key('Enter')
      .press(at(door.x + 1530, door.y + 1200))
      .key('Enter');
    expect(driver.plan.tables[0]?.legs).toEqual([
      { length: 1524, turnDeg: 0 },
      { length: expect.closeTo(1193.8, 6), turnDeg: 90 },
    ]);
    expect(isSound(driver)).toBe(true);
  });

  it('away from any door it is free', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-table', role: 'soiled' }).drag(at(2000, 3000), at(3600, 3010));
    expect(driver.plan.tables[0]?.place).toMatchObject({ kind: 'free', x: 2000, y: 3000, headingDeg: 0 });
  });
});

describe('air', () => {
  it('a press on the machine hangs the least hood over it', () => {
    const plan = { ...straightPlan(), hoods: [] };
    const driver = Driver.with(plan, { tool: 'add-hood' }).press(at(4000, 800));
    const over = deriveScene(driver.plan).hoods[0]?.covers[0]?.overhang;
    expect(Object.values(over ?? {}).every((value) => Math.abs(value - 152.4) < 1e-6)).toBe(true);
  });

  it('a drag hangs one of that size', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'add-hood' }).drag(at(2000, 1000), at(3500, 2200), { alt: true });
    expect(driver.plan.hoods[0]).toMatchObject({ x: 2750, y: 1600, width: 1500, depth: 1200 });
  });

  it('a run goes up over the collar, square, to the duct exit at its height', () => {
    const base = { ...straightPlan('direct-vent'), runs: [] };
    const plan = { ...base, room: { ...base.room, stubs: [{ id: 'duct-exit-1', kind: 'duct-exit' as const, x: 6000, y: 0, z: 2750 }] } };
    const collar = deriveScene(plan).machines[0]?.collar;
    const driver = Driver.with(plan, { tool: 'draw-run' })
      .press(at(4000, 800))
      .press(at(6010, (collar?.y ?? 0) + 20))
      .press(at(6020, 30))
      .key('Enter');
    const [run] = driver.plan.runs;
    expect(run?.points[0]).toMatchObject({ x: collar?.x, y: collar?.y });
    expect(run?.points[1]).toMatchObject({ x: 6000, y: expect.closeTo(collar?.y ?? 0, 6) });
    expect(run?.points[2]).toEqual({ x: 6000, y: 0, z: 2750 });
    expect(isSound(driver)).toBe(true);
  });
});

describe('measuring', () => {
  it('from corner to corner, changing nothing', () => {
    const plan = withThing(emptyPlan());
    const driver = Driver.with(plan, { tool: 'measure' }).press(at(12, 15)).press(at(7990, 10));
    expect(driver.state.preview?.readouts[0]).toMatchObject({ kind: 'length', value: 8000 });
    expect(driver.plan).toBe(plan);
  });
});

describe('the view', () => {
  it('the middle button slides the paper in any tool and drops nothing', () => {
    const driver = Driver.with(emptyPlan(), { tool: 'draw-room' });
    driver.press(at(0, 0)).down(at(1000, 1000), { button: 1 }).move(at(1500, 1000), { button: 1 });
    expect(driver.state.view.dx).toBeCloseTo(100);
    driver.up(at(1000, 1000), { button: 1 });
    expect(driver.state.tool).toMatchObject({ tool: 'draw-room', name: 'chaining' });
    expect(driver.state.panning).toBeNull();
  });
});
