import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PLAN_VERSION, parsePlan } from '../../src/plan';
import { MIGRATIONS, type Migration, migratePlan, OLDEST_VERSION } from '../../src/plan/migrations';

const fixture = (version: number) => `tests/plan/fixtures/version-${version}.rackway.json`;

describe('migrations', () => {
  it('lead from the oldest version to the present one without a gap', () => {
    expect(OLDEST_VERSION + MIGRATIONS.length).toBe(PLAN_VERSION);
  });

  const versions = Array.from({ length: PLAN_VERSION - OLDEST_VERSION + 1 }, (_, index) => OLDEST_VERSION + index);

  it.each(versions)('a plan of version %i is kept and still read', (version) => {
    expect(existsSync(fixture(version))).toBe(true);
    const text = readFileSync(fixture(version), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ version });
    expect(parsePlan(text)).toMatchObject({ ok: true, migratedFrom: version === PLAN_VERSION ? null : version });
  });
});

// How steps follow each other is shown on a list of this test's own.
describe('migratePlan', () => {
  const steps: Migration[] = [
    ({ ceiling, ...rest }) => ({ ...rest, version: 4, room: { ceilingHeight: ceiling } }),
    (raw) => ({ ...raw, version: 5, sheets: [] }),
  ];
  const old = Object.freeze({ version: 3, ceiling: 2700 });

  it.each([
    [3, old, { version: 5, room: { ceilingHeight: 2700 }, sheets: [] }],
    [4, { version: 4 }, { version: 5, sheets: [] }],
    [5, { version: 5, a: 1 }, { version: 5, a: 1 }],
  ])('from %i, each step once and in order', (from, raw, expected) => {
    expect(migratePlan(raw, from, steps, 3)).toEqual(expected);
  });

  it('leaves what it was given as it was', () => {
    migratePlan(old, 3, steps, 3);
    expect(old).toEqual({ version: 3, ceiling: 2700 });
  });

  it('does not pass over a step that forgets its version', () => {
    expect(() => migratePlan(old, 3, [(raw) => raw], 3)).toThrow('migration to version 4 gave version 3');
  });
});
