import { describe, expect, it } from 'vitest';
import { findFamily } from '../../../src/catalog';
import { addLine, convertConfiguration, swapHand } from '../../../src/editor';
import { edit } from '../../../src/plan';
import { at } from '../driver';
import { done, refused, without } from '../outcomes';
import { emptyPlan, straightPlan } from '../plans';

/** Soiled: landing 0–1530, pre-rinse 1530–2040, scrap 2040–2240, drop-off 2240–2900. Clean: landing 35–1565 of 1600. */
const plan = straightPlan();

describe('a line and its configuration', () => {
  it('is laid with ids of its own, chosen by its machine', () => {
    const one = done(addLine(emptyPlan(), { sheet: 'direct-vent', configuration: 'straight', hand: 'left-to-right', at: at(4000, 800) }));
    expect([one.label, one.select]).toEqual(['Add line', ['machine-1']]);
    expect(one.plan.machines[0]).toMatchObject({ id: 'machine-1', x: 4000, y: 800 });
    expect(one.plan.runs).toMatchObject([{ id: 'run-1', machine: 'machine-1' }]);
    expect(one.plan.tables.map(({ id, place }) => [id, place.kind === 'joined' && place.machine])).toEqual([
      ['soiled-table-1', 'machine-1'],
      ['clean-table-1', 'machine-1'],
    ]);
    expect(one.plan.tables[0]?.fittings.map(({ id }) => id)).toEqual(['soiled-landing-1', 'pre-rinse-1', 'scrap-1', 'drop-off-1']);
    expect(refused(addLine(emptyPlan(), { sheet: 'nobody', configuration: 'straight', hand: 'left-to-right', at: at(0, 0) }))).toBe(
      'There is no data sheet “nobody”.',
    );
  });

  it.each([
    ['straight', 'Make the line straight-through'],
    ['left-front', 'Make the line a corner, left and front'],
    ['right-front', 'Make the line a corner, right and front'],
  ] as const)('%s: %s', (to, label) => {
    const made = done(convertConfiguration(plan, 'machine', to));
    expect([made.label, made.select]).toEqual([label, ['machine']]);
  });

  it('says why not', () => {
    expect(refused(convertConfiguration(plan, 'nobody', 'straight'))).toBe('This machine is no longer in the plan.');
    const noFront = edit(straightPlan(), 'doors', (draft) => {
      draft.sheets.push({ ...structuredClone(findFamily('recirculating-hot-water')!), id: 'own', doors: ['left', 'right'] });
      draft.machines[0]!.sheet = 'own';
    }).plan;
    expect(refused(convertConfiguration(noFront, 'machine', 'left-front'))).toBe('This machine has no door on its front.');
    expect(refused(swapHand(without(plan, 'clean-table'), 'machine'))).toBe(
      'The line has no hand yet: it needs a soiled and a clean table on two sides of the machine.',
    );
    expect(done(swapHand(plan, 'machine'))).toMatchObject({ label: 'Swap the hand', select: ['machine'] });
  });
});
