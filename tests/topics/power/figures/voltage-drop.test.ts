import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Machine, Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/power/figures/voltage-drop';
import { MM_PER_FOOT } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { versionOf } from '../../../support/figurePlans';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { addThing } from '../../../support/roomPlan';

const subjects = ['machine'];
const FEET_100 = 100 * MM_PER_FOOT;

/** 12.9 ohm-circular-mils a foot (memory) over the area (read); twice the way on one phase, √3 on three. */
const drop = (times: number, amperes: number, feet: number, mils: number) => (times * amperes * feet * 12.9) / mils;
const measured = (wire: Machine['hookUp']['wire'], phase: 1 | 3, amperes: number) =>
  hookedSheetPlan(
    { electrical: versionOf((amperes * 208 * (phase === 3 ? Math.sqrt(3) : 1)) / 1000, 208, phase, amperes) },
    { wire, wireWay: FEET_100 },
  );

/** The machine of 737 × 711 about 4318.5, 494; its power connection 200 from the right, 40 from the back, 420 high. */
const END = { x: 4318.5 + 737 / 2 - 200, y: 494 - 711 / 2 + 40, z: 420 };
const panelAt = (plan: Plan, x: number, y: number) => addThing(plan, 'panel', x, y, 500, 150, { kind: 'panel-board', height: 1900 });
const wayOf = (x: number, y: number, z: number) => (Math.abs(x - END.x) + Math.abs(y - END.y) + Math.abs(z - END.z)) / MM_PER_FOOT;
const AMPERES = 14_500 / (208 * Math.sqrt(3));

describeFigure(rule, [
  {
    name: '6 AWG, 100 ft, 40 A, three phases: 3.40 V',
    plan: measured('6', 3, 40),
    expect: [{ subjects, value: drop(Math.sqrt(3), 40, 100, 26_250), notes: /plan states.*Preliminary/ }],
  },
  { name: 'one phase: 3.93 V', plan: measured('6', 1, 40), expect: [{ subjects, value: drop(2, 40, 100, 26_250) }] },
  {
    name: 'from a panel board, at right angles',
    plan: hookedPlan({ wire: '6' }, (plan) => panelAt(plan, 1000, 3900)),
    expect: [{ subjects, value: drop(Math.sqrt(3), AMPERES, wayOf(1000, 3900, 1900), 26_250), within: 2e-3, notes: /panel board/ }],
  },
  {
    name: 'the nearer of two panel boards',
    plan: hookedPlan({ wire: '6' }, (plan) => {
      panelAt(plan, 1000, 3900);
      addThing(plan, 'near-panel', 3000, 3900, 500, 150, { kind: 'panel-board', height: 1900 });
    }),
    expect: [{ subjects, value: drop(Math.sqrt(3), AMPERES, wayOf(3000, 3900, 1900), 26_250), within: 2e-3 }],
  },
  {
    name: 'no panel board: from the power stub at the wall behind, 1200 high',
    plan: hookedPlan({ wire: '6' }),
    expect: [{ subjects, value: drop(Math.sqrt(3), AMPERES, wayOf(4318.5, 0, 1200), 26_250), within: 2e-3, notes: /power stub/ }],
  },
  {
    name: 'neither',
    plan: hookedPlan({ wire: '6' }, ({ room }) => void (room.stubs = [])),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.wireWay' }],
  },
  { name: 'the wire is not known', plan: hookedPlan({ wire: null }), expect: [{ subjects, value: null, asks: 'machines.0.hookUp.wire' }] },
  { name: 'a size that is not held', plan: hookedPlan({ wire: '2/0' }), expect: [{ subjects, value: null, refuses: '2/0' }] },
  {
    name: 'no version is chosen',
    plan: hookedPlan({}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ subjects, value: null, asks: 'machines.0.electrical' }],
  },
]);

it('grows with the way, and shrinks with the wire', () => {
  const lost = (wire: Machine['hookUp']['wire'], way: number) =>
    figuresOf(rule, hookedPlan({ wire, wireWay: way }))[0]?.value ?? Number.NaN;
  const way = fc.double({ min: 0, max: 100_000, noNaN: true });
  fc.assert(
    fc.property(way, way, (a, b) => lost('6', Math.max(a, b)) >= lost('6', Math.min(a, b)) && lost('3', a) <= lost('6', a)),
    { seed: 310, numRuns: 30 },
  );
  expect(lost('6', 0)).toBe(0);
});
