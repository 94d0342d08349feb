import { rule } from '../../../../src/topics/air/figures/make-up-air';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

const subjects = ['hood', 'machine'];
/** One foot a minute. */
const FPM = 0.3048 / 60;

describeFigure(rule, [
  {
    // IMC 507.1.6 and 508.1: about equal to the exhaust; governing here: IMC 2000, open perimeter × height × 50 fpm, or 100 fpm × area.
    name: 'equal to the exhaust that governs: a low lip, so the hospital manual',
    plan: linePlan({}, (plan) => Object.assign(hoodOf(plan), { width: 1219.2, depth: 1219.2, x: 4118, y: 700, lipHeight: 1064 })),
    expect: [{ subjects, value: 1.2192 ** 2 * 100 * FPM, notes: 'area, most' }],
  },
  {
    name: 'the lip is not known',
    plan: linePlan({}, (plan) => Object.assign(hoodOf(plan), { lipHeight: null })),
    expect: [{ subjects, value: null, asks: 'hoods.0.lipHeight' }],
  },
  {
    name: 'a rule that refuses',
    plan: linePlan({}, (plan) => Object.assign(hoodOf(plan), { lipHeight: 864 })),
    expect: [{ subjects, value: null, refuses: 'heightM' }],
  },
  {
    name: 'equal to the exhaust of the rule that the plan chose',
    plan: linePlan({}, (plan) => {
      Object.assign(hoodOf(plan), { width: 1219.2, depth: 900, lipHeight: null });
      plan.codes = { ...plan.codes, exhaust: 'length' };
    }),
    // IMC 507.3.4.2: 100 cfm to a foot, 400 cfm for 4 ft.
    expect: [{ subjects, value: 400 * 0.3048 ** 2 * FPM, notes: 'length' }],
  },
  { name: 'no hood', plan: linePlan({ family: 'heat-recovery' }), expect: [] },
]);
