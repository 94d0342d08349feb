import { describe, expect, it } from 'vitest';
import { hintOf } from '../../../src/editor';
import type { Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan } from '../plans';

/** Steps of 50 mm at this zoom; the pointer reaches 45 mm. */
const metric: Plan = { ...emptyPlan(), settings: { ...emptyPlan().settings, units: 'metric' } };
const draw = (plan = metric) => Driver.with(plan, { tool: 'draw-room' });
const outline = ({ plan }: Driver) => plan.room.outline.map(({ x, y }) => [x, y]);
const chain = (driver: Driver) =>
  driver.state.tool.tool === 'draw-room' && driver.state.tool.name === 'chaining' ? driver.state.tool : null;
const corners = (driver: Driver) => chain(driver)?.corners.map(({ x, y }) => [x, y]);

describe('a rectangle', () => {
  it.each([
    {
      name: 'to the right and down',
      from: at(100, 200),
      to: at(6113, 4238),
      gives: [
        [100, 200],
        [6100, 200],
        [6100, 4250],
        [100, 4250],
      ],
    },
    {
      name: 'to the left and up',
      from: at(6000, 4000),
      to: at(13, -10),
      gives: [
        [0, 0],
        [6000, 0],
        [6000, 4000],
        [0, 4000],
      ],
    },
    {
      name: 'to the left and down',
      from: at(6000, 0),
      to: at(0, 4000),
      gives: [
        [0, 0],
        [6000, 0],
        [6000, 4000],
        [0, 4000],
      ],
    },
  ])('$name', ({ from, to, gives }) => {
    const driver = draw().drag(from, to);
    expect(outline(driver)).toEqual(nearly(gives));
    expect(driver.labels).toEqual(['Draw the walls']);
    expect(driver.state).toMatchObject({ selection: [], preview: null, tool: { tool: 'select', name: 'idle' } });
    expect(driver.key('z', { ctrl: true }).plan).toEqual(metric);
  });

  it('reads its four walls while it is drawn; Escape drops it', () => {
    const driver = draw().down(at(0, 0)).move(at(6000, 4000));
    expect(driver.state.preview?.readouts).toEqual(
      nearly([
        { kind: 'length', from: at(0, 0), to: at(6000, 0), value: 6000 },
        { kind: 'length', from: at(6000, 0), to: at(6000, 4000), value: 4000 },
        { kind: 'length', from: at(6000, 4000), to: at(0, 4000), value: 6000 },
        { kind: 'length', from: at(0, 4000), to: at(0, 0), value: 4000 },
      ]),
    );
    expect(driver.state.preview?.plan.room.outline).toHaveLength(4);
    driver.key('Escape');
    expect(driver.plan).toBe(metric);
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'draw-room', name: 'idle' } });
  });

  it('says that openings went with the old walls, where there were any', () => {
    expect(draw().drag(at(0, 0), at(6000, 4000)).state.message).toEqual({
      tone: 'note',
      text: 'The doors and windows of the old walls went with them.',
    });
    const bare = { ...metric, room: { ...metric.room, openings: [] } };
    expect(draw(bare).drag(at(0, 0), at(6000, 4000)).state.message).toBeNull();
    expect(draw().drag(at(0, 0), at(6000, 4000)).plan.room.openings).toEqual([]);
  });

  it('without width is refused', () => {
    const driver = draw().drag(at(0, 0), at(10, 4000));
    expect(driver.plan).toBe(metric);
    expect(driver.state.message).toEqual({ tone: 'refused', text: 'These walls cross or have no floor between them. Draw them again.' });
    expect(driver.state.tool).toMatchObject({ tool: 'draw-room', name: 'idle' });
  });
});

