import { describe, expect, it } from 'vitest';
import { findFamily } from '../../src/catalog';
import { type Field, fieldAt, fieldsFor, formatField, SECTIONS, setField, setFieldText, wallLengthPath } from '../../src/editor';
import { edit, type FieldPath, type Plan, readField, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { straightPlan, withThing } from './plans';

/** A plan that holds one of everything. */
function richPlan(): Plan {
  const base = withThing(straightPlan('direct-vent'));
  return edit(base, 'rich', (draft) => {
    draft.room.openings.push({
      id: 'door-1',
      kind: 'door',
      wall: 'wall-3',
      from: 1000,
      width: 914,
      height: 2032,
      sill: 0,
      swing: 'out',
      hinge: 'start',
    });
    draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 300, rotationDeg: 0 });
    draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 200, waste: UNKNOWN_FLOOR_WASTE });
    draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 100, z: 1200 });
    draft.hoods.push({
      id: 'hood',
      x: 4000,
      y: 900,
      rotationDeg: 0,
      width: 1300,
      depth: 1300,
      lipHeight: 2000,
      height: 500,
      exhaust: null,
      cavityAir: null,
    });
    const table = draft.tables.find(({ id }) => id === 'clean-table')!;
    table.deck = { kind: 'heights', heights: [870, 900] };
    table.fittings.push({ id: 'shelf-1', kind: 'overshelf', at: 700, length: 800, depth: 300, height: 1500 });
    const soiled = draft.tables.find(({ id }) => id === 'soiled-table')!;
    soiled.place = { kind: 'free', x: 3500, y: 3000, headingDeg: 180 };
    for (const fitting of soiled.fittings) if (fitting.kind === 'scrap') fitting.troughDepth = 150;
    for (const family of ['direct-vent', 'heat-recovery']) draft.sheets.push({ ...findFamily(family)!, id: `${family}-1` });
    Object.assign(draft.machines[0]!, { sheet: 'direct-vent-1' }).hookUp.boosterPlace = 'apart';
  }).plan;
}

const plan = richPlan();
const scene = deriveScene(plan);
const ids = () =>
  [
    ...[
      plan.machines,
      plan.tables,
      plan.things,
      plan.hoods,
      plan.runs,
      plan.room.openings,
      plan.room.columns,
      plan.room.floorDrains,
      plan.room.stubs,
      plan.room.outline,
      plan.sheets,
    ].flat(),
    ...plan.tables.flatMap(({ fittings }) => fittings),
  ].map(({ id }) => id);

/** Every value of the plan that a person can have said. */
function leaves(value: unknown, path: FieldPath = []): FieldPath[] {
  const last = path.at(-1);
  if (last === 'id' || last === 'format' || last === 'version') return [];
  if (path[2] === 'doors' && typeof value === 'string') return [[...path.slice(0, -1), value]];
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, child]) => leaves(child, [...path, Array.isArray(value) ? Number(key) : key]));
}

describe('cards', () => {
  const fields = [...SECTIONS, ...ids()].flatMap((id) => fieldsFor(plan, scene, id));
  const shown = new Set(fields.map(({ path }) => path.join('.')));

  it('hold every property of everything', () => {
    const all = leaves(plan).map((path) => path.join('.'));
    expect(all.length).toBeGreaterThan(350);
    expect(all.filter((path) => !shown.has(path))).toEqual([]);
  });

  it('show what stands in the plan, with a label, in a group', () => {
    const isLengthOfWall = ({ path }: Field) => path[1] === 'outline' && path.at(-1) === 'length';
    const stored = (field: Field) => {
      const value = readField(plan, field.path);
      if (field.path.at(-2) === 'doors') return plan.sheets[Number(field.path[1])]?.doors.some((side) => side === field.path.at(-1));
      return ['fan', 'basins', 'sides', 'tank', 'rinsePressure'].includes(String(field.path.at(-1))) && typeof value !== 'string'
        ? value !== null
        : value;
    };
    const wrong = fields.filter((field) => !isLengthOfWall(field) && (field.label === '' || field.value !== stored(field)));
    expect(wrong.map(({ path }) => path.join('.'))).toEqual([]);
    const choices = fields.filter(({ kind, value }) => kind === 'choice' && value !== null);
    expect(choices.filter(({ options, value }) => !options.some((option) => option.value === value))).toEqual([]);
  });

  it('have no two fields of the same name in one part', () => {
    const nameOf = ({ group, part, label, path }: Field) =>
      [group, part, part === null ? '' : path.slice(0, -1).join('.'), label].join(' ');
    const repeated = [...SECTIONS, ...ids()].filter((id) => {
      const names = fieldsFor(plan, scene, id).map(nameOf);
      return new Set(names).size < names.length;
    });
    expect(repeated).toEqual([]);
  });

  it('say which values may be unknown, and their limits', () => {
    const field = fieldAt(plan, scene, ['hoods', 0, 'lipHeight']);
    expect(field).toMatchObject({ kind: 'length', nullable: true, min: 0, group: 'size', label: 'Lower lip' });
    expect(fieldAt(plan, scene, ['tables', 0, 'depth'])).toMatchObject({ nullable: false, min: 100, max: 3000 });
  });

  it('know nothing of ids that are gone', () => {
    expect(fieldsFor(plan, scene, 'nothing-9')).toEqual([]);
    expect(fieldAt(plan, scene, ['tables', 9, 'depth'])).toBeNull();
    expect(fieldAt(plan, scene, ['__proto__', 'x'])).toBeNull();
  });
});

