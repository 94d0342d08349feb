import { check } from '../../../../src/topics/power/checks/voltage-drop';
import { MM_PER_FOOT } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { versionOf } from '../../../support/figurePlans';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
/** 40 A, 208 V, three phases, 6 AWG: √3 · 40 · L · 12.9 / 26,250 (areas read; 12.9 from memory). */
const share = (feet: number) => (Math.sqrt(3) * 40 * feet * 12.9) / 26_250 / 208;
const along = (feet: number) =>
  hookedSheetPlan({ electrical: versionOf(40 * 0.208 * Math.sqrt(3), 208, 3, 40) }, { wire: '6', wireWay: feet * MM_PER_FOOT });
const found = (verdict: 'clear' | 'watch', feet: number): ExpectedFinding => ({ verdict, subjects, measured: share(feet), limit: 0.03 });

/** 3 % of a branch circuit is recommended (secondary). */
describeCheck(check, [
  {
    name: '100 ft',
    plan: along(100),
    expect: [
      {
        ...found('clear', 100),
        says: 'On the way to the machine the wires lose 3.4 V of 208 V, 1.6 %; 3 % is recommended at most.',
      },
    ],
  },
  { name: '183 ft', plan: along(183), expect: [found('clear', 183)] },
  {
    name: '184 ft',
    plan: along(184),
    expect: [
      {
        ...found('watch', 184),
        says: 'On the way to the machine the wires lose 6.26 V of 208 V, 3 %; 3 % is recommended at most. Take thicker wire or a shorter way; a licensed electrician decides.',
      },
    ],
  },
  {
    name: 'the wire is not known',
    plan: hookedPlan({ wire: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.wire' }],
  },
  {
    name: 'neither way nor where it begins',
    plan: hookedPlan({}, ({ room }) => void (room.stubs = [])),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.wireWay' }],
  },
]);
