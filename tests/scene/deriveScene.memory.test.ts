import fc from 'fast-check';
import { produce } from 'immer';
import { expect, test } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { createLinePlan, LINE_CONFIGURATIONS, type Plan } from '../../src/plan';
import { deriveScene, type Scene } from '../../src/scene';
import { first, linePlan, table } from './plans';

/** Edits as the editor makes them: each changes one thing, or takes one away. */
const EDITS: ((draft: Plan, by: number) => unknown)[] = [
  (draft, by) => (first(draft.machines).x += by),
  (draft, by) => (first(draft.machines).rotationDeg = (first(draft.machines).rotationDeg + by) % 360),
  (draft) => (first(draft.machines).controls = first(draft.machines).controls === 'front-left' ? 'front-right' : 'front-left'),
  (draft, by) => (first(draft.machines).sheet = FAMILIES[Math.abs(Math.round(by)) % FAMILIES.length]?.id ?? ''),
  (draft, by) => draft.tables[0] && (first(draft.tables[0].legs).length = 800 + Math.abs(by)),
  (draft, by) =>
    draft.tables[1] && draft.tables[1].legs.length < 5 && draft.tables[1].legs.push({ length: 600, turnDeg: by > 0 ? 90 : -90 }),
  (draft, by) => draft.tables[1] && Object.assign(draft.tables[1].place, { gap: Math.max(0, by / 100), side: by > 0 ? 'left' : 'right' }),
  (draft) => draft.tables.pop(),
  (draft, by) => draft.tables.push(table({ id: `t${draft.tables.length}`, place: { kind: 'free', x: by, y: 1500, headingDeg: by } })),
  (draft, by) => draft.things[0] && (draft.things[0].y += by),
  (draft, by) =>
    draft.things.push({
      id: `th${draft.things.length}`,
      kind: 'cart',
      name: '',
      x: 1500 + by,
      y: 2500,
      rotationDeg: 0,
      width: 500,
      depth: 500,
      height: 900,
      ware: by > 0 ? 'clean' : 'none',
      clearBelow: null,
      sealed: null,
      basins: null,
    }),
  (draft, by) => draft.hoods[0] && (draft.hoods[0].width = 1500 + by),
  (draft, by) => (first(draft.room.outline).x -= Math.abs(by)),
  (draft, by) => (draft.settings.personWidth = 600 + Math.abs(by) / 4),
  (draft, by) =>
    draft.room.columns.push({ id: `c${draft.room.columns.length}`, x: 1000 + by, y: 2000, width: 300, depth: 300, rotationDeg: 0 }),
];

const history = fc.array(fc.tuple(fc.nat(EDITS.length - 1), fc.integer({ min: -400, max: 400 })), { minLength: 1, maxLength: 12 });

test('seeded: a scene derived edit by edit equals one derived from a copy that nothing was remembered of', () => {
  fc.assert(
    fc.property(fc.constantFrom(...FAMILIES), fc.constantFrom(...LINE_CONFIGURATIONS), history, (family, configuration, edits) => {
      let plan = createLinePlan({ family: family.id, configuration, hand: 'left-to-right' });
      const seen = [plan];
      for (const [edit, by] of edits) {
        plan = produce(plan, (draft) => void EDITS[edit]?.(draft, by));
        seen.push(plan);
        expectFresh(plan);
      }
      // Undo: back the same way.
      for (const earlier of seen.toReversed()) expectFresh(earlier);
    }),
    { seed: 7, numRuns: 40 },
  );
}, 30_000);

/** As text, which is quick to compare. */
function expectFresh(plan: Plan): void {
  const [remembered, fresh] = [deriveScene(plan), deriveScene(structuredClone(plan))];
  if (JSON.stringify(remembered) !== JSON.stringify(fresh)) throw new Error(`differs: ${firstDifference(remembered, fresh)}`);
}

function firstDifference(a: Scene, b: Scene): string | undefined {
  return Object.keys(a).find((key) => JSON.stringify(a[key as keyof Scene]) !== JSON.stringify(b[key as keyof Scene]));
}

/** A room with two lines, so that nothing may be mixed up or forgotten between them. */
const twoLines = linePlan({ family: 'tall-door', configuration: 'straight' }, (draft) => {
  const other = createLinePlan({ family: 'direct-vent', configuration: 'straight', hand: 'right-to-left', at: { x: 20_000, y: 500 } });
  for (const item of [...other.machines, ...other.tables, ...other.things, ...other.runs]) item.id = `other-${item.id}`;
  for (const item of other.tables) Object.assign(item.place, { machine: 'other-machine' });
  draft.machines.push(...other.machines);
  draft.tables.push(...other.tables);
  draft.things.push(...other.things);
  draft.runs.push(...other.runs.map((run) => ({ ...run, machine: 'other-machine' })));
  draft.room.outline.forEach((corner) => Object.assign(corner, { x: corner.x > 3000 ? 26_000 : corner.x }));
});

type ListName = 'machines' | 'tables' | 'things' | 'hoods' | 'runs' | 'joints' | 'lines' | 'solids';
const LISTS: ListName[] = ['machines', 'tables', 'things', 'hoods', 'runs', 'joints', 'lines', 'solids'];

/** Which items are other objects after an edit, by list and index. */
function changedItems(edit: (draft: Plan) => unknown): string[] {
  const plan = structuredClone(twoLines);
  const before = deriveScene(plan);
  const after = deriveScene(produce(plan, (draft) => void edit(draft)));
  const item = (scene: Scene, name: ListName, i: number): unknown => scene[name][i];
  return LISTS.flatMap((name) => before[name].flatMap((_, i) => (item(before, name, i) === item(after, name, i) ? [] : [`${name} ${i}`])));
}

test.each([
  { name: 'the title', edit: (draft: Plan) => (draft.title.project = 'School'), changed: [] },
  {
    name: 'a thing far from both machines',
    edit: (draft: Plan) => (first(draft.things).ware = 'none'),
    changed: ['things 0', 'lines 0', 'lines 1', 'solids 14'],
  },
  {
    name: 'a table of the second line',
    edit: (draft: Plan) => draft.tables[3] && (draft.tables[3].backsplash += 10),
    changed: ['tables 3', 'hoods 0', 'joints 3', 'lines 0', 'lines 1', 'solids 12', 'solids 13', 'solids 22'],
  },
  { name: 'the hood', edit: (draft: Plan) => (first(draft.hoods).width += 10), changed: ['hoods 0', 'lines 0', 'lines 1', 'solids 22'] },
  {
    name: 'the second line’s run, which begins below head height',
    edit: (draft: Plan) => (first(draft.runs).diameter += 1),
    changed: ['runs 0', 'lines 0', 'lines 1', 'solids 23', 'solids 24'],
  },
])('after an edit of $name the rest is the same objects', ({ edit, changed }) => {
  const scene = deriveScene(twoLines);
  expect(scene.lines.map(({ hand }) => hand)).toEqual(['left-to-right', 'right-to-left']);
  expect(changedItems(edit)).toEqual(changed);
});

test('the same plan is the same scene', () => expect(deriveScene(twoLines)).toBe(deriveScene(twoLines)));
