import { describe, expect, it } from 'vitest';
import { hintOf } from '../../../src/editor';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan, straightPlan } from '../plans';

/** Collar at (4000, 594.5), 1930 high; nothing above but what a case says. Steps of 50 mm. */
const roomUnder = (ceilingHeight: number | null, family = 'direct-vent'): Plan =>
  edit(straightPlan(family), 'bare', (draft) => {
    draft.runs = [];
    draft.room.ceilingHeight = ceilingHeight;
    draft.settings.units = 'metric';
  }).plan;
const plan = roomUnder(null);
const draw = (of = plan) => Driver.with(of, { tool: 'draw-run' });
const begun = (of = plan) => draw(of).press(at(4000, 800));
const chain = (driver: Driver) =>
  driver.state.tool.tool === 'draw-run' && driver.state.tool.name === 'chaining' ? driver.state.tool : null;
const points = (driver: Driver) => driver.plan.runs[0]?.points.map(({ x, y, z }) => [x, y, z]);

describe('where a run begins', () => {
  it.each([
    { name: 'without a ceiling 600 above the collar', ceiling: null, z: 2530 },
    { name: 'below a high ceiling the same', ceiling: 2831, z: 2530 },
    { name: '300 below a lower one', ceiling: 2400, z: 2100 },
    { name: '50 above the collar at least', ceiling: 2200, z: 1980 },
  ])('$name', ({ ceiling, z }) => {
    expect(chain(begun(roomUnder(ceiling)))).toMatchObject({
      machine: 'machine',
      z,
      points: [nearly({ x: 4000, y: 594.5, z })],
      typed: '',
    });
  });

  it('over the middle of a machine without a collar, above its top', () => {
    expect(chain(begun(roomUnder(null, 'recirculating-hot-water')))?.points).toEqual([{ x: 4000, y: 800, z: 2073 }]);
  });

  const several = edit(plan, 'several', (draft) => {
    const [machine] = draft.machines;
    draft.machines.push(
      { ...machine!, id: 'second', x: 1000, y: 4000 },
      { ...machine!, id: 'bare', sheet: 'tall-door', controls: 'front-left', electrical: null, x: 7000, y: 4000 },
    );
  }).plan;
  it.each([
    { name: 'the nearest', point: at(1500, 3000), chosen: [], machine: 'second' },
    { name: 'the nearest of the others', point: at(3500, 1000), chosen: [], machine: 'machine' },
    { name: 'the chosen one before all', point: at(3500, 1000), chosen: ['second'], machine: 'second' },
    // 3050 from the one without a collar, 4950 from the first with one.
    { name: 'one with a collar before one that is 2 m nearer', point: at(6990, 3950), chosen: [], machine: 'bare' },
    { name: 'one with a collar up to 2 m farther off', point: at(5600, 2800), chosen: [], machine: 'machine' },
  ])('at $name', ({ point, chosen, machine }) => {
    const driver = draw(several);
    driver.state = { ...driver.state, selection: chosen };
    expect(chain(driver.down(point))?.machine).toBe(machine);
  });

  it('needs a machine', () => {
    const driver = draw(emptyPlan()).press(at(4000, 800));
    expect(driver.state.message).toEqual({ tone: 'refused', text: 'A run begins at a machine. Put a machine into the room first.' });
    expect(driver.state.tool).toMatchObject({ name: 'idle' });
  });
});

