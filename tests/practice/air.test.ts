import { describe, expect, test } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import { FAMILIES, findFamily, type Vent } from '../../src/catalog';
import type { Plan, Run } from '../../src/plan';
import { type Finding, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { sayIt } from '../support/cases';
import { linePlan } from '../support/linePlan';
import { hoodOf, runOf, setFan } from '../support/roomPlan';

// Trade facts of vapour and its way out. All of them are common practice: there is no published source.

const FOOT = 304.8;
const findingsOf = (plan: Plan): Finding[] => runChecks(deriveScene(plan), OWN_CHECKS);
const find = (plan: Plan, check: string, part: string | null = null) =>
  findingsOf(plan).find((finding) => finding.check === check && finding.part === part);

type DirectVent = Extract<Vent, { kind: 'direct' }>;
const directVents = FAMILIES.flatMap(({ vent }): DirectVent[] => (vent.kind === 'direct' ? [vent] : []));

describe('a hood is larger than the machine, since vapour escapes as the doors rise', () => {
  test('a hood just as large as the machine stops the order on every open side', () => {
    const plan = linePlan({ configuration: 'straight' }, (draft) => {
      const [machine] = draft.machines;
      Object.assign(hoodOf(draft), { x: machine?.x, y: machine?.y, width: 737, depth: 711 });
    });
    const short = findingsOf(plan).filter(({ verdict }) => verdict === 'stop');
    expect(short.map(({ check, part }) => [check, part])).toEqual([
      ['hood-overhang', 'left'],
      ['hood-overhang', 'right'],
      ['hood-overhang', 'front'],
    ]);
  });

  test('the doors rise into it: a lip below the top of the open doors is no fault where the hood is deep enough', () => {
    const plan = linePlan({ family: 'tall-door' }, (draft) =>
      Object.assign(hoodOf(draft), { lipHeight: 2032, height: 600, exhaust: null, cavityAir: null }),
    );
    expect(findFamily('tall-door')?.doorLiftHeight).toBeLessThan(2032 + 600);
    expect(find(plan, 'door-lift-clear')?.verdict).toBe('clear');
  });
});

describe('a heat-recovery machine needs no hood', () => {
  test('one over it is looked at, not stopped', () => {
    const plan = linePlan({ family: 'heat-recovery' }, (draft) => {
      const [machine] = draft.machines;
      draft.hoods = [
        {
          id: 'hood',
          x: machine?.x ?? 0,
          y: machine?.y ?? 0,
          rotationDeg: 0,
          width: 900,
          depth: 900,
          lipHeight: 2064,
          height: 450,
          exhaust: null,
          cavityAir: null,
        },
      ];
    });
    expect(find(plan, 'hood-where-needed')).toMatchObject({ verdict: 'watch', source: { kind: 'published' } });
    expect(find(linePlan({ family: 'heat-recovery' }), 'hood-where-needed')?.verdict).toBe('clear');
  });
});

describe('direct vent: at most 50 ft of run, each elbow counting as 10 ft of it', () => {
  test('is what the data sheets say', () => {
    expect(directVents.length).toBeGreaterThan(0);
    for (const vent of directVents) {
      expect(vent.maxEquivalentLength).toBeCloseTo(50 * FOOT, 6);
      expect(vent.elbowAllowance).toBeCloseTo(10 * FOOT, 6);
    }
  });

  /** Straight up, then level stretches at right angles, so many feet in all. */
  const runOfFeet = (feet: number, elbows: number) =>
    linePlan({ family: 'direct-vent' }, (plan) => {
      const each = (feet * FOOT) / (elbows + 1);
      let at = { x: 4318.5, y: 288.5, z: 1930 + each };
      const points: Run['points'] = [at];
      for (let i = 0; i < elbows; i += 1) {
        at = i % 2 === 0 ? { ...at, x: at.x - each } : { ...at, y: at.y + each };
        points.push(at);
      }
      runOf(plan).points = points;
    });

  test.each([
    { feet: 50, elbows: 0, verdict: 'clear' },
    { feet: 40, elbows: 1, verdict: 'clear' },
    { feet: 30, elbows: 2, verdict: 'clear' },
    { feet: 10, elbows: 4, verdict: 'clear' },
    { feet: 31, elbows: 2, verdict: 'stop' },
    { feet: 11, elbows: 4, verdict: 'stop' },
    { feet: 1, elbows: 5, verdict: 'stop' },
  ])('$feet ft and $elbows elbows: $verdict', ({ feet, elbows, verdict }) => {
    const finding = find(runOfFeet(feet, elbows), 'run-equivalent-length');
    expect(finding?.verdict).toBe(verdict);
    expect(finding?.measured).toBeCloseTo((feet + 10 * elbows) * FOOT, 5);
  });

  test('without a run nothing is claimed', () => {
    const plan = linePlan({ family: 'direct-vent' }, (draft) => {
      draft.runs = [];
    });
    expect(find(plan, 'run-equivalent-length')?.verdict).toBe('ask');
  });
});

describe('the fan of a direct vent', () => {
  const withFan = (change: Parameters<typeof setFan>[1]) => linePlan({ family: 'direct-vent' }, (plan) => setFan(plan, change));

  test.each([
    { name: 'on the machine', at: 0, verdict: 'clear' },
    { name: 'above the ceiling', at: 1300, verdict: 'clear' },
    { name: 'off its run', at: 5000, verdict: 'stop' },
  ])('may sit $name: $verdict', ({ at, verdict }) => expect(find(withFan({ at }), 'fan-on-run', 'place')?.verdict).toBe(verdict));

  test.each([
    { drainHole: true, verdict: 'clear' },
    { drainHole: null, verdict: 'ask' },
    { drainHole: false, verdict: 'stop' },
  ])('on its side needs a drain hole at its bottom: $drainHole is $verdict', ({ drainHole, verdict }) => {
    expect(find(withFan({ attitude: 'on-side', drainHole }), 'fan-on-run', 'drain-hole')?.verdict).toBe(verdict);
  });

  test('about 10 ft of cord come with it; longer is field wiring by a licensed electrician', () => {
    for (const vent of directVents) expect(vent.cordLength).toBeCloseTo(10 * FOOT, 6);
    const long = find(withFan({ cordWay: 12 * FOOT }), 'fan-on-run', 'cord');
    expect(long?.verdict).toBe('watch');
    expect(sayIt(long as Finding)).toContain('licensed electrician');
    expect(find(withFan({ cordWay: 10 * FOOT }), 'fan-on-run', 'cord')?.verdict).toBe('clear');
  });
});
