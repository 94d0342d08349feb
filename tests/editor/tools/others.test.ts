import { describe, expect, it } from 'vitest';
import { chooseTool, cursorFor, hintOf } from '../../../src/editor';
import { edit, type Plan } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan, straightPlan } from '../plans';

const metric = (plan: Plan): Plan => edit(plan, 'metric', (draft) => void (draft.settings.units = 'metric')).plan;
const plan = metric(emptyPlan());

describe('cutting openings', () => {
  const cut = (kind: Plan['room']['openings'][number]['kind'], of = plan) => Driver.with(of, { tool: 'add-opening', kind });
  it.each([
    ['door', 914, 2032, 0, 'out', 'Add door'],
    ['double-door', 1829, 2032, 0, 'out', 'Add double door'],
    ['cased-opening', 1219, 2134, 0, 'none', 'Add cased opening'],
    ['pass-window', 1219, 914, 914, 'none', 'Add pass-through window'],
    ['window', 914, 1067, 1067, 'none', 'Add window'],
  ] as const)('%s is %d wide, %d high, its sill at %d', (kind, width, height, sill, swing, label) => {
    const driver = cut(kind).press(at(2513, 899), { alt: true });
    expect(driver.plan.room.openings[1]).toMatchObject({
      kind,
      wall: 'wall-1',
      from: nearly(2513 - width / 2),
      width,
      height,
      sill,
      swing,
      hinge: 'start',
    });
    expect(driver.labels).toEqual([label]);
    expect(driver.state.tool).toMatchObject({ tool: 'select' });
  });

  it.each([
    { name: '900 mm from the wall', y: 900, shows: true },
    { name: 'farther', y: 901, shows: false },
  ])('$name shows: $shows', ({ y, shows }) => {
    const driver = cut('window').move(at(4013, y));
    expect(driver.state.preview !== null).toBe(shows);
    driver.press(at(4013, y));
    expect(driver.labels).toHaveLength(shows ? 1 : 0);
  });

  it('in steps along the wall, as wide as the wall at most', () => {
    expect(cut('door').press(at(2513, 20)).plan.room.openings[1]?.from).toBeCloseTo(2050, 8);
    const short = metric(
      edit(emptyPlan(), 'short', (draft) => {
        draft.room.openings = [];
        draft.room.outline = [
          [0, 0],
          [700, 0],
          [700, 5000],
          [0, 5000],
        ].map(([x = 0, y = 0], i) => ({ id: `wall-${i + 1}`, x, y }));
      }).plan,
    );
    expect(cut('door', short).press(at(300, 10)).plan.room.openings[0]).toMatchObject({ wall: 'wall-1', from: 0, width: 700 });
  });

  it('reads what is left on both sides', () => {
    expect(
      cut('door')
        .move(at(2507, 20))
        .state.preview?.readouts.map(({ value }) => value),
    ).toEqual(nearly([2050, 914, 5036]));
    expect(
      cut('door')
        .move(at(4010, 20))
        .state.preview?.guides.map(({ kind }) => kind),
    ).toEqual(['centred']);
    expect(hintOf(cut('pass-window').state.tool)).toBe(
      'Press on a wall where the pass-through window goes. Shift keeps the tool for another.',
    );
  });
});

