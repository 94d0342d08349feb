import { describe, expect, it } from 'vitest';
import { findFamily } from '../../src/catalog';
import { makeSheetOwn, setField } from '../../src/editor';
import { edit, type FieldPath, type Plan } from '../../src/plan';
import { straightPlan } from './plans';

function ok(result: ReturnType<typeof setField>): Plan {
  if (!result.ok) throw new Error(result.problem);
  return result.transaction.plan;
}

const own = makeSheetOwn(straightPlan('direct-vent'), ['machine']);
const plan = ok(own);

describe('what hangs on a field of a data sheet comes along, or holds it', () => {
  it('a door of a data sheet goes only where no table is joined, and comes back in its place', () => {
    const path = (side: string): FieldPath => ['sheets', 0, 'doors', side];
    expect(setField(plan, path('right'), false)).toEqual({
      ok: false,
      problem: 'The door at the right stays: the clean table is joined there. Move the table first.',
    });
    const without = ok(setField(plan, path('front'), false));
    expect(without.sheets[0]?.doors).toEqual(['left', 'right']);
    expect(ok(setField(without, path('front'), true)).sheets[0]?.doors).toEqual(['left', 'right', 'front']);
    const one = edit(plan, 'one', (draft) => void draft.sheets.push({ ...draft.sheets[0]!, id: 'own-2', doors: ['front'] })).plan;
    expect(setField(one, ['sheets', 1, 'doors', 'front'], false)).toEqual({ ok: false, problem: 'A machine has one door at least.' });
  });

  it('a vent of another kind, a tank and a rinse pressure begin as a family has them', () => {
    const hood = ok(setField(plan, ['sheets', 0, 'vent', 'kind'], 'hood'));
    expect(hood.sheets[0]?.vent).toEqual({ kind: 'hood' });
    expect(ok(setField(hood, ['sheets', 0, 'vent', 'kind'], 'direct')).sheets[0]?.vent).toEqual(findFamily('direct-vent')?.vent);
    const bare = ok(setField(ok(setField(plan, ['sheets', 0, 'tank'], false)), ['sheets', 0, 'rinsePressure'], false));
    expect(bare.sheets[0]).toMatchObject({ tank: null, rinsePressure: null });
    const again = ok(setField(ok(setField(bare, ['sheets', 0, 'tank'], true)), ['sheets', 0, 'rinsePressure'], true));
    expect(again.sheets[0]).toMatchObject({ tank: { heater: expect.any(Number) }, rinsePressure: { least: expect.any(Number) } });
    expect(setField(plan, ['sheets', 0, 'tank'], true)).toMatchObject({ ok: true, transaction: { patches: [] } });
  });

  it('the collar that a run begins at stays a collar', () => {
    const at = plan.sheets[0]!.connections.findIndex(({ kind }) => kind === 'collar');
    const path: FieldPath = ['sheets', 0, 'connections', at, 'kind'];
    expect(setField(plan, path, 'drain')).toEqual({
      ok: false,
      problem: expect.stringMatching(/^The collar stays: the duct run of machine \d begins there\.$/),
    });
    expect(ok(setField(plan, path, 'collar'))).toBe(plan);
    expect(ok(setField(plan, ['sheets', 0, 'connections', 0, 'kind'], 'cold-water')).sheets[0]?.connections[0]?.kind).toBe('cold-water');
  });
});
