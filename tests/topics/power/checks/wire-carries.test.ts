import type { Machine } from '../../../../src/plan';
import { check } from '../../../../src/topics/power/checks/wire-carries';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { hookedPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
const on = (wire: Machine['hookUp']['wire'], breakerA: number | null, markedFor75C: boolean | null) =>
  hookedPlan({ wire, breakerA, markedFor75C });
const found = (verdict: 'clear' | 'stop', measured: number, limit: number, repairs: string[] = []): ExpectedFinding => ({
  verdict,
  subjects,
  measured,
  limit,
  repairs,
});
const open = (limit: number): ExpectedFinding => ({ verdict: 'ask', subjects, measured: null, limit });

/** NEC Table 310.16, single values (secondary); small wire 240.4(D), terminals 110.14(C) (secondary). */
describeCheck(check, [
  {
    name: '6 AWG at 75 °C on 60 A',
    plan: on('6', 60, true),
    expect: [
      {
        ...found('clear', 65, 60),
        says: 'The wire of the machine, copper 6 AWG at terminals of 75 °C, may stand behind 65 A; the breaker is 60 A.',
      },
    ],
  },
  {
    name: '8 AWG at 60 °C on 50 A',
    plan: on('8', 50, false),
    expect: [
      {
        ...found('stop', 40, 50, ['take-wire']),
        says: 'The wire of the machine, copper 8 AWG at terminals of 60 °C, may stand behind 40 A; the breaker is 50 A. Take thicker wire; a licensed electrician decides.',
      },
    ],
  },
  { name: '8 AWG at 75 °C on 50 A', plan: on('8', 50, true), expect: [found('clear', 50, 50)] },
  {
    name: '12 AWG carries 25 A at 75 °C, and yet 20 A is the most',
    plan: on('12', 25, true),
    expect: [found('stop', 20, 25, ['take-wire'])],
  },
  { name: '14 AWG on 15 A', plan: on('14', 15, false), expect: [found('clear', 15, 15)] },
  {
    name: '6 AWG at 60 °C on 60 A: the next wire is for the code itself, so no repair',
    plan: on('6', 60, false),
    expect: [found('stop', 55, 60)],
  },
  { name: '4 AWG on 50 A: it carries no less than 6 AWG', plan: on('4', 50, false), expect: [found('clear', 55, 50)] },
  {
    name: '4 AWG at 60 °C on 70 A: only the code knows',
    plan: on('4', 70, false),
    expect: [
      {
        ...open(70),
        says: 'What 4 AWG carries at 60 °C only the code’s own table says; have a licensed electrician look it up for the breaker.',
      },
    ],
  },
  { name: '4 AWG at 75 °C on 100 A: 3 AWG carries as much, so it does not', plan: on('4', 100, true), expect: [found('stop', 65, 100)] },
  { name: '3 AWG at 75 °C on 100 A', plan: on('3', 100, true), expect: [found('clear', 100, 100)] },
  { name: 'above 100 A the 75 °C column counts: 4/0 on 225 A', plan: on('4/0', 225, false), expect: [found('clear', 230, 225)] },
  { name: 'marked or not is not known, and does not matter', plan: on('6', 50, null), expect: [found('clear', 55, 50)] },
  {
    name: 'marked or not is not known, and matters',
    plan: on('6', 60, null),
    expect: [{ ...open(60), asks: 'machines.0.hookUp.markedFor75C' }],
  },
  { name: 'the wire is not known', plan: on(null, 60, true), expect: [{ ...open(60), asks: 'machines.0.hookUp.wire' }] },
  {
    name: 'the breaker is not known',
    plan: on('6', null, true),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.breakerA' }],
  },
]);
