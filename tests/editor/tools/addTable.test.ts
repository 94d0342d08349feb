import { describe, expect, it } from 'vitest';
import { hintOf } from '../../../src/editor';
import { createPlainTable } from '../../../src/editor/tools/plainTable';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan, straightPlan } from '../plans';

/** A machine alone at (4000, 800): doors at (3631.5, 800), (4368.5, 800) and (4000, 1155.5). Steps of 50 mm. */
const plan: Plan = edit({ ...straightPlan(), tables: [] }, 'metric', (draft) => void (draft.settings.units = 'metric')).plan;
const empty: Plan = edit(emptyPlan(), 'metric', (draft) => void (draft.settings.units = 'metric')).plan;
const draw = (of = plan, role: 'soiled' | 'clean' = 'soiled') => Driver.with(of, { tool: 'add-table', role });
const chain = (driver: Driver) =>
  driver.state.tool.tool === 'add-table' && driver.state.tool.name === 'chaining' ? driver.state.tool : null;
const table = ({ plan: { tables } }: Driver) => tables[0];

describe('where a table begins', () => {
  it.each([
    { name: 'at the right door, within 300 mm', from: at(4668.5, 800), side: 'right', point: at(4368.5, 800) },
    { name: 'free beyond', from: at(4669, 800), side: null, point: at(4669, 800) },
    { name: 'at the left door', from: at(3600, 850), side: 'left', point: at(3631.5, 800) },
    { name: 'at the front door', from: at(4010, 1200), side: 'front', point: at(4000, 1155.5) },
    { name: 'at the nearer of two', from: at(4170, 1000), side: 'front', point: at(4000, 1155.5) },
  ])('$name', ({ from, side, point }) => {
    const { start, points } = chain(draw().down(from))!;
    expect(points).toEqual(nearly([point]));
    expect(start.joint?.side ?? null).toBe(side);
  });

  it('not at a door with a table', () => {
    expect(chain(draw(straightPlan()).down(at(4400, 800)))?.start.joint).toBeNull();
  });

  it('shows the door that the pointer comes near', () => {
    expect(draw().move(at(4400, 850)).state.preview?.guides).toEqual(
      nearly([{ kind: 'joint', from: at(4368.5, 650), to: at(4368.5, 950) }]),
    );
    expect(draw().move(at(4400, 850)).move(at(6000, 3000)).state.preview).toBeNull();
    expect(draw().move(at(4000, 1200)).state.preview?.guides).toMatchObject([
      { from: nearly(at(4150, 1155.5)), to: nearly(at(3850, 1155.5)) },
    ]);
  });
});

describe('a straight table', () => {
  it.each([
    {
      name: 'from a door, square to it',
      from: at(4368.5, 800),
      to: at(5983, 1000),
      legs: [{ length: 1600, turnDeg: 0 }],
      place: { kind: 'joined', machine: 'machine', side: 'right', gap: 0, offset: 0, skewDeg: 0 },
    },
    {
      name: 'free, by 15°',
      from: at(1000, 3000),
      to: at(2000, 3250),
      legs: [{ length: 1050, turnDeg: 0 }],
      place: { kind: 'free', x: 1000, y: 3000, headingDeg: 15 },
    },
    {
      name: 'free, level',
      from: at(1000, 3000),
      to: at(2000, 3120),
      legs: [{ length: 1000, turnDeg: 0 }],
      place: { kind: 'free', x: 1000, y: 3000, headingDeg: 0 },
    },
    {
      name: 'free, up the paper',
      from: at(1000, 3000),
      to: at(1010, 2000),
      legs: [{ length: 1000, turnDeg: 0 }],
      place: { kind: 'free', x: 1000, y: 3000, headingDeg: 270 },
    },
  ])('$name', ({ from, to, legs, place }) => {
    const driver = draw().drag(from, to);
    expect(table(driver)).toMatchObject(nearly({ legs, place, role: 'soiled', id: 'soiled-table-1' }));
    expect(driver.labels).toEqual(['Add soiled table']);
    expect(driver.state).toMatchObject({ selection: ['soiled-table-1'], preview: null, tool: { tool: 'select' } });
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
  });

  it('with alt in any direction and length', () => {
    const driver = draw(empty).drag(at(1000, 3000), at(1600, 3800), { alt: true });
    expect(table(driver)?.legs[0]?.length).toBeCloseTo(1000, 6);
    expect(table(driver)?.place).toMatchObject({ headingDeg: nearly((Math.atan2(4, 3) * 180) / Math.PI) });
  });

  it('is 100 long at least: a shorter drag goes on drawing', () => {
    expect(table(draw(empty).drag(at(1000, 3000), at(1100, 3000)))?.legs).toEqual([{ length: 100, turnDeg: 0 }]);
    const short = draw(empty).drag(at(1000, 3000), at(1060, 3000));
    expect(short.plan).toBe(empty);
    expect(chain(short)).toMatchObject({ press: null, points: [at(1000, 3000)] });
  });
});

