import { rule } from '../../src/figures/rules/racks-on-landing';
import type { Plan } from '../../src/plan';
import { describeFigure } from '../support/figureCases';
import { linePlan, tableOf } from '../support/linePlan';

/** The line's landings are 60 in each. */
const pitchPlan = (rackPitch: number): Plan => linePlan({}, ({ settings }) => void (settings.rackPitch = rackPitch));
const both = (value: number) => [
  { part: 'before', subjects: ['soiled-table'], value, notes: null },
  { part: 'after', subjects: ['clean-table'], value, notes: /3 places .* after hot water and 5 after chemicals/ },
];

/** UFGS 11400A §2.4.2.2: guides 20 in apart, slide of 20½ in (L-08); the counts are worked out (L-LT3, L-LT4). */
describeFigure(rule, [
  { name: '60 in at 20 in hold three', plan: pitchPlan(508), expect: both(3) },
  { name: '60 in at 20½ in hold two', plan: pitchPlan(520.7), expect: both(2) },
  {
    name: 'no clean table',
    plan: linePlan({}, (plan) => void (plan.tables = [tableOf(plan, 'soiled')])),
    expect: both(3).slice(0, 1),
  },
  {
    name: 'racks narrower than any',
    plan: pitchPlan(350),
    expect: [
      { part: 'before', subjects: ['soiled-table'], value: null, refuses: 'pitchM' },
      { part: 'after', subjects: ['clean-table'], value: null, refuses: 'pitchM' },
    ],
  },
]);
