import { describe, expect, it } from 'vitest';
import { fieldsFor } from '../../src/editor';
import { edit, type Plan, UNKNOWN_BASINS } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { straightPlan, withThing } from './plans';

describe('a field that waits for what is said beside it', () => {
  const BOOSTER = ['boosterPlace', 'boosterWay', 'boosterBelow', 'boosterOffWall'];
  const boosterFields = (changed: Plan) =>
    fieldsFor(changed, deriveScene(changed), 'machine').flatMap(({ path }) => BOOSTER.filter((key) => key === path[3]));
  const boosted = (boosterPlace: 'inside' | 'apart' | null) =>
    edit(straightPlan(), 'booster', (draft) => void (draft.machines[0]!.hookUp.boosterPlace = boosterPlace)).plan;

  it.each([
    ['stands apart', boosted('apart'), BOOSTER],
    ['is in the machine', boosted('inside'), ['boosterPlace']],
    ['stands nobody knows where', boosted(null), ['boosterPlace']],
    ['is not there', straightPlan('chemical-sanitising'), []],
  ])('has a booster’s fields where it %s', (_, changed, expected) => {
    expect(boosterFields(changed)).toEqual(expected);
  });

  it.each([
    ['hot-water' as const, 1],
    ['chemical' as const, 0],
    [null, 0],
  ])('has the heater of a bowl that sanitises by %s', (sanitizing, count) => {
    const changed = withThing(straightPlan(), { basins: { ...UNKNOWN_BASINS, sanitizing } });
    expect(fieldsFor(changed, deriveScene(changed), 'cart-1').filter(({ path }) => path[3] === 'heater')).toHaveLength(count);
  });
});

describe('a scrap opening', () => {
  it.each([
    ['a plain one', 0, ['troughDepth']],
    ['one that nobody has measured', null, ['troughDepth']],
    ['a trough', 150, ['troughDepth', 'troughSlope', 'troughCovers', 'troughInlets']],
  ])('has the fields of %s', (_, troughDepth, expected) => {
    const changed = edit(straightPlan(), 'trough', ({ tables }) => {
      for (const fitting of tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'scrap') fitting.troughDepth = troughDepth;
    }).plan;
    const keys = fieldsFor(changed, deriveScene(changed), 'soiled-table').map(({ path }) => String(path.at(-1)));
    expect(keys.filter((key) => key.startsWith('trough'))).toEqual(expected);
  });
});