describe('a table with turns', () => {
  const begun = () => draw(empty, 'clean').press(at(1000, 1000)).press(at(2000, 1000));
  it.each([
    {
      name: 'a quarter to the right',
      to: at(2010, 2013),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 1000, turnDeg: 90 },
      ],
    },
    {
      name: 'a quarter to the left',
      to: at(2010, 213),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 800, turnDeg: -90 },
      ],
    },
    {
      name: 'by 15°',
      to: at(3000, 1250),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 1050, turnDeg: 15 },
      ],
    },
    {
      name: 'by 135° at most',
      to: at(1000, 1050),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 750, turnDeg: 135 },
      ],
    },
    {
      name: 'by 135° at most to the left',
      to: at(1000, 950),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 750, turnDeg: -135 },
      ],
    },
  ])('$name', ({ to, legs }) => {
    const driver = begun().press(to).key('Enter');
    expect(table(driver)).toMatchObject(nearly({ legs, role: 'clean', place: { kind: 'free', x: 1000, y: 1000, headingDeg: 0 } }));
  });

  it.each([
    { name: 'Enter', end: (driver: Driver) => driver.key('Enter') },
    { name: 'a press on its end', end: (driver: Driver) => driver.press(at(2050, 1000)) },
    { name: 'two quick presses', end: (driver: Driver) => driver.send('double', at(2000, 1000)) },
  ])('$name finishes it', ({ end }) => {
    const driver = end(begun());
    expect(table(driver)?.legs).toEqual([{ length: 1000, turnDeg: 0 }]);
    expect(driver.labels).toEqual(['Add clean table']);
  });

  it('a press 100 mm off its end adds a leg', () => {
    expect(chain(begun().press(at(2100, 1000)))?.points).toHaveLength(3);
  });

  it('Enter before it has a length drops it', () => {
    const driver = draw(empty).press(at(1000, 1000)).key('Enter');
    expect(driver.plan).toBe(empty);
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'add-table', name: 'idle', role: 'soiled' } });
  });

  it('a press where it began goes on', () => {
    expect(chain(draw(empty).press(at(1000, 1000)).press(at(1010, 1000)))?.points).toEqual([at(1000, 1000)]);
  });

  it('reads its legs; Escape drops it', () => {
    const driver = begun().move(at(2000, 1800));
    expect(driver.state.preview?.readouts).toEqual(
      nearly([
        { kind: 'length', from: at(1000, 1000), to: at(2000, 1000), value: 1000 },
        { kind: 'length', from: at(2000, 1000), to: at(2000, 1800), value: 800 },
      ]),
    );
    expect(driver.state.preview?.plan.tables[0]?.legs).toHaveLength(2);
    driver.key('Escape');
    expect(driver.plan).toBe(empty);
    expect(driver.state).toMatchObject({ preview: null, tool: { tool: 'add-table', name: 'idle', role: 'clean' } });
  });

  it('a typed length goes the way of the pointer', () => {
    const driver = begun().move(at(2010, 1500)).type('1234');
    expect(hintOf(driver.state.tool)).toBe(
      'Press where it turns, or type the length: 1234. Enter, or a second press on its end, finishes it.',
    );
    driver.key('Enter');
    expect(chain(driver)?.typed).toBe('');
    expect(table(driver.key('Enter'))?.legs).toEqual(
      nearly([
        { length: 1000, turnDeg: 0 },
        { length: 1234, turnDeg: 90 },
      ]),
    );
    expect(hintOf(draw().state.tool)).toBe('Press at a door of the machine and drag the soiled table out.');
  });

  it('what is no length is refused', () => {
    const driver = begun().type('1/').key('Enter');
    expect(driver.state.message).toEqual({ tone: 'refused', text: '“1/” is not a length.' });
    expect(chain(driver)).toMatchObject({ typed: '', points: [at(1000, 1000), at(2000, 1000)] });
  });
});

describe('what a new table is', () => {
  const joined = (side: 'left' | 'right' | 'front', machine = 'machine') =>
    ({ kind: 'joined', machine, side, gap: 0, offset: 0, skewDeg: 0 }) as const;
  const make = (of: Plan, place: Plan['tables'][number]['place']) =>
    createPlainTable(of, { id: 'new', role: 'clean', place, legs: [{ length: 1000, turnDeg: 0 }] });
  it.each([
    { side: 'left', of: plan, operatorSide: 'left' },
    { side: 'right', of: plan, operatorSide: 'right' },
    { side: 'front', of: plan, operatorSide: 'right' },
    { side: 'front', of: { ...plan, tables: straightPlan().tables.slice(0, 1) }, operatorSide: 'right' },
    { side: 'front', of: { ...plan, tables: straightPlan().tables.slice(1) }, operatorSide: 'left' },
  ] as const)('at the $side its edge looks to the $operatorSide', ({ side, of, operatorSide }) => {
    expect(make(of, joined(side)).operatorSide).toBe(operatorSide);
  });

  it('a table of another machine does not count', () => {
    const other = edit({ ...plan, tables: straightPlan().tables.slice(1) }, 'other', (draft) => {
      draft.machines.push({ ...draft.machines[0]!, id: 'machine-2', x: 6000, y: 3000 });
    }).plan;
    expect(make(other, joined('front', 'machine-2')).operatorSide).toBe('right');
  });

  it('joined, its deck begins at the track and falls ¼ in per foot; free, nothing is known of it', () => {
    expect(make(plan, joined('left'))).toMatchObject({
      depth: 762,
      rackLineFromEdge: 273,
      backsplash: 254,
      deck: { kind: 'fall', jointHeight: 863.6, fall: 1 / 48 },
      fittings: [],
    });
    expect(make(plan, { kind: 'free', x: 0, y: 0, headingDeg: 0 })).toMatchObject({
      operatorSide: 'left',
      deck: { kind: 'fall', jointHeight: null, fall: null },
    });
    expect(make(plan, joined('left', 'nobody')).deck).toMatchObject({ jointHeight: null });
  });
});
