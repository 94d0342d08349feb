import { check } from '../../../../src/topics/power/checks/breaker-size';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { versionOf } from '../../../support/figurePlans';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
const rating = (verdict: 'clear' | 'stop', measured: number, limit: number, repairs: string[] = []): ExpectedFinding => ({
  verdict,
  part: 'rating',
  subjects,
  measured,
  limit,
  repairs,
});
const standard = (verdict: 'clear' | 'watch'): ExpectedFinding => ({ verdict, part: 'standard', subjects, measured: verdict === 'clear' });

/** 14.5 kW at 208 V, three phases: 40.25 A, times 1.25 50.31, so 60 A; 210.20(A) and 240.6(A), secondary. */
describeCheck(check, [
  {
    name: '60 A',
    plan: hookedPlan({ breakerA: 60 }),
    expect: [
      {
        ...rating('clear', 60, 60),
        says: 'The breaker of the machine is 60 A; 125 % of its current, as of a load that lasts, the stricter, needs 60 A.',
      },
      { ...standard('clear'), says: 'The breaker of the machine, 60 A, is a standard rating.' },
    ],
  },
  {
    name: '50 A',
    plan: hookedPlan({ breakerA: 50, wire: '8', markedFor75C: true }),
    expect: [
      {
        ...rating('stop', 50, 60, ['take-breaker']),
        says: 'The breaker of the machine is 50 A; 125 % of its current, as of a load that lasts, the stricter, needs 60 A. Take the larger, with wire to suit; a licensed electrician decides by the plate inside the control compartment.',
      },
      standard('clear'),
    ],
  },
  {
    name: '50 A at 60 °C: the wire for 60 A is for the code itself, so no repair',
    plan: hookedPlan({ breakerA: 50, wire: '6', markedFor75C: false }),
    expect: [rating('stop', 50, 60), standard('clear')],
  },
  {
    name: '50 A where the plan says that it does not last',
    plan: hookedPlan({ breakerA: 50, wire: '8', markedFor75C: true }, ({ codes }) => void (codes.load = 'not-continuous')),
    expect: [
      {
        ...rating('clear', 50, 45),
        says: 'The breaker of the machine is 50 A; its current, as of a load that does not last, needs 45 A.',
      },
      standard('clear'),
    ],
  },
  {
    name: '40 A where the plan says that it does not last',
    plan: hookedPlan({ breakerA: 40, wire: '8', markedFor75C: true }, ({ codes }) => void (codes.load = 'not-continuous')),
    expect: [rating('stop', 40, 45, ['take-breaker']), standard('clear')],
  },
  {
    name: '20 A of a small machine',
    plan: hookedSheetPlan({ electrical: versionOf(1.8, 115, 1, 15.7) }, { breakerA: 20 }),
    expect: [rating('clear', 20, 20), standard('clear')],
  },
  {
    name: '65 A is not made',
    plan: hookedPlan({ breakerA: 65 }),
    expect: [
      {
        ...standard('watch'),
        says: '65 A is no standard rating of a breaker; the next is 70 A. Ask the electrician which is meant.',
      },
      rating('clear', 65, 60),
    ],
  },
  { name: 'above 100 A no rating is held', plan: hookedPlan({ breakerA: 110 }), expect: [rating('clear', 110, 60)] },
  {
    name: 'the breaker is not known',
    plan: hookedPlan({ breakerA: null }),
    expect: [{ verdict: 'ask', part: 'rating', subjects, measured: null, asks: 'machines.0.hookUp.breakerA' }],
  },
  {
    name: 'no version is chosen',
    plan: hookedPlan({}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ verdict: 'ask', part: 'rating', subjects, measured: null, asks: 'machines.0.electrical' }, standard('clear')],
  },
]);
