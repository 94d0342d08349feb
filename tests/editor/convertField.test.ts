import { describe, expect, it } from 'vitest';
import { findFamily } from '../../src/catalog';
import { setField } from '../../src/editor';
import type { FieldValue } from '../../src/editor/fields/field';
import { edit, type FieldPath, freeTable, type Plan, removeItems } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { nearly } from '../support/nearly';
import { emptyPlan, straightPlan, withThing } from './plans';

const direct = straightPlan('direct-vent');
const after = (plan: Plan, path: FieldPath, value: FieldValue): Plan => {
  const result = setField(plan, path, value);
  if (!result.ok) throw new Error(result.problem);
  return result.transaction.plan;
};
const refused = (plan: Plan, path: FieldPath, value: FieldValue) => {
  const result = setField(plan, path, value);
  return result.ok ? 'carried out' : result.problem;
};
const outline = ({ room }: Plan) => room.outline.map(({ x, y }) => [x, y]);

describe('the place of a machine', () => {
  it('takes its run and its hood along, each way', () => {
    const across = after(direct, ['machines', 0, 'x'], 4300);
    expect(across.machines[0]).toMatchObject({ x: 4300, y: 800 });
    expect(across.runs[0]?.points[0]).toMatchObject(nearly({ x: 4300, y: 594.5 }));
    const down = after(straightPlan(), ['machines', 0, 'y'], 1000);
    expect(down.machines[0]).toMatchObject({ x: 4000, y: 1000 });
    expect(down.hoods[0]?.y).toBeCloseTo(straightPlan().hoods[0]!.y + 200, 8);
  });

  it('its rotation turns them about its middle, and is what was typed', () => {
    const quarter = edit(straightPlan(), 'turn', (draft) => void (draft.machines[0]!.rotationDeg = 30)).plan;
    const { x, y } = quarter.hoods[0]!;
    const turned = after(quarter, ['machines', 0, 'rotationDeg'], 120);
    expect(turned.machines[0]).toMatchObject({ x: 4000, y: 800, rotationDeg: 120 });
    expect(turned.hoods[0]).toMatchObject(nearly({ x: 4000 - (y - 800), y: 800 + (x - 4000), rotationDeg: 90 }));
  });
});

describe('how a table stands', () => {
  const free = edit(straightPlan(), 'free', freeTable('soiled-table')).plan;
  const at = (x: number, y: number, headingDeg: number, plan = free) =>
    edit(plan, 'place', (draft) => void (draft.tables[0]!.place = { kind: 'free', x, y, headingDeg })).plan;
  const doorOf = (plan: Plan) => {
    const { place } = after(plan, ['tables', 0, 'place', 'kind'], 'joined').tables[0]!;
    return place.kind === 'joined' ? [place.machine, place.side] : [];
  };
  const alone = edit(free, 'alone', removeItems(['clean-table'])).plan;
  const two = edit(alone, 'two', (draft) => void draft.machines.push({ ...draft.machines[0]!, id: 'second', x: 6500, y: 3500 })).plan;

  it.each([
    { name: 'the nearest of the doors that it heads out of', plan: at(4500, 800, 0, alone), door: ['machine', 'right'] },
    { name: 'one that it heads out of before a nearer one', plan: at(4500, 800, 180, alone), door: ['machine', 'left'] },
    { name: 'within 45°', plan: at(3600, 800, 45, alone), door: ['machine', 'front'] },
    { name: 'not beyond', plan: at(3600, 800, 44, alone), door: ['machine', 'right'] },
    { name: 'never one that has a table, but the nearest other', plan: at(4500, 800, 0), door: ['machine', 'front'] },
    { name: 'of the nearest machine', plan: at(6900, 3500, 0, two), door: ['second', 'right'] },
    { name: 'of the nearest machine, the first', plan: at(4500, 900, 0, two), door: ['machine', 'right'] },
  ])('joins $name', ({ plan, door }) => {
    expect(doorOf(plan)).toEqual(door);
  });

  it('is refused without a free door, and unchanged where it stands so already', () => {
    expect(refused(edit(free, 'none', (draft) => void (draft.machines = [])).plan, ['tables', 0, 'place', 'kind'], 'joined')).toBe(
      'No machine has a free door for this table.',
    );
    expect(after(free, ['tables', 0, 'place', 'kind'], 'free')).toEqual(free);
    expect(after(straightPlan(), ['tables', 0, 'place', 'kind'], 'free').tables[0]?.place).toEqual(
      nearly({ kind: 'free', x: 3631.5, y: 800, headingDeg: 180 }),
    );
  });

  it('a side needs a door', () => {
    expect(after(straightPlan(), ['tables', 0, 'place', 'side'], 'front').tables[0]?.place).toMatchObject({ side: 'front' });
    expect(refused(straightPlan(), ['tables', 0, 'place', 'side'], 'back')).toBe('The machine has no door on its back.');
  });

  it('the length of one of its legs keeps its fittings on it', () => {
    const short = after(straightPlan(), ['tables', 0, 'legs', 0, 'length'], 2500);
    expect(short.tables[0]?.legs[0]?.length).toBe(2500);
    expect(short.tables[0]?.fittings.at(-1)?.at).toBe(2500 - 330);
  });
});

