import { describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import {
  addLine,
  addPointToRun,
  addTableFitting,
  addTableLeg,
  applyRepair,
  type CommandResult,
  convertConfiguration,
  insertStation,
  removePointOfRun,
  removeTableLeg,
  setTableFree,
  swapHand,
  turnTableRound,
} from '../../src/editor';
import { edit, LINE_CONFIGURATIONS, type Plan, parsePlan, removeItems, renderPlanText, tableLength } from '../../src/plan';
import { findRepairs, runChecks } from '../../src/rules';
import { deriveScene, type StationKind } from '../../src/scene';
import { cornerPlan, emptyPlan, straightPlan } from './plans';

/** The plan after a command; it must be sound. */
function done(outcome: CommandResult): Plan {
  if (!outcome.ok) throw new Error(outcome.problem);
  expect(parsePlan(renderPlanText(outcome.transaction.plan)).ok).toBe(true);
  return outcome.transaction.plan;
}

const without = (plan: Plan, ...ids: string[]) => edit(plan, 'without', removeItems(ids)).plan;
const lineOf = (plan: Plan) => deriveScene(plan).lines[0]!;
const subjectOf = (plan: Plan, kind: StationKind) => lineOf(plan).stations.find((station) => station.kind === kind)?.subject;

/** From the joint outward, as station words. */
const alongSoiled = (plan: Plan) =>
  lineOf(plan)
    .soiled!.table.fittings.toSorted((a, b) => a.at - b.at)
    .map(({ kind, id }) => (kind === 'overshelf' ? id : kind));

const touches = (plan: Plan) => {
  const row = lineOf(plan)
    .soiled!.table.fittings.filter(({ kind }) => kind !== 'overshelf')
    .toSorted((a, b) => a.at - b.at);
  return row.every((fitting, i) => i === 0 || fitting.at - fitting.length / 2 >= row[i - 1]!.at + row[i - 1]!.length / 2 - 1e-6);
};

describe('inserting a station', () => {
  const cases: { name: string; plan: Plan; kind: StationKind; after: StationKind | null }[] = [
    { name: 'scrap back where it was', plan: without(straightPlan(), 'scrap'), kind: 'scrap', after: 'drop-off' },
    { name: 'scrap with no neighbour named', plan: without(straightPlan(), 'scrap'), kind: 'scrap', after: null },
    { name: 'the pre-rinse', plan: without(straightPlan(), 'pre-rinse'), kind: 'pre-rinse', after: 'scrap' },
    { name: 'the landing', plan: without(straightPlan(), 'soiled-landing'), kind: 'soiled-landing', after: 'pre-rinse' },
    { name: 'the drop-off', plan: without(straightPlan(), 'drop-off'), kind: 'drop-off', after: null },
    { name: 'the clean landing', plan: without(straightPlan(), 'clean-landing'), kind: 'clean-landing', after: 'machine' },
  ];
  it.each(cases)('$name', ({ plan, kind, after }) => {
    const outcome = insertStation(plan, 'machine', kind, after);
    const next = done(outcome);
    expect(subjectOf(plan, kind)).not.toBe(subjectOf(next, kind));
    expect(outcome).toMatchObject({ ok: true, select: [subjectOf(next, kind)] });
    expect(touches(next)).toBe(true);
    expect(alongSoiled(next)).toEqual(['landing', 'sink', 'scrap', 'drop-off']);
  });

  it('a second one makes room and the table grows', () => {
    const plan = straightPlan();
    const next = done(insertStation(plan, 'machine', 'scrap', 'pre-rinse'));
    expect(alongSoiled(next)).toEqual(['landing', 'scrap', 'sink', 'scrap', 'drop-off']);
    expect(touches(next)).toBe(true);
    expect(tableLength(lineOf(next).soiled!.table)).toBeCloseTo(tableLength(lineOf(plan).soiled!.table) + 200, 6);
  });

  it('room that is there is used before the table grows', () => {
    const plan = without(straightPlan(), 'scrap');
    const next = done(insertStation(plan, 'machine', 'scrap', 'drop-off'));
    expect(tableLength(lineOf(next).soiled!.table)).toBeCloseTo(tableLength(lineOf(plan).soiled!.table), 6);
  });

  it.each([
    { name: 'straight', plan: without(straightPlan(), 'clean-table'), kind: 'clean-landing' as const, side: 'right' },
    {
      name: 'with no table at all',
      plan: without(straightPlan(), 'clean-table', 'soiled-table'),
      kind: 'pre-rinse' as const,
      side: 'left',
    },
  ])('brings its table where that is missing, $name', ({ plan, kind, side }) => {
    const next = done(insertStation(plan, 'machine', kind, null));
    const table = next.tables.at(-1)!;
    expect(table.place).toMatchObject({ kind: 'joined', side, gap: 0 });
    expect(table.fittings).toHaveLength(1);
  });

  it('storage stands beyond the clean table', () => {
    const plan = straightPlan();
    const next = done(insertStation(plan, 'machine', 'storage', 'clean-landing'));
    const [shelf] = next.things;
    const end = lineOf(plan).clean!.path.at(-1)!;
    expect(shelf).toMatchObject({ kind: 'shelving', ware: 'clean', rotationDeg: 0 });
    expect(shelf!.x - shelf!.width / 2).toBeCloseTo(end.x + 150, 6);
  });

  it('says why not', () => {
    expect(insertStation(straightPlan(), 'machine', 'machine', null)).toMatchObject({ ok: false });
    expect(insertStation(straightPlan(), 'nobody', 'scrap', null)).toMatchObject({ ok: false });
    expect(insertStation(without(straightPlan(), 'clean-table'), 'machine', 'storage', null)).toMatchObject({ ok: false });
  });
});

describe('laying a line', () => {
  it.each(
    LINE_CONFIGURATIONS.flatMap((configuration) => (['left-to-right', 'right-to-left'] as const).map((hand) => ({ configuration, hand }))),
  )('$configuration, $hand, twice in one room', ({ configuration, hand }) => {
    const options = { sheet: 'recirculating-hot-water', configuration, hand };
    const one = done(addLine(emptyPlan(), { ...options, at: { x: 2500, y: 1000 } }));
    const two = done(addLine(one, { ...options, at: { x: 6000, y: 3500 }, rotationDeg: 180 }));
    const lines = deriveScene(two).lines;
    expect(lines).toHaveLength(2);
    for (const line of lines) {
      expect(line.hand).toBe(hand);
      expect(line.configuration).toEqual(
        configuration === 'straight' ? { kind: 'straight' } : { kind: 'corner', side: configuration.split('-')[0] },
      );
    }
    expect(two.room).toEqual(emptyPlan().room);
  });

  it('names a data sheet that is not there', () => {
    expect(addLine(emptyPlan(), { sheet: 'nobody', configuration: 'straight', hand: 'left-to-right', at: { x: 0, y: 0 } })).toMatchObject({
      ok: false,
    });
  });
});

describe('configuration and hand', () => {
  it.each(LINE_CONFIGURATIONS.map((to) => ({ to })))('straight to $to keeps the hand and puts the controls inside', ({ to }) => {
    const next = done(convertConfiguration(straightPlan(), 'machine', to));
    const line = lineOf(next);
    expect(line.hand).toBe('left-to-right');
    expect(line.configuration).toEqual(to === 'straight' ? { kind: 'straight' } : { kind: 'corner', side: to.split('-')[0] });
    const finding = runChecks(deriveScene(next), OWN_CHECKS).filter(({ check }) => check === 'controls-inside-turn');
    expect(finding.every(({ verdict }) => verdict === 'clear')).toBe(true);
  });

  it('swaps the hand, and back', () => {
    const plan = cornerPlan();
    const swapped = done(swapHand(plan, 'machine'));
    expect(lineOf(swapped).hand).toBe('right-to-left');
    expect(done(swapHand(swapped, 'machine'))).toEqual(plan);
  });

  it('has no hand to swap without two tables', () => {
    expect(swapHand(without(straightPlan(), 'clean-table'), 'machine')).toMatchObject({
      ok: false,
      problem: expect.stringContaining('no hand'),
    });
  });
});

describe('a repair', () => {
  it('is one change that cures its finding and can be undone', () => {
    const plan = edit(straightPlan(), 'fault', (draft) => {
      const place = draft.tables[0]!.place;
      if (place.kind === 'joined') place.gap = 60;
    }).plan;
    const finding = runChecks(deriveScene(plan), OWN_CHECKS).find(({ check, part }) => check === 'joint-flush' && part === 'gap')!;
    const outcome = applyRepair(plan, finding, findRepairs(deriveScene(plan), OWN_CHECKS, finding.id)[0]!);
    const next = done(outcome);
    expect(runChecks(deriveScene(next), OWN_CHECKS).find(({ id }) => id === finding.id)?.verdict).toBe('clear');
    expect(outcome).toMatchObject({ ok: true, select: [finding.subjects[0]], transaction: { label: expect.stringContaining('flush') } });
  });
});

describe('shaping by command', () => {
  it('adds and removes legs, and keeps the last', () => {
    const bent = done(addTableLeg(straightPlan(), 'soiled-table', -90));
    expect(bent.tables[0]?.legs.map(({ turnDeg }) => turnDeg)).toEqual([0, -90]);
    expect(done(removeTableLeg(bent, 'soiled-table', 1)).tables[0]?.legs).toHaveLength(1);
    expect(removeTableLeg(straightPlan(), 'soiled-table', 0)).toMatchObject({ ok: false });
  });

  it.each(['drop-off', 'scrap', 'sink', 'landing', 'overshelf'] as const)('adds a %s beyond the others', (kind) => {
    const next = done(addTableFitting(straightPlan(), 'soiled-table', kind));
    expect(next.tables[0]?.fittings).toHaveLength(5);
    expect(touches(next)).toBe(true);
  });

  it('sets a table free in its place, and turns it round', () => {
    const plan = straightPlan();
    expect(turnTableRound(plan, 'soiled-table')).toMatchObject({ ok: false });
    const free = done(setTableFree(plan, 'soiled-table'));
    const before = deriveScene(free).tables[0]!;
    const after = deriveScene(done(turnTableRound(free, 'soiled-table'))).tables[0]!;
    expect(after.path.toReversed()).toEqual(before.path.map(({ x, y }) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) })));
    expect(after.operatorEdge.toReversed()).toEqual(
      before.operatorEdge.map(({ x, y }) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) })),
    );
    // The end was higher by the fall over its length; it is the start now, and falls the other way.
    expect(after.nodes[0]?.z).toBeCloseTo(before.nodes[1]!.z!, 6);
    expect(after.nodes[1]?.z).toBeCloseTo(before.nodes[0]!.z!, 6);
  });

  it('lengthens and shortens a run, and keeps its last point', () => {
    const plan = straightPlan('direct-vent');
    const longer = done(addPointToRun(plan, 'run'));
    expect(longer.runs[0]?.points).toHaveLength(3);
    const shorter = done(removePointOfRun(done(removePointOfRun(longer, 'run', 2)), 'run', 1));
    expect(removePointOfRun(shorter, 'run', 0)).toMatchObject({ ok: false });
  });
});
