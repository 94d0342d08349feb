import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, parsePlan, renderPlanText } from '../../src/plan';
import { deriveWorstVerdict, type Finding, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS } from '../../src/topics/registry';

const textOf = (name: string): string => readFileSync(`public/examples/${name}.rackway.json`, 'utf8');

function findingsOf(name: string): Finding[] {
  const read = parsePlan(textOf(name));
  if (!read.ok) throw new Error(`${name}: ${read.problem.reason}`);
  return runChecks(deriveScene(read.plan), CHECKS);
}

const verdictsBut = (findings: readonly Finding[]) =>
  findings.filter(({ verdict }) => verdict !== 'clear').map(({ id, verdict }) => `${verdict} ${id}`);

describe('the example rooms', () => {
  it('are those that the start page lists', () => {
    const files = readdirSync('public/examples').map((file) => file.replace('.rackway.json', ''));
    expect(files.sort()).toEqual(EXAMPLES.map(({ name }) => name).sort());
  });

  it.each(EXAMPLES)('$name is read, and saved again it is the same file', ({ name }) => {
    const read = parsePlan(textOf(name));
    expect(read.ok && renderPlanText(read.plan)).toBe(textOf(name));
  });
});

// Trade facts, common practice: a corner line with its controls inside the turn, tables flush and falling to the machine,
// and a hood larger than the machine has nothing wrong with it.
describe('a school kitchen’s corner line', () => {
  const findings = findingsOf('school-corner');
  it('is clear, and most checks had something to measure', () => {
    expect(deriveWorstVerdict(findings)).toBe('clear');
    expect(new Set(findings.map(({ check }) => check)).size).toBeGreaterThanOrEqual(19);
  });
});

describe('a café’s straight line', () => {
  it('has five faults, each of another kind', () => {
    expect(verdictsBut(findingsOf('cafe-straight'))).toEqual([
      'stop order-fits-line:hand:machine',
      'stop joint-flush:gap:soiled-table:machine',
      'stop table-falls:clean-table',
      'stop passable-width:aisle:machine',
      'stop hood-overhang:right:hood:machine',
    ]);
  });
});

// Common practice: at most 50 ft of run, each elbow counting as 10 ft of it.
describe('a care home’s direct vent', () => {
  it('is wrong in its run only, by two elbows', () => {
    const findings = findingsOf('care-home-direct-vent');
    expect(verdictsBut(findings)).toEqual(['stop run-equivalent-length:run:machine']);
    const [run] = findings;
    expect(run?.limit).toBeCloseTo(50 * 304.8, 6);
    // 20 ft straight and five elbows, its legs rising ¼ in a foot: 70 ft.
    expect(run?.measured).toBeCloseTo(70 * 304.8, 0);
    expect(-(run?.margin ?? 0)).toBeCloseTo(2 * 10 * 304.8, 0);
  });
});

describe('a hotel’s heat recovery', () => {
  const findings = findingsOf('hotel-heat-recovery');
  it('lacks one measurement and claims nothing of it', () => {
    expect(verdictsBut(findings)).toEqual(['ask door-lift-clear:machine', 'ask ceiling:height']);
    const asks = findings.flatMap(({ ask }) => ask?.path.join('.') ?? []);
    expect(new Set(asks)).toEqual(new Set(['room.ceilingHeight']));
  });

  it('needs no hood', () => {
    expect(findings.find(({ check }) => check === 'hood-where-needed')?.verdict).toBe('clear');
    expect(findings.some(({ check }) => check === 'hood-overhang')).toBe(false);
  });
});