describe('another kind of fitting', () => {
  const kind = (value: string, plan = straightPlan(), index = 2) =>
    after(plan, ['tables', 0, 'fittings', index, 'kind'], value).tables[0]!.fittings[index];
  it.each([
    { value: 'sink', gives: { kind: 'sink', id: 'scrap', at: 2140, length: 510 } },
    { value: 'drop-off', gives: { kind: 'drop-off', id: 'scrap', at: 2140, length: 660 } },
    { value: 'scrap', gives: { kind: 'scrap', id: 'scrap', at: 2140, length: 200 } },
  ])('$value', ({ value, gives }) => {
    expect(kind(value)).toMatchObject(gives);
  });

  it('as far as it fits on its table', () => {
    const near = (at: number, length: number) =>
      edit(straightPlan(), 'near', (draft) => {
        draft.tables[0]!.legs[0]!.length = length;
        draft.tables[0]!.fittings = [{ ...draft.tables[0]!.fittings[2]!, at }];
      }).plan;
    expect(kind('drop-off', near(100, 2900), 0)).toMatchObject({ at: 330, length: 660 });
    expect(kind('drop-off', near(2800, 2900), 0)).toMatchObject({ at: 2570, length: 660 });
    expect(kind('drop-off', near(200, 400), 0)).toMatchObject({ at: 200, length: 400 });
  });
});

describe('parts that are there or not', () => {
  it('a fan comes into the middle of its run, and stays as it is', () => {
    const none = after(direct, ['runs', 0, 'fan'], false);
    expect(none.runs[0]?.fan).toBeNull();
    // A riser of 670 and a leg of 1288.5 that rises by 27.
    expect(after(none, ['runs', 0, 'fan'], true).runs[0]?.fan).toEqual(
      nearly({ at: (670 + Math.hypot(1288.5, 27)) / 2, attitude: 'upright', drainHole: null, cordWay: null }),
    );
    expect(after(direct, ['runs', 0, 'fan'], true)).toEqual(direct);
  });

  it('a duct becomes as wide and high as it was round, and round again', () => {
    const square = after(direct, ['runs', 0, 'duct', 'sides'], true);
    expect(square.runs[0]?.duct.sides).toEqual({ width: 177.8, height: 177.8 });
    const wide = edit(square, 'wide', (draft) => void (draft.runs[0]!.duct.sides!.width = 300)).plan;
    expect(after(wide, ['runs', 0, 'duct', 'sides'], true)).toEqual(wide);
    expect(after(wide, ['runs', 0, 'duct', 'sides'], false).runs[0]?.duct.sides).toBeNull();
  });

  it('basins of which nothing is known, and none', () => {
    const sink = withThing(emptyPlan(), { kind: 'three-compartment-sink' });
    const some = after(sink, ['things', 0, 'basins'], true);
    expect(some.things[0]?.basins).not.toBeNull();
    const known = edit(some, 'known', (draft) => void (draft.things[0]!.basins!.sanitizing = 'chemical')).plan;
    expect(after(known, ['things', 0, 'basins'], true)).toEqual(known);
    expect(after(known, ['things', 0, 'basins'], false).things[0]?.basins).toBeNull();
  });
});

describe('walls and corners', () => {
  const room = emptyPlan();
  it.each([
    {
      index: 0,
      length: 9000,
      gives: [
        [0, 0],
        [9000, 0],
        [9000, 5000],
        [0, 5000],
      ],
    },
    {
      index: 1,
      length: 4000,
      gives: [
        [0, 0],
        [8000, 0],
        [8000, 4000],
        [0, 4000],
      ],
    },
    {
      index: 2,
      length: 7000,
      gives: [
        [1000, 0],
        [8000, 0],
        [8000, 5000],
        [1000, 5000],
      ],
    },
    {
      index: 3,
      length: 6000,
      gives: [
        [0, -1000],
        [8000, -1000],
        [8000, 5000],
        [0, 5000],
      ],
    },
  ])('wall $index, $length long, moves the wall at its end', ({ index, length, gives }) => {
    expect(outline(after(room, ['room', 'outline', index, 'length'], length))).toEqual(nearly(gives));
  });

  it('a slant wall keeps its direction', () => {
    const slant = edit(room, 'slant', (draft) => {
      draft.room.openings = [];
      Object.assign(draft.room.outline[1]!, { x: 3000, y: -4000 });
    }).plan;
    // Along (0.6, −0.8), from 5000 to 6000.
    expect(outline(after(slant, ['room', 'outline', 0, 'length'], 6000)).slice(0, 3)).toEqual(
      nearly([
        [0, 0],
        [3600, -4800],
        [8600, 4200],
      ]),
    );
  });

  it('a corner goes to its place, one way at a time', () => {
    expect(outline(after(room, ['room', 'outline', 1, 'x'], 8500))[1]).toEqual([8500, 0]);
    expect(outline(after(room, ['room', 'outline', 1, 'y'], -300))[1]).toEqual([8000, -300]);
  });

  it.each([
    { from: 1000, gives: 1000 },
    { from: 6000, gives: 4086 },
  ])('an opening at $from comes to lie on another wall at $gives', ({ from, gives }) => {
    const plan = edit(room, 'from', (draft) => void (draft.room.openings[0]!.from = from)).plan;
    expect(after(plan, ['room', 'openings', 0, 'wall'], 'wall-2').room.openings[0]).toMatchObject({ wall: 'wall-2', from: gives });
  });
});

