import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/racks-on-landing';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, tableOf } from '../../../support/linePlan';

/** The line's landings are 60 in each. */
const pitchPlan = (rackPitch: number): Plan => linePlan({}, ({ settings }) => void (settings.rackPitch = rackPitch));
const both = (value: number, pitch: string | null) => [
  { part: 'before', subjects: ['soiled-table'], value, notes: pitch },
  {
    part: 'after',
    subjects: ['clean-table'],
    value,
    notes: new RegExp(`${pitch ?? '^One city'}.*3 places .* after hot water and 5 after chemicals`),
  },
];
const TWO = '2 with 20½ in';

/** UFGS 11400A §2.4.2.2: guides 20 in apart, slide of 20½ in; the counts are worked out. */
describeFigure(rule, [
  { name: '60 in at 20 in hold three', plan: pitchPlan(508), expect: both(3, TWO) },
  { name: '60 in at 20½ in hold two', plan: pitchPlan(520.7), expect: both(2, null) },
  { name: 'and at 20¼ in two, as at 20½ in', plan: pitchPlan(514.35), expect: both(2, 'As many with 20½ in') },
  {
    name: 'no clean table',
    plan: linePlan({}, (plan) => void (plan.tables = [tableOf(plan, 'soiled')])),
    expect: both(3, TWO).slice(0, 1),
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