describe('hanging hoods', () => {
  const hang = (of = plan) => Driver.with(of, { tool: 'add-hood' });
  it.each([
    {
      name: 'by a press, of its usual size',
      act: (driver: Driver) => driver.press(at(2013, 1512)),
      gives: { x: 2013, y: 1512, width: 1219, depth: 1219 },
    },
    {
      name: 'by a drag, in steps',
      act: (driver: Driver) => driver.drag(at(1000, 1000), at(2513, 2238)),
      gives: { x: 1750, y: 1625, width: 1500, depth: 1250 },
    },
    {
      name: 'by a drag back',
      act: (driver: Driver) => driver.drag(at(2500, 2200), at(1000, 1000)),
      gives: { x: 1750, y: 1600, width: 1500, depth: 1200 },
    },
    {
      name: 'by a drag, 100 at least',
      act: (driver: Driver) => driver.drag(at(1000, 1000), at(1040, 1060), { alt: true }),
      gives: { x: 1020, y: 1030, width: 100, depth: 100 },
    },
    {
      name: 'by a drag, exactly',
      act: (driver: Driver) => driver.drag(at(1000, 1000), at(2513, 2238), { alt: true }),
      gives: { x: 1756.5, y: 1619, width: 1513, depth: 1238 },
    },
  ])('$name', ({ act, gives }) => {
    const driver = act(hang());
    expect(driver.plan.hoods).toMatchObject([{ ...gives, rotationDeg: 0, exhaust: null, cavityAir: null, lipHeight: 1981 }]);
    expect(driver.labels).toEqual(['Add hood']);
    expect(driver.state).toMatchObject({ selection: [driver.plan.hoods[0]?.id], preview: null, tool: { tool: 'select' } });
  });

  it.each([
    { ceiling: null, height: 610 },
    { ceiling: 3000, height: 610 },
    { ceiling: 2500, height: 519 },
    { ceiling: 2000, height: 50 },
  ])('below a ceiling of $ceiling it is $height high', ({ ceiling, height }) => {
    const of = edit(plan, 'ceiling', (draft) => void (draft.room.ceilingHeight = ceiling)).plan;
    expect(hang(of).press(at(2000, 1500)).plan.hoods[0]?.height).toBe(height);
  });

  const line = metric({ ...straightPlan(), hoods: [] });
  it('over a machine its lip stands 4 ft over the deck', () => {
    // The machine at (4000, 800), 737 × 711; 6 in beyond it on every side.
    const driver = hang(line).press(at(4300, 500));
    expect(driver.plan.hoods[0]).toMatchObject(nearly({ x: 4000, y: 800, width: 737 + 304.8, depth: 711 + 304.8, lipHeight: 2082.8 }));
  });

  it.each([
    { name: 'its middle within the hood', from: at(3500, 300), to: at(4100, 1000), lip: 2082.8 },
    { name: 'its middle beside the hood', from: at(3200, 300), to: at(3900, 1000), lip: 1981 },
    { name: 'its middle below the hood', from: at(3500, 100), to: at(4500, 700), lip: 1981 },
    { name: 'its middle on the edge', from: at(3500, 300), to: at(4000, 1000), lip: 1981 },
  ])('dragged over a machine: $name', ({ from, to, lip }) => {
    expect(hang(line).drag(from, to).plan.hoods[0]?.lipHeight).toBeCloseTo(lip, 6);
  });

  it('reads its size on its edges', () => {
    expect(hang().down(at(1000, 1000)).move(at(2500, 2200)).state.preview?.readouts).toEqual(
      nearly([
        { kind: 'length', from: at(1000, 2200), to: at(2500, 2200), value: 1500 },
        { kind: 'length', from: at(2500, 1000), to: at(2500, 2200), value: 1200 },
      ]),
    );
    const turned = edit(line, 'turn', (draft) => void Object.assign(draft.machines[0]!, { rotationDeg: 90, x: 4000, y: 2000 })).plan;
    const [across, down] = hang(turned).move(at(4000, 2000)).state.preview?.readouts ?? [];
    expect([across?.value, down?.value]).toEqual(nearly([711 + 304.8, 737 + 304.8]));
    expect(across).toMatchObject({ from: { x: nearly(4000 - 507.9) }, to: { x: nearly(4000 + 507.9) } });
    const askew = edit(line, 'turn', (draft) => void Object.assign(draft.machines[0]!, { rotationDeg: 30, x: 4000, y: 2000 })).plan;
    expect(hang(askew).move(at(4000, 2000)).state.preview?.readouts).toEqual([]);
  });

  it('goes from idle over showing and pressed to stretching, and Escape drops it', () => {
    const driver = hang().move(at(1000, 1000)).down(at(1000, 1000)).move(at(1500, 1500));
    expect(driver.path).toEqual(['add-hood/idle', 'add-hood/showing', 'add-hood/pressed', 'add-hood/stretching']);
    driver.key('Escape');
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'add-hood', name: 'idle' } });
    expect(hang().down(at(1000, 1000)).move(at(1010, 1000)).state.tool).toMatchObject({ name: 'pressed' });
    expect(hang().down(at(1000, 1000)).key('Escape').plan).toBe(plan);
  });
});