/** What people type, and what the plan then holds (mm, °C, kPa, ratio), or the reason why not. */
const TYPED: { path: FieldPath; text: string; units: 'us' | 'metric'; gives?: unknown; says?: RegExp }[] = [
  { path: ['things', 0, 'width'], text: `6' 4 1/2"`, units: 'us', gives: 76.5 * 25.4 },
  { path: ['things', 0, 'width'], text: '76.5 in', units: 'us', gives: 76.5 * 25.4 },
  { path: ['things', 0, 'width'], text: '1943 mm', units: 'us', gives: 1943 },
  { path: ['things', 0, 'width'], text: '1943', units: 'metric', gives: 1943 },
  { path: ['things', 0, 'width'], text: '30', units: 'us', gives: 762 },
  { path: ['things', 0, 'width'], text: '1/8"', units: 'us', says: /at least ⅜″/ },
  { path: ['things', 0, 'width'], text: '30 m', units: 'metric', says: /at most 20\s000\smm/ },
  { path: ['things', 0, 'width'], text: 'wide', units: 'us', says: /not a length/ },
  { path: ['things', 0, 'width'], text: '', units: 'us', says: /Type a length/ },
  { path: ['things', 0, 'x'], text: '-100', units: 'metric', gives: -100 },
  { path: ['hoods', 0, 'lipHeight'], text: '', units: 'us', gives: null },
  { path: ['things', 0, 'rotationDeg'], text: '37.5°', units: 'us', gives: 37.5 },
  { path: ['things', 0, 'rotationDeg'], text: '400', units: 'us', says: /at most 360°/ },
  { path: ['supply', 'hotWaterC'], text: '140', units: 'us', gives: 60 },
  { path: ['supply', 'hotWaterC'], text: '60 C', units: 'us', gives: 60 },
  { path: ['supply', 'flowPressureKpa'], text: '20 psi', units: 'us', gives: expect.closeTo(137.895, 2) },
  { path: ['supply', 'flowPressureKpa'], text: '140', units: 'metric', gives: 140 },
  { path: ['supply', 'voltage'], text: '208 V', units: 'us', gives: 208 },
  { path: ['supply', 'phase'], text: 'three-phase', units: 'us', gives: 3 },
  { path: ['supply', 'phase'], text: '2', units: 'us', says: /not one of/ },
  { path: ['demand', 'mealsPerDay'], text: '1200', units: 'us', gives: 1200 },
  { path: ['demand', 'mealsPerDay'], text: 'many', units: 'us', says: /not a number/ },
  { path: ['title', 'project'], text: '  Alder Street School ', units: 'us', gives: 'Alder Street School' },
  { path: ['title', 'project'], text: 'x'.repeat(201), units: 'us', says: /201 characters; 200 fit/ },
  { path: ['settings', 'units'], text: 'metric', units: 'us', gives: 'metric' },
  { path: ['runs', 0, 'outlet'], text: 'the roof', units: 'us', gives: 'roof' },
  { path: ['room', 'openings', 0, 'from'], text: '8000', units: 'metric', says: /beyond the end of its wall/ },
  { path: ['tables', 0, 'legs', 0, 'turnDeg'], text: '90', units: 'us', says: /no turn before it/ },
  { path: ['nowhere'], text: '1', units: 'us', says: /no such field/ },
  { path: ['sheets', 0, 'width'], text: '30 in', units: 'us', gives: 762 },
  {
    path: ['sheets', 0, 'width'],
    text: '1 ft',
    units: 'us',
    says: /^Front, at the right corner, ends along its side: the controls end at 2′\s4\s¹³⁄₁₆″ on a side of 1′\s0″\.$/,
  },
  { path: ['sheets', 0, 'width'], text: '4 m', units: 'metric', says: /Footprint, left to right must be at most 3000\smm/ },
  { path: ['sheets', 0, 'vent', 'maxEquivalentLength'], text: '40 ft', units: 'us', gives: 12_192 },
  { path: ['sheets', 0, 'cycle', 'washS'], text: '45.5 s', units: 'us', gives: 45.5 },
  { path: ['sheets', 0, 'cycle', 'washS'], text: '1 min', units: 'us', gives: 60 },
  { path: ['sheets', 0, 'rinseWaterL'], text: '0.74 gal', units: 'us', gives: expect.closeTo(2.8012, 3) },
  { path: ['sheets', 0, 'rinseWaterL'], text: '2.9', units: 'metric', gives: 2.9 },
  { path: ['sheets', 0, 'electrical', 0, 'powerKw'], text: '9 kW', units: 'us', gives: 9 },
  { path: ['sheets', 0, 'electrical', 0, 'currentA'], text: '40', units: 'us', gives: 40 },
  { path: ['sheets', 0, 'temperatures', 'rinseC'], text: '180', units: 'us', gives: expect.closeTo(82.222, 2) },
  { path: ['sheets', 0, 'rinsePressure', 'least'], text: '5 psi', units: 'us', gives: expect.closeTo(34_473.8, 0) },
  { path: ['sheets', 0, 'conversion', 'toCorner', 0], text: ' Shut the water. ', units: 'us', gives: 'Shut the water.' },
  {
    path: ['sheets', 0, 'controls', 0, 'to'],
    text: '2 mm',
    units: 'metric',
    says: /^Front, at the left corner, ends along its side: expected an end beyond its start of 5\smm, found 2\smm\.$/,
  },
  { path: ['sheets', 0, 'name'], text: 'x'.repeat(201), units: 'us', says: /Name of the machine has 201 characters; 200 fit/ },
  { path: ['sheets', 0, 'name'], text: '  ', units: 'us', says: /^A data sheet needs a name\.$/ },
  { path: ['sheets', 9, 'width'], text: '700', units: 'us', says: /no such field/ },
  { path: ['sheets', 0, 'id'], text: 'other', units: 'us', says: /no such field/ },
];