describe('corner after corner', () => {
  it.each([
    // A line through the last corner is caught from 7 % of the way to it.
    { name: 'level, from within 7 % of its length', to: at(3013, 209), options: {}, gives: [3000, 0] },
    { name: 'free beyond, in no step', to: at(3013, 213), options: {}, gives: [3013, 213] },
    { name: 'upright', to: at(-100, 2013), options: {}, gives: [0, 2000] },
    { name: 'free with alt', to: at(3013, 20), options: { alt: true }, gives: [3013, 20] },
  ])('the second: $name', ({ to, options, gives }) => {
    expect(corners(draw().press(at(0, 0)).press(to, options))).toEqual(nearly([[0, 0], gives]));
  });

  const two = () => draw().press(at(0, 0)).press(at(4000, 3000), { alt: true });
  it.each([
    // Along (−0.6, 0.8) or (0.8, 0.6) from the last; level and upright too; and over the first.
    { name: 'square to the wall before', to: at(4000 - 610, 3000 + 790), gives: [3400, 3800] },
    { name: 'level from the last', to: at(2013, 3020), gives: [2000, 3000] },
    { name: 'upright over the first, level from the last', to: at(30, 3040), gives: [0, 3000] },
    { name: 'where two lines cross', to: at(4020, 30), gives: [4000, 0] },
  ])('the third: $name', ({ to, gives }) => {
    expect(corners(two().press(to))?.[2]).toEqual(nearly(gives));
  });

  it('shows its walls and their lengths, and the room as soon as it has a floor', () => {
    const driver = draw().press(at(0, 0)).press(at(5000, 0)).move(at(5000, 3000));
    expect(driver.state.preview?.readouts.map(({ value }) => value)).toEqual(nearly([5000, 3000]));
    expect(driver.state.preview?.guides.slice(0, 2)).toEqual(
      nearly([
        { kind: 'square', from: at(0, 0), to: at(5000, 0) },
        { kind: 'square', from: at(5000, 0), to: at(5000, 3000) },
      ]),
    );
    expect(driver.state.preview?.guides.length).toBeGreaterThan(2);
    expect(driver.state.preview?.plan.room.outline).toHaveLength(3);
    expect(draw().press(at(0, 0)).move(at(5000, 0)).state.preview).toMatchObject({ transaction: null, plan: metric });
  });

  const three = () => draw().press(at(0, 0)).press(at(5000, 0)).press(at(5000, 3000));
  const triangle = [
    [0, 0],
    [5000, 0],
    [5000, 3000],
  ];
  it.each([
    { name: 'Enter', close: (driver: Driver) => driver.key('Enter') },
    { name: 'a press on the first corner', close: (driver: Driver) => driver.press(at(20, 25)) },
    { name: 'two quick presses', close: (driver: Driver) => driver.send('double', at(3000, 3000)) },
  ])('$name closes it', ({ close }) => {
    const driver = close(three());
    expect(outline(driver)).toEqual(nearly(triangle));
    expect(driver.labels).toEqual(['Draw the walls']);
  });

  it('two corners can’t be closed', () => {
    const driver = draw().press(at(0, 0)).press(at(5000, 0)).key('Enter');
    expect(corners(driver)).toHaveLength(2);
    driver.send('double', at(5000, 0));
    expect(driver.plan).toBe(metric);
    expect(chain(driver)).not.toBeNull();
    expect(corners(driver.press(at(0, 0)))).toHaveLength(2);
  });

  it('a press on the last corner adds none', () => {
    expect(corners(draw().press(at(0, 0)).press(at(5000, 0)).press(at(5000, 0)))).toHaveLength(2);
  });

  it('Backspace takes the last corner back, but not the first', () => {
    const driver = three().key('Backspace');
    expect(corners(driver)).toEqual(nearly(triangle.slice(0, 2)));
    driver.key('Backspace');
    expect(corners(driver)).toEqual([[0, 0]]);
    driver.key('Backspace');
    expect(corners(driver)).toEqual([[0, 0]]);
  });

  it('a typed length goes the way of the pointer', () => {
    const driver = draw().press(at(0, 0)).press(at(5000, 0)).move(at(4800, 2950)).type('2500');
    expect(chain(driver)?.typed).toBe('2500');
    expect(hintOf(driver.state.tool)).toBe(
      'Press the next corner, or type the length of the wall: 2500. The first corner, or Enter, closes the room.',
    );
    driver.key('Backspace').key('Enter');
    expect(corners(driver)).toEqual(
      nearly([
        [0, 0],
        [5000, 0],
        [5000, 250],
      ]),
    );
    expect(chain(driver)?.typed).toBe('');
    expect(hintOf(driver.state.tool)).toContain('of the wall. The first');
  });

  it('what is no length is refused, and the corners stay', () => {
    const driver = draw().press(at(0, 0)).move(at(3000, 0)).type('1/').key('Enter');
    expect(driver.state.message).toEqual({ tone: 'refused', text: '“1/” is not a length.' });
    expect(chain(driver)).toMatchObject({ corners: [at(0, 0)], typed: '' });
  });
});
