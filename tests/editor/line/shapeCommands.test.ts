import { describe, expect, it } from 'vitest';
import {
  addPointToRun,
  addTableFitting,
  addTableLeg,
  removePointOfRun,
  removeTableLeg,
  setTableFree,
  turnTableRound,
} from '../../../src/editor';
import { edit, type Plan } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { done, refused, without } from '../outcomes';
import { straightPlan } from '../plans';

/** Soiled: landing 0–1530, pre-rinse 1530–2040, scrap 2040–2240, drop-off 2240–2900. Clean: landing 35–1565 of 1600. */
const plan = straightPlan();

describe('the shape of tables', () => {
  const table = (of: Plan) => of.tables[0]!;
  it('a leg of 900 is added after a turn, and taken out again', () => {
    const more = done(addTableLeg(plan, 'soiled-table', -90));
    expect(table(more.plan).legs).toEqual([
      { length: 2900, turnDeg: 0 },
      { length: 900, turnDeg: -90 },
    ]);
    expect([more.label, more.select]).toEqual(['Add leg to table', ['soiled-table']]);
    const less = done(removeTableLeg(more.plan, 'soiled-table', 1));
    expect(table(less.plan).legs).toEqual([{ length: 2900, turnDeg: 0 }]);
    expect([less.label, less.select]).toEqual(['Remove leg of table', ['soiled-table']]);
    expect(refused(removeTableLeg(less.plan, 'soiled-table', 0))).toBe('A table has one leg at least. Remove the table itself.');
    expect(refused(removeTableLeg(plan, 'nobody', 0))).toBe('A table has one leg at least. Remove the table itself.');
  });

  it('a fitting is added beyond the last, an overshelf over the middle', () => {
    const more = done(addTableFitting(plan, 'clean-table', 'drop-off'));
    expect(more.plan.tables[1]?.fittings.at(-1)).toMatchObject({ id: 'drop-off-1', at: 1565 + 330, length: 660 });
    expect(more.plan.tables[1]?.legs[0]?.length).toBe(2225);
    expect([more.label, more.select]).toEqual(['Add drop-off', ['drop-off-1']]);
    const shelf = done(addTableFitting(plan, 'soiled-table', 'overshelf')).plan;
    expect(table(shelf).fittings.at(-1)).toMatchObject({ kind: 'overshelf', at: 1450, length: 1219 });
    expect(table(shelf).legs[0]?.length).toBe(2900);
    const under = done(
      addTableFitting(done(addTableFitting(without(plan, 'clean-landing'), 'clean-table', 'overshelf')).plan, 'clean-table', 'scrap'),
    ).plan;
    expect(under.tables[1]?.fittings.at(-1)).toMatchObject({ kind: 'scrap', at: 100 });
    expect(done(addTableFitting(plan, 'nobody', 'scrap')).plan.tables).toEqual(plan.tables);
  });

  it('a table is set free where it is, and turned round', () => {
    const free = done(setTableFree(plan, 'soiled-table'));
    expect(table(free.plan).place).toEqual(nearly({ kind: 'free', x: 3631.5, y: 800, headingDeg: 180 }));
    expect([free.label, free.select]).toEqual(['Set table free', ['soiled-table']]);
    const round = done(turnTableRound(free.plan, 'soiled-table'));
    expect(table(round.plan).place).toEqual(nearly({ kind: 'free', x: 731.5, y: 800, headingDeg: 0 }));
    expect([round.label, round.select]).toEqual(['Turn table round', ['soiled-table']]);
    for (const id of ['soiled-table', 'nobody'])
      expect(refused(turnTableRound(plan, id))).toBe('A joined table begins at its machine. Set it free first.');
  });
});

describe('the points of a run', () => {
  const run = (points: readonly (readonly [number, number, number])[]): Plan =>
    edit(straightPlan('direct-vent'), 'run', (draft) => void (draft.runs[0]!.points = points.map(([x, y, z]) => ({ x, y, z })))).plan;
  it.each([
    {
      name: 'on in the direction of the last leg',
      points: [
        [0, 0, 2600],
        [300, 400, 2700],
      ],
      gives: { x: 660, y: 880, z: 2700 },
    },
    {
      name: 'to the right after a riser',
      points: [
        [100, 200, 2600],
        [100, 200.5, 2700],
      ],
      gives: { x: 700, y: 200.5, z: 2700 },
    },
    { name: 'to the right after the only point', points: [[100, 200, 2600]], gives: { x: 700, y: 200, z: 2600 } },
    {
      name: 'on after a leg of 1 mm',
      points: [
        [100, 200, 2600],
        [100, 201, 2700],
      ],
      gives: { x: 100, y: 801, z: 2700 },
    },
    {
      name: 'of more points the last two',
      points: [
        [0, 0, 2600],
        [1000, 0, 2600],
        [1000, 500, 2600],
      ],
      gives: { x: 1000, y: 1100, z: 2600 },
    },
  ] as const)('$name', ({ points, gives }) => {
    const more = done(addPointToRun(run(points), 'run'));
    expect(more.plan.runs[0]?.points).toHaveLength(points.length + 1);
    expect(more.plan.runs[0]?.points.at(-1)).toEqual(nearly(gives));
    expect([more.label, more.select]).toEqual(['Add point to duct run', ['run']]);
  });

  it('a point is taken out, the last one stays', () => {
    const less = done(
      removePointOfRun(
        run([
          [0, 0, 2600],
          [300, 400, 2700],
        ]),
        'run',
        0,
      ),
    );
    expect(less.plan.runs[0]?.points).toEqual([{ x: 300, y: 400, z: 2700 }]);
    expect([less.label, less.select]).toEqual(['Remove point of duct run', ['run']]);
    expect(refused(removePointOfRun(less.plan, 'run', 0))).toBe('A run has one point at least. Remove the run itself.');
    expect(refused(removePointOfRun(plan, 'nobody', 0))).toBe('A run has one point at least. Remove the run itself.');
    expect(refused(addPointToRun(plan, 'nobody'))).toBe('This run is no longer in the plan.');
  });
});