describe('placing machines', () => {
  const put = (of = plan, more = {}) => Driver.with(of, { tool: 'place-machine', sheet: 'recirculating-hot-water', ...more });
  it('its back to the wall, as far off as service needs', () => {
    // The machine is 737 × 711 and keeps its back off the wall.
    const back = deriveScene(straightPlan()).machines[0]!.sheet.clearances.back;
    const driver = put().press(at(4013, 711 / 2 + back - 20));
    expect(driver.plan.machines).toMatchObject([
      {
        id: 'machine-1',
        sheet: 'recirculating-hot-water',
        y: nearly(711 / 2 + back),
        rotationDeg: 0,
        electrical: null,
        controls: 'front-left',
      },
    ]);
    expect(driver.labels).toEqual(['Add machine']);
    expect(driver.state).toMatchObject({ selection: ['machine-1'], tool: { tool: 'select' } });
  });

  it.each([
    { keys: [], alt: false, turned: 90 },
    { keys: ['r'], alt: false, turned: 180 },
    { keys: ['r'], alt: true, turned: 90 },
    { keys: [], alt: true, turned: 0 },
  ])('at the right wall, by $keys, alt $alt: $turned°', ({ keys, alt, turned }) => {
    const driver = put();
    for (const name of keys) driver.key(name);
    const [machine] = driver.press(at(7500, 2500), { alt }).plan.machines;
    expect(machine?.rotationDeg).toBe(turned);
    expect(machine?.x === 7500 && machine.y === 2500).toBe(alt);
  });

  it('shift R turns it back; with ctrl it is not for it', () => {
    expect(put().key('R', { shift: true }).press(at(4000, 2500), { alt: true }).plan.machines[0]?.rotationDeg).toBe(270);
    expect(put().key('r', { ctrl: true }).state.tool).toMatchObject({ turns: 0 });
  });

  it('with its line, whose end catches the wall', () => {
    const line = { configuration: 'straight', hand: 'left-to-right' } as const;
    // The soiled table reaches 368.5 + 2900 to the left.
    const driver = put(plan, { line }).press(at(3268.5 + 30, 2500));
    expect(driver.plan.machines[0]?.x).toBeCloseTo(3268.5, 6);
    expect(driver.plan.tables).toHaveLength(2);
    expect(driver.labels).toEqual(['Add line']);
    expect(hintOf(put(plan, { line }).state.tool)).toBe('Press where the machine of the line goes. R turns it.');
    expect(hintOf(put().state.tool)).toBe('Press where the machine goes. R turns it.');
  });

  it('a data sheet that is not there puts nothing', () => {
    const driver = put(plan, { sheet: 'nobody' }).press(at(4000, 2500));
    expect(driver.plan).toBe(plan);
    expect(driver.state.preview).toBeNull();
  });
});

describe('moving walls at once', () => {
  const walls = () => Driver.with(plan, { tool: 'move-wall' });
  it.each([
    { name: 'a corner within twice the reach', at: at(7960, 40), by: at(300, 200), gives: at(8300, 200) },
    { name: 'a wall within twice the reach', at: at(7940, 2500), by: at(300, 200), gives: at(8300, 0) },
    { name: 'nothing farther off', at: at(7939, 2500), by: at(300, 200), gives: at(8000, 0) },
    { name: 'the wall beside a corner', at: at(7961, 50), by: at(300, 200), gives: at(8300, 0) },
  ])('$name', ({ at: from, by, gives }) => {
    const driver = walls().drag(from, at(from.x + by.x, from.y + by.y), { alt: true });
    expect(driver.plan.room.outline[1]).toMatchObject(nearly(gives));
  });

  it('a press chooses the wall; the pointer shows it', () => {
    const driver = walls().move(at(7990, 2500));
    expect(driver.state.hover).toBe('wall-2');
    expect(driver.move(at(4000, 2500)).state.hover).toBeNull();
    expect(driver.press(at(7990, 2500)).state.selection).toEqual(['wall-2']);
  });

  it('a drag ends in one change; Escape leaves the plan', () => {
    const driver = walls().down(at(7990, 2500)).move(at(7500, 2500));
    expect(cursorFor(driver.state)).toBe('move');
    expect(driver.state.preview?.plan.room.outline[1]?.x).toBeLessThan(7700);
    driver.key('Escape');
    expect(driver.plan).toBe(plan);
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'move-wall', name: 'idle' } });
    expect(walls().drag(at(7990, 2500), at(7500, 2500)).labels).toEqual(['Move wall 2']);
    expect(cursorFor(walls().state)).toBe('default');
  });

  it('two quick presses break a wall, but not a corner, nor the floor', () => {
    expect(walls().send('double', at(7990, 2500)).plan.room.outline[2]).toMatchObject({ x: 8000, y: 2500 });
    expect(walls().send('double', at(7990, 10)).plan).toBe(plan);
    expect(walls().send('double', at(4000, 2500)).plan).toBe(plan);
  });
});

describe('sliding the paper', () => {
  it('goes with the pointer, px by px', () => {
    const driver = Driver.with(plan, { tool: 'pan' }).down(at(1000, 1000));
    expect(cursorFor(driver.state)).toBe('grabbing');
    driver.move(at(1500, 800));
    expect(driver.state.view).toEqual(nearly({ scale: 0.2, dx: 100, dy: -40 }));
    driver.up(at(1500, 800)).move(at(0, 0));
    expect(driver.state.view).toEqual(nearly({ scale: 0.2, dx: 100, dy: -40 }));
    expect(cursorFor(driver.state)).toBe('grab');
    expect(driver.down(at(0, 0)).cancel().state.tool).toEqual({ tool: 'pan', name: 'idle' });
    expect(hintOf(driver.state.tool)).toBe('Drag to slide the paper.');
  });
});

describe('taking a tool', () => {
  it('drops what the one before had begun, and shows nothing under the pointer', () => {
    const driver = new Driver(plan).down(at(0, 3000)).move(at(10, 2500));
    const state = chooseTool({ ...driver.state, hover: 'wall-1' }, { tool: 'measure' });
    expect(state).toMatchObject({ tool: { tool: 'measure', name: 'idle' }, preview: null, hover: null });
    expect(state.history.present).toBe(plan);
  });
});