const near = (value: unknown): unknown => (typeof value === 'number' ? expect.closeTo(value, 6) : value);
const matching = (words: RegExp): unknown => expect.stringMatching(words);

/** What typing led to: the value that the plan then holds, or the reason. */
function typed(base: Plan, path: FieldPath, text: string, units: 'us' | 'metric'): unknown {
  const result = setFieldText(base, path, text, units);
  return result.ok ? { value: readField(result.transaction.plan, path) } : { problem: result.problem };
}

describe('typing', () => {
  it.each(
    TYPED.map(({ says, gives, ...row }) => ({
      ...row,
      expected: says === undefined ? { value: near(gives) } : { problem: matching(says) },
    })),
  )('“$text” into $path', ({ path, text, units, expected }) => {
    expect(typed(plan, path, text, units)).toEqual(expected);
  });

  it.each([
    { text: '1/4" per ft', units: 'us' as const, value: 1 / 48 },
    { text: '2 %', units: 'metric' as const, value: 0.02 },
    { text: '-1:48', units: 'us' as const, value: -1 / 48 },
  ])('a slope, as people say it: $text', ({ text, units, value }) => {
    expect(typed(straightPlan(), ['tables', 0, 'deck', 'fall'], text, units)).toEqual({ value: expect.closeTo(value, 9) });
  });

  it('what is read can be typed again, within what is shown', () => {
    const fields = [...SECTIONS, ...ids()].flatMap((id) => fieldsFor(plan, scene, id));
    expect(fields.filter((field) => !isRetypable(field)).map(({ path }) => path.join('.'))).toEqual([]);
  }, 60_000);
});

