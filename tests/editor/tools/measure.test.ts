import { describe, expect, it } from 'vitest';
import { cursorFor, hintOf } from '../../../src/editor';
import { typedLength, typeKey } from '../../../src/editor/tools/typed';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan, withThing } from '../plans';

/** A cart of 800 × 500 at (2000, 3500). */
const plan = withThing(emptyPlan());
const measure = () => Driver.with(plan, { tool: 'measure' });
const read = ({ state }: Driver) => state.preview?.readouts;

describe('measuring', () => {
  it.each([
    {
      name: 'from corner to corner of a thing',
      from: at(1610, 3240),
      to: at(2390, 3760),
      options: {},
      gives: [at(1600, 3250), at(2400, 3750)],
    },
    { name: 'to a wall', from: at(1610, 3240), to: at(30, 3200), options: {}, gives: [at(1600, 3250), at(0, 3200)] },
    { name: 'to no wall beyond the reach', from: at(1610, 3240), to: at(46, 3200), options: {}, gives: [at(1600, 3250), at(46, 3200)] },
    { name: 'freely', from: at(1610, 3240), to: at(2390, 3760), options: { alt: true }, gives: [at(1610, 3240), at(2390, 3760)] },
    { name: 'level', from: at(3000, 1000), to: at(3800, 1700), options: { shift: true }, gives: [at(3000, 1000), at(3800, 1000)] },
    {
      name: 'level where both are as far',
      from: at(3000, 1000),
      to: at(3700, 1700),
      options: { shift: true },
      gives: [at(3000, 1000), at(3700, 1000)],
    },
    { name: 'upright', from: at(3000, 1000), to: at(3700, 200), options: { shift: true }, gives: [at(3000, 1000), at(3000, 200)] },
    {
      name: 'level to the left',
      from: at(3000, 1000),
      to: at(2200, 1700),
      options: { shift: true },
      gives: [at(3000, 1000), at(2200, 1000)],
    },
  ])('$name', ({ from, to, options, gives: [a = at(0, 0), b = at(0, 0)] }) => {
    const value = Math.hypot(b.x - a.x, b.y - a.y);
    const driver = measure().press(from, options).press(to, options);
    expect(read(driver)?.[0]).toEqual(nearly({ kind: 'length', from: a, to: b, value }));
    expect(driver.state.tool).toMatchObject({ tool: 'measure', name: 'measured', from: nearly(a), to: nearly(b) });
    expect(driver.path).toEqual(['measure/idle', 'measure/measuring', 'measure/measured']);
    // In one go as well.
    expect(read(measure().drag(from, to, options))?.[0]).toEqual(nearly({ kind: 'length', from: a, to: b, value }));
  });

  it('reads the angle too, where there is a way', () => {
    const driver = measure().press(at(3000, 1000)).move(at(3000, 1400));
    expect(read(driver)).toEqual([
      { kind: 'length', from: at(3000, 1000), to: at(3000, 1400), value: 400 },
      { kind: 'angle', from: at(3000, 1000), to: at(3000, 1400), value: 90 },
    ]);
    expect(read(measure().press(at(3000, 1000)).move(at(3000.5, 1000)))).toHaveLength(1);
    expect(read(measure().press(at(3000, 1000)).move(at(3001, 1000)))).toHaveLength(2);
  });

  it('a further press begins anew; Escape puts it away', () => {
    const driver = measure().press(at(3000, 1000)).press(at(4000, 1000)).press(at(5000, 2000));
    expect(driver.state).toMatchObject({ tool: { name: 'measuring', from: at(5000, 2000) } });
    driver.key('Escape');
    expect(driver.state).toMatchObject({ tool: { tool: 'measure', name: 'idle' }, preview: null });
    const measured = measure().press(at(3000, 1000)).press(at(4000, 1000)).key('Escape');
    expect(measured.state).toMatchObject({ tool: { tool: 'select' }, preview: null });
    expect(measured.plan).toBe(plan);
  });

  it('says what it waits for', () => {
    expect(hintOf(measure().state.tool)).toBe('Press where to measure from. Shift keeps it level or upright.');
    expect(hintOf(measure().press(at(0, 0)).state.tool)).toBe('Press where to measure to.');
    expect(cursorFor(measure().state)).toBe('crosshair');
  });
});

describe('typing a length', () => {
  const key = (name: string, modifiers = {}) => ({ type: 'key', key: name, shift: false, alt: false, ctrl: false, ...modifiers }) as const;
  it.each([
    ['', '5', '5'],
    ['', '.', '.'],
    ['', "'", null],
    ['', '-', null],
    ['', 'm', null],
    ['5', "'", "5'"],
    ['5', ' ', '5 '],
    ['5', 'm', '5m'],
    ['5', 'M', '5M'],
    ['5', 'x', null],
    ['5', 'Enter', null],
    ['52', 'Backspace', '5'],
    ['', 'Backspace', null],
    ['1'.repeat(19), '1', '1'.repeat(20)],
    ['1'.repeat(20), '1', null],
  ])('“%s” and %s: %s', (typed, name, gives) => {
    expect(typeKey(typed, key(name))).toBe(gives);
  });

  it('leaves keys with ctrl and alt to others', () => {
    expect(typeKey('5', key('5', { ctrl: true }))).toBeNull();
    expect(typeKey('5', key('5', { alt: true }))).toBeNull();
  });

  it.each([
    ['', 'us', null],
    ['10', 'us', 254],
    ['10', 'metric', 10],
    ['1/', 'us', null],
    ['0', 'metric', null],
    ['.5 in', 'metric', 12.7],
  ] as const)('“%s” in %s is %s mm', (text, units, mm) => {
    expect(typedLength(text, units)).toBe(mm);
  });
});
