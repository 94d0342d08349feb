import { rule } from '../../../../src/topics/power/figures/wire-needed';
import { describeFigure } from '../../../support/figureCases';
import { versionOf } from '../../../support/figurePlans';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
const on = (breakerA: number, markedFor75C: boolean | null) => hookedPlan({ breakerA, markedFor75C });
const notes = /Preliminary: .* licensed electrician decides/;

/** NEC Table 310.16, single values (secondary); 240.4(D) and 110.14(C) (secondary). */
describeFigure(rule, [
  { name: '15 A: 14 AWG', plan: on(15, false), expect: [{ subjects, value: 14, notes }] },
  { name: '20 A on 75 °C: 12 AWG, as small wire is bound', plan: on(20, true), expect: [{ subjects, value: 12 }] },
  { name: '30 A on 60 °C: 10 AWG', plan: on(30, false), expect: [{ subjects, value: 10 }] },
  { name: '40 A on 60 °C: 8 AWG', plan: on(40, false), expect: [{ subjects, value: 8 }] },
  { name: '50 A on 60 °C: 6 AWG', plan: on(50, false), expect: [{ subjects, value: 6 }] },
  { name: '50 A on 75 °C: 8 AWG', plan: on(50, true), expect: [{ subjects, value: 8, notes: /75 °C, as the machine is marked/ }] },
  { name: '60 A on 75 °C: 6 AWG', plan: on(60, true), expect: [{ subjects, value: 6 }] },
  {
    name: '60 A on 60 °C: a size that is not public',
    plan: on(60, false),
    expect: [{ subjects, value: null, refuses: 'the code itself' }],
  },
  { name: 'whether it is marked is not known: 60 °C', plan: on(50, null), expect: [{ subjects, value: 6, notes: /60 °C/ }] },
  {
    name: 'no breaker is chosen: for the next standard one, 20 A',
    plan: hookedSheetPlan({ electrical: versionOf(1.8, 115, 1, 15.7) }, { breakerA: null, markedFor75C: false }),
    expect: [{ subjects, value: 12, notes: /next standard breaker/ }],
  },
  {
    name: 'nor a version of the machine',
    plan: hookedPlan({ breakerA: null }, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ subjects, value: null, asks: 'machines.0.electrical' }],
  },
]);
