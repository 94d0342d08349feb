import { describe, expect, it } from 'vitest';
import { edit, freeTable, type Plan, type Table } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { straightPlan } from './plans';

const soiled = (plan: Plan) => plan.tables.find(({ role }) => role === 'soiled') as Table;
const clean = (plan: Plan) => plan.tables.find(({ role }) => role === 'clean') as Table;

/** The plan with its clean table free, moved and turned away from its door. */
function withFreeTable(by: { x: number; y: number }, turnDeg = 0): Plan {
  const plan = straightPlan();
  return edit(plan, 'free', (draft) => {
    freeTable('clean-table')(draft);
    const place = draft.tables.find(({ id }) => id === 'clean-table')?.place;
    if (place?.kind === 'free') Object.assign(place, { x: place.x + by.x, y: place.y + by.y, headingDeg: place.headingDeg + turnDeg });
  }).plan;
}

/** A spot on the bare deck of the clean table, near its far end beyond the landing. */
function grip(plan: Plan) {
  const placed = deriveScene(plan).tables.find(({ table }) => table.id === 'clean-table');
  const end = placed?.path.at(-1) ?? at(0, 0);
  const heading = placed?.heading ?? at(1, 0);
  return at(end.x - heading.x * 20, end.y - heading.y * 20);
}

const pull = (plan: Plan, dx: number, dy: number, options = {}) => {
  const from = grip(plan);
  return new Driver(plan).drag(from, at(from.x + dx, from.y + dy), options);
};

describe('a table and a door', () => {
  it.each([
    { name: 'near and square', by: at(600, 300), turnDeg: 0, dx: -480, dy: -300, joins: true },
    { name: 'just within 150 mm', by: at(600, 0), turnDeg: 0, dx: -451, dy: 0, joins: true },
    { name: 'just beyond 150 mm', by: at(600, 0), turnDeg: 0, dx: -449, dy: 0, joins: false },
    { name: 'turned 29°', by: at(600, 0), turnDeg: 29, dx: -600, dy: 0, joins: true },
    { name: 'turned 31°', by: at(600, 0), turnDeg: 31, dx: -600, dy: 0, joins: false },
  ])('$name: joins is $joins', ({ by, turnDeg, dx, dy, joins }) => {
    const plan = withFreeTable(by, turnDeg);
    const driver = pull(plan, dx, dy);
    const flush = { kind: 'joined', machine: 'machine', side: 'right', gap: 0, offset: 0, skewDeg: 0 };
    expect(clean(driver.plan).place).toMatchObject(joins ? flush : { kind: 'free' });
    expect(driver.labels).toEqual([joins ? 'Join clean table' : 'Move clean table']);
  });

  it('shows the joint while it is held', () => {
    const plan = withFreeTable(at(600, 0));
    const from = grip(plan);
    const driver = new Driver(plan).down(from).move(at(from.x - 550, from.y));
    expect(driver.state.preview?.guides.map(({ kind }) => kind)).toEqual(['joint']);
  });

  it('alt joins nothing', () => {
    expect(clean(pull(withFreeTable(at(600, 0)), -600, 0, { alt: true }).plan).place.kind).toBe('free');
  });

  it.each([
    { name: 'within 250 mm', dx: 249, labels: [], kind: 'joined' },
    { name: 'beyond 250 mm', dx: 251, labels: ['Move clean table'], kind: 'free' },
  ])('a joined table pulled $name is $kind', ({ dx, labels, kind }) => {
    const driver = pull(straightPlan(), dx, 0);
    expect(driver.labels).toEqual(labels);
    expect(clean(driver.plan).place.kind).toBe(kind);
  });

  it('once off it is caught again only within 150 mm, in one and the same drag', () => {
    const plan = straightPlan();
    const from = grip(plan);
    const driver = new Driver(plan)
      .down(from)
      .move(at(from.x + 400, from.y))
      .move(at(from.x + 200, from.y));
    expect(driver.state.preview && clean(driver.state.preview.plan).place.kind).toBe('free');
    driver.move(at(from.x + 140, from.y));
    expect(driver.state.preview && clean(driver.state.preview.plan).place.kind).toBe('joined');
  });

  it('a surveyed gap stays as it is while the table is held', () => {
    const plan = edit(straightPlan(), 'gap', (draft) => {
      const place = clean(draft).place;
      if (place.kind === 'joined') place.gap = 12;
    }).plan;
    expect(clean(pull(plan, 100, 0).plan).place).toMatchObject({ kind: 'joined', gap: 12 });
  });

  it('a table whose far end meets the door is turned round, and covers the same floor', () => {
    const plan = edit(withFreeTable(at(600, 0)), 'round', (draft) => {
      const table = clean(draft);
      const place = table.place;
      if (place.kind !== 'free') return;
      Object.assign(place, { x: place.x + 1600, headingDeg: 180 });
      table.operatorSide = 'left';
      table.deck = { kind: 'heights', heights: [900, 870] };
    }).plan;
    const from = at(deriveScene(plan).tables.find(({ table }) => table.id === 'clean-table')?.path[0]?.x ?? 0, 0);
    const y = deriveScene(plan).tables.find(({ table }) => table.id === 'clean-table')?.path[0]?.y ?? 0;
    const driver = new Driver(plan).drag(at(from.x - 10, y), at(from.x - 610, y));
    const table = clean(driver.plan);
    expect(table.place).toMatchObject({ kind: 'joined', side: 'right', gap: 0 });
    expect(table.operatorSide).toBe('right');
    expect(table.deck).toEqual({ kind: 'heights', heights: [870, 900] });
  });

  it('a door with a table catches no second one', () => {
    const plan = edit(withFreeTable(at(600, 0)), 'second', (draft) => {
      draft.tables.push({
        ...clean(draft),
        id: 'third-table',
        fittings: [],
        place: { kind: 'joined', machine: 'machine', side: 'right', gap: 0, offset: 0, skewDeg: 0 },
      });
    }).plan;
    expect(clean(pull(plan, -600, 0).plan).place.kind).toBe('free');
  });

  it('from then on it follows the machine', () => {
    const driver = pull(withFreeTable(at(600, 300)), -550, -300);
    driver.drag(at(4000, 800), at(4000, 1500), { alt: true });
    const joint = deriveScene(driver.plan).joints.find(({ table }) => table === 'clean-table');
    expect(joint?.gap).toBeCloseTo(0, 9);
    expect(soiled(driver.plan).place.kind).toBe('joined');
  });
});
