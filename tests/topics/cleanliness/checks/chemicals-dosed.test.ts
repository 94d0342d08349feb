import { FAMILIES } from '../../../../src/catalog';
import { check } from '../../../../src/topics/cleanliness/checks/chemicals-dosed';
import { describeCheck } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

const subjects = ['machine'];
const without = ownDataSheet({}).connections.filter(({ kind }) => kind !== 'detergent-signal');

/** FDA Food Code 4-204.117 (read): what the data sheet has says whether the machine calls for detergent. */
describeCheck(check, [
  {
    name: 'a detergent signal',
    plan: sheetPlan({}),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: true,
        says: 'The machine calls for its detergent by a signal; see when it is set up that detergent can be seen to come, or an alarm sounds.',
      },
    ],
  },
  {
    name: 'none',
    plan: sheetPlan({ connections: without }),
    expect: [
      {
        verdict: 'watch',
        subjects,
        measured: false,
        says: 'The data sheet of the machine has no signal that calls for detergent: ask its maker how detergent is dosed without a hand, and how one sees or hears that a can is empty.',
      },
    ],
  },
  {
    name: 'none, and it sanitises by chemicals',
    plan: sheetPlan({ connections: without, sanitizing: 'chemical' }),
    expect: [
      {
        verdict: 'watch',
        subjects,
        measured: false,
        says: 'The data sheet of the machine has no signal that calls for detergent: ask its maker how detergent and sanitiser are dosed without a hand, and how one sees or hears that a can is empty.',
      },
    ],
  },
  ...FAMILIES.map(({ id }) => ({
    name: id,
    plan: linePlan({ family: id }),
    expect: [{ verdict: 'clear' as const, subjects, measured: true }],
  })),
]);