describe('its further points', () => {
  it.each([
    { name: 'straight, from within 7 % of the leg', to: at(6013, 594.5 + 138), gives: [6000, 594.5, 2530] },
    { name: 'free beyond', to: at(6013, 594.5 + 143), gives: [6013, 737.5, 2530] },
    { name: 'at 45°', to: at(5000, 594.5 + 990), gives: [4000 + 1400 * Math.SQRT1_2, 594.5 + 1400 * Math.SQRT1_2, 2530] },
    { name: 'free with alt', to: at(6013, 600), options: { alt: true }, gives: [6013, 600, 2530] },
  ])('$name', ({ to, options = {}, gives }) => {
    const driver = begun().press(to, options).key('Enter');
    expect(points(driver)).toEqual(nearly([[4000, 594.5, 2530], gives]));
  });

  it('a duct exit gives its height; another stub does not', () => {
    const exits = edit(plan, 'exits', (draft) => {
      draft.room.stubs.push(
        { id: 'exit', kind: 'duct-exit', x: 6000, y: 3000, z: 2750 },
        { id: 'water', kind: 'cold-water', x: 6000, y: 1000, z: 400 },
      );
    }).plan;
    expect(points(begun(exits).press(at(6020, 3010)).key('Enter'))?.[1]).toEqual([6000, 3000, 2750]);
    expect(points(begun(exits).press(at(6010, 1003), { alt: true }).key('Enter'))?.[1]).toEqual([6010, 1003, 2530]);
  });

  it('reads its legs while it is drawn', () => {
    const driver = begun().press(at(6000, 594.5)).move(at(6000, 1594.5));
    expect(driver.state.preview?.readouts.map(({ value }) => value)).toEqual(nearly([2000, 1000]));
    expect(driver.state.preview?.guides[0]).toMatchObject({ kind: 'square', to: nearly(at(6000, 1594.5)) });
    expect(driver.state.preview?.plan.runs[0]?.points).toHaveLength(3);
  });

  it.each([
    { name: 'Enter', end: (driver: Driver) => driver.key('Enter') },
    { name: 'a second press on its end', end: (driver: Driver) => driver.press(at(6000, 594.5)) },
    { name: 'two quick presses', end: (driver: Driver) => driver.send('double', at(6000, 594.5)) },
  ])('$name ends it', ({ end }) => {
    const driver = end(begun().press(at(6000, 594.5)));
    expect(driver.plan.runs).toMatchObject([{ id: 'run-1', machine: 'machine', diameter: 177.8, fan: null, outlet: 'wall' }]);
    expect(driver.plan.runs[0]?.points).toHaveLength(2);
    expect(driver.labels).toEqual(['Add duct run']);
    expect(driver.state).toMatchObject({ selection: ['run-1'], preview: null, tool: { tool: 'select' } });
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
  });

  it('at another height the end is pressed again for a riser', () => {
    const driver = begun().press(at(6000, 594.5)).key('PageUp').press(at(6000, 594.5)).key('Enter');
    expect(points(driver)?.slice(1)).toEqual(
      nearly([
        [6000, 594.5, 2530],
        [6000, 594.5, 2540],
      ]),
    );
  });

  it('for a machine without a vent of its own it is 8 in wide', () => {
    expect(begun(roomUnder(null, 'recirculating-hot-water')).press(at(6000, 800)).key('Enter').plan.runs[0]?.diameter).toBe(203);
  });

  it('Escape drops it', () => {
    const driver = begun().press(at(6000, 594.5)).key('Escape');
    expect(driver.plan).toBe(plan);
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'draw-run', name: 'idle' } });
  });
});

describe('keys while a run is drawn', () => {
  it.each([
    { keys: [['PageUp', false]], z: 2540 },
    { keys: [['PageDown', false]], z: 2520 },
    { keys: [['PageUp', true]], z: 2630 },
    {
      keys: [
        ['PageDown', true],
        ['PageDown', false],
      ],
      z: 2420,
    },
  ] as const)('$keys: $z', ({ keys, z }) => {
    const driver = begun();
    for (const [name, shift] of keys) driver.key(name, { shift });
    // The first level goes along as long as it is the only one.
    expect(chain(driver)).toMatchObject({ z, points: [{ z }] });
    driver.press(at(6000, 594.5)).key('PageUp');
    expect(chain(driver)).toMatchObject({ z: z + 10, points: [{ z }, { z }] });
  });

  it('never below the floor', () => {
    const driver = begun();
    for (let i = 0; i < 30; i += 1) driver.key('PageDown', { shift: true });
    expect(chain(driver)?.z).toBe(0);
  });

  it('a typed length goes the way of the pointer', () => {
    const driver = begun().move(at(6000, 594.5)).type('1234');
    expect(hintOf(driver.state.tool)).toBe(
      'Press where the run turns, or type the length of a leg: 1234. Page Up and Page Down change its height. Enter ends it.',
    );
    expect(chain(driver.key('Enter'))).toMatchObject({ typed: '', points: [{ x: 4000 }, nearly({ x: 5234, y: 594.5, z: 2530 })] });
    expect(hintOf(driver.state.tool)).toContain('of a leg. Page Up');
  });

  it('what is no length is refused', () => {
    const driver = begun().move(at(6000, 594.5)).type('1/').key('Enter');
    expect(driver.state.message).toEqual({ tone: 'refused', text: '“1/” is not a length.' });
    expect(chain(driver)).toMatchObject({ typed: '', points: [{ x: 4000 }] });
  });
});