describe('data sheets', () => {
  const own = edit(direct, 'own', (draft) => {
    draft.sheets.push({ ...structuredClone(findFamily('direct-vent')!), id: 'mine' });
    draft.machines[0]!.sheet = 'mine';
  }).plan;
  it('a door comes and goes in the order of the sides', () => {
    const without = after(own, ['sheets', 0, 'doors', 'front'], false);
    expect(without.sheets[0]?.doors).toEqual(['left', 'right']);
    expect(after(without, ['sheets', 0, 'doors', 'front'], true).sheets[0]?.doors).toEqual(['left', 'right', 'front']);
    expect(refused(own, ['sheets', 0, 'doors', 'left'], false)).toBe(
      'The door at the left stays: the soiled table is joined there. Move the table first.',
    );
    const last = edit(own, 'last', (draft) => {
      draft.tables = [];
      draft.sheets[0]!.doors = ['left'];
    }).plan;
    expect(refused(last, ['sheets', 0, 'doors', 'left'], false)).toBe('A machine has one door at least.');
    expect(after(last, ['sheets', 0, 'doors', 'left'], true).sheets[0]?.doors).toEqual(['left']);
  });

  it('a part that was not known begins as a family has it, and stays as it is', () => {
    const none = after(own, ['sheets', 0, 'rinsePressure'], false);
    expect(none.sheets[0]?.rinsePressure).toBeNull();
    const again = after(none, ['sheets', 0, 'rinsePressure'], true);
    expect(again.sheets[0]?.rinsePressure).not.toBeNull();
    const changed = edit(again, 'changed', (draft) => void (draft.sheets[0]!.rinsePressure!.least += 1)).plan;
    expect(after(changed, ['sheets', 0, 'rinsePressure'], true)).toEqual(changed);
  });

  it('another vent begins as a family has it', () => {
    const hood = edit(own, 'no run', (draft) => void (draft.runs = [])).plan;
    expect(after(hood, ['sheets', 0, 'vent', 'kind'], 'hood').sheets[0]?.vent).toEqual({ kind: 'hood' });
    expect(after(hood, ['sheets', 0, 'vent', 'kind'], 'direct')).toEqual(hood);
  });

  it('the collar stays while a run begins there', () => {
    const index = own.sheets[0]!.connections.findIndex(({ kind }) => kind === 'collar');
    expect(refused(own, ['sheets', 0, 'connections', index, 'kind'], 'drain')).toBe(
      `The collar stays: the duct run of machine ${deriveScene(own).marks['machine']} begins there.`,
    );
    const free = edit(own, 'free', (draft) => void (draft.runs = [])).plan;
    expect(after(free, ['sheets', 0, 'connections', index, 'kind'], 'drain').sheets[0]?.connections[index]?.kind).toBe('drain');
    expect(after(own, ['sheets', 0, 'connections', index, 'kind'], 'collar')).toEqual(own);
    const other = index === 0 ? 1 : 0;
    expect(after(own, ['sheets', 0, 'connections', other, 'kind'], 'drain').sheets[0]?.connections[other]?.kind).toBe('drain');
  });
});

describe('what a field refuses', () => {
  it.each<[FieldPath, FieldValue, string | RegExp]>([
    [['nowhere'], 1, 'There is no such field any more.'],
    [['things', 0, 'width'], null, 'Width can’t be left unknown.'],
    [['things', 0, 'width'], 'wide', 'Width is a number.'],
    [['things', 0, 'width'], Number.NaN, 'Width is a number.'],
    [['things', 0, 'width'], Number.POSITIVE_INFINITY, 'Width is a number.'],
    [['things', 0, 'name'], 5, 'Own name is a text.'],
    [['things', 0, 'kind'], 'boat', 'What it is can’t be boat.'],
    [['things', 0, 'sealed'], 'yes', / can’t be yes\.$/],
  ])('%o as %s: %s', (path, value, says) => {
    expect(refused(withThing(emptyPlan()), path, value)).toMatch(says);
  });

  it.each([
    [10, 'carried out'],
    [9.9, 'Width must be at least ⅜″.'],
    [20_000, 'carried out'],
  ])('a width of %d mm: %s', (value, says) => {
    expect(refused(withThing(emptyPlan()), ['things', 0, 'width'], value)).toBe(says);
  });

  it('is called by its field', () => {
    const result = setField(withThing(emptyPlan()), ['things', 0, 'width'], 900);
    expect(result).toMatchObject({ ok: true, transaction: { label: 'Change width' } });
  });
});