/** What a field shows is not finer than a sixteenth of an inch, so a number comes back within 1 mm, or within its last figures; or is refused where rounding leaves its bounds. */
function isRetypable(field: Field): boolean {
  const text = formatField(field, 'us');
  if (field.value === null || text === '') return true;
  const result = setFieldText(plan, field.path, text, 'us');
  if (!result.ok) return typeof field.value === 'number' && /reaches from|ends at/.test(result.problem);
  const after = fieldAt(result.transaction.plan, deriveScene(result.transaction.plan), field.path)?.value;
  return typeof field.value === 'number'
    ? Math.abs(Number(after) - field.value) < Math.max(1, Math.abs(field.value) / 100)
    : after === field.value;
}

function ok(result: ReturnType<typeof setField>): Plan {
  if (!result.ok) throw new Error(result.problem);
  return result.transaction.plan;
}

describe('what hangs on a field comes along', () => {
  it('another data sheet brings its own controls and variants', () => {
    const after = ok(setField(plan, ['machines', 0, 'sheet'], 'tall-door'));
    expect(after.machines[0]).toMatchObject({ sheet: 'tall-door' });
  });

  it('a machine that is typed to a place takes its hood and tables along', () => {
    const base = straightPlan();
    const after = ok(setField(base, ['machines', 0, 'x'], 4500));
    expect(after.hoods[0]!.x).toBeCloseTo(base.hoods[0]!.x + 500, 6);
    expect(deriveScene(after).joints.every(({ gap }) => Math.abs(gap) < 1e-6)).toBe(true);
  });

  it('a rotation is what was typed', () => {
    expect(ok(setField(straightPlan(), ['machines', 0, 'rotationDeg'], 37.5)).machines[0]?.rotationDeg).toBe(37.5);
  });

  it('a free table joins the nearest free door; a joined one becomes free in its place', () => {
    const joined = ok(setField(plan, ['tables', 0, 'place', 'kind'], 'joined'));
    expect(joined.tables[0]?.place).toMatchObject({ kind: 'joined', side: 'left', gap: 0 });
    const base = straightPlan();
    const free = ok(setField(base, ['tables', 0, 'place', 'kind'], 'free'));
    expect(deriveScene(free).tables[0]?.outline).toEqual(deriveScene(base).tables[0]?.outline);
  });

  it('a side without a door is refused', () => {
    expect(setField(straightPlan(), ['tables', 0, 'place', 'side'], 'back')).toEqual({
      ok: false,
      problem: expect.stringContaining('no door on its back'),
    });
  });

  it('deck heights and fall turn into each other', () => {
    const base = straightPlan();
    const heights = ok(setField(base, ['tables', 0, 'deck', 'kind'], 'heights'));
    expect(heights.tables[0]?.deck.kind).toBe('heights');
    const back = ok(setField(heights, ['tables', 0, 'deck', 'kind'], 'fall'));
    expect(back.tables[0]?.deck).toMatchObject({ kind: 'fall', fall: expect.closeTo(1 / 48, 6) });
  });

  it('a run gets a fan and loses it', () => {
    const without = ok(setField(plan, ['runs', 0, 'fan'], false));
    expect(without.runs[0]?.fan).toBeNull();
    expect(ok(setField(without, ['runs', 0, 'fan'], true)).runs[0]?.fan).toMatchObject({ attitude: 'upright', drainHole: null });
  });

  it('a fitting becomes another in its place', () => {
    const base = straightPlan();
    const index = base.tables[0]!.fittings.findIndex(({ id }) => id === 'scrap');
    const after = ok(setField(base, ['tables', 0, 'fittings', index, 'kind'], 'overshelf'));
    expect(after.tables[0]!.fittings[index]).toMatchObject({ id: 'scrap', kind: 'overshelf' });
  });

  it('a shorter leg keeps its fittings on the table', () => {
    const after = ok(setField(straightPlan(), ['tables', 0, 'legs', 0, 'length'], 2000)).tables[0]!;
    expect(after.fittings.every(({ at, length }) => at + length / 2 <= 2000)).toBe(true);
  });

  it('the length of a wall moves the wall at its end', () => {
    const path = wallLengthPath(plan, 'wall-1');
    expect(fieldAt(plan, scene, path)?.value).toBe(8000);
    const after = ok(setField(plan, path, 9000));
    expect(after.room.outline.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [9000, 0],
      [9000, 5000],
      [0, 5000],
    ]);
    expect(after.room.openings[0]?.from).toBe(2000);
  });

  it('a refusal leaves the plan as it is', () => {
    const before = JSON.stringify(plan);
    setFieldText(plan, ['things', 0, 'width'], 'nonsense', 'us');
    expect(JSON.stringify(plan)).toBe(before);
  });
});
