import { rule } from '../../../../src/topics/power/figures/load-current';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan, versionOf } from '../../../support/figurePlans';

const subjects = ['machine'];
const plate = /connection plate inside the control compartment governs.*licensed electrician decides/;
const both = (computed: number, sheet: number) => [
  { part: 'computed', subjects, value: computed, within: 0.005, notes: plate },
  { part: 'data-sheet', subjects, value: sheet, notes: plate },
];

/** I = P / V, three phases P / (√3 V): standard, from memory; the currents are worked out. */
describeFigure(rule, [
  { name: '14.5 kW, 208 V, three phases', plan: sheetPlan({ electrical: versionOf(14.5, 208, 3, 40.2) }), expect: both(40.25, 40.2) },
  { name: '12 kW, 240 V, single phase', plan: sheetPlan({ electrical: versionOf(12, 240, 1, 52) }), expect: both(50, 52) },
  { name: '24 kW, 480 V, three phases', plan: sheetPlan({ electrical: versionOf(24, 480, 3, 28.9) }), expect: both(28.87, 28.9) },
  {
    name: 'no version is chosen',
    plan: sheetPlan(
      { electrical: [...versionOf(14.5, 208, 3, 40.2), { id: 'other', voltage: 240, phase: 1, powerKw: 12, currentA: 52 }] },
      (plan) => {
        for (const machine of plan.machines) machine.electrical = null;
      },
    ),
    expect: [
      { subjects, value: null, asks: 'machines.0.electrical' },
      { part: '208-V-three-phase-14.5-kW', subjects, value: 40.25, within: 0.005, notes: 'states 40.2 A' },
      { part: '240-V-single-phase-12-kW', subjects, value: 50, within: 0.005, notes: plate },
    ],
  },
  {
    name: 'a voltage below what is held',
    plan: sheetPlan({ electrical: versionOf(1, 60, 1, 16.7) }),
    expect: [
      { part: 'computed', subjects, value: null, refuses: 'voltageV is 60' },
      { part: 'data-sheet', subjects, value: 16.7 },
    ],
  },
]);
