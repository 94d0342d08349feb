import { describe, expect, it } from 'vitest';
import { fieldsFor } from '../../src/editor';
import { UNKNOWN_BASINS, WIRES } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { straightPlan, withThing } from './plans';

describe('a word that is another in another field', () => {
  const plan = withThing(straightPlan(), { basins: UNKNOWN_BASINS });
  const labels = (id: string, key: string): Record<string, string> => {
    const options = fieldsFor(plan, deriveScene(plan), id).find(({ path }) => path.at(-1) === key)?.options ?? [];
    return Object.fromEntries(options.map(({ value, label }) => [String(value), label]));
  };

  it.each(['machine', 'pre-rinse', 'cart-1'])('waste of %s that is connected directly is no run of its own', (id) => {
    expect(labels(id, 'waste')).toEqual({ indirect: 'over an air gap', direct: 'directly into the drain' });
    expect(labels('@order', 'vent')['direct']).toBe('a run of its own');
  });

  it('a wire is called by its gauge, a supply by its phases', () => {
    expect(labels('machine', 'wire')).toEqual(Object.fromEntries(WIRES.map((wire) => [wire, wire])));
    expect(labels('@supply', 'phase')).toEqual({ 1: 'single-phase', 3: 'three-phase' });
  });

  it('words like numbers keep their place: wires from the thinnest up, the strictest table first', () => {
    const valuesOf = (id: string, key: string) =>
      fieldsFor(plan, deriveScene(plan), id)
        .find(({ path }) => path.at(-1) === key)
        ?.options.map(({ value }) => value);
    expect(valuesOf('machine', 'wire')).toEqual(WIRES);
    expect(valuesOf('@codes', 'heatTable')).toEqual(['strictest', '2001', '2009-2017']);
  });
});
