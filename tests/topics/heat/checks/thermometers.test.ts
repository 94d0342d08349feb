import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/thermometers';
import { describeCheck } from '../../../support/cases';
import { hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const has = (thermometers: boolean | null) => hookedSheetPlan({ thermometers });
const subjects = ['machine'];

/** In each tank and at the rinse: San Marcos TX (read). */
describeCheck(check, [
  {
    name: 'a machine of the catalogue',
    plan: linePlan(),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: true,
        limit: true,
        says: 'The machine has a thermometer in each tank and at its final rinse.',
      },
    ],
  },
  {
    name: 'none',
    plan: has(false),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: false,
        limit: true,
        says: 'The machine has no thermometer in each tank and at its final rinse. Take one that has, or have its maker fit them.',
      },
    ],
  },
  {
    name: 'not known',
    plan: has(null),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        limit: true,
        asks: 'sheets.0.thermometers',
        says: 'Say whether the machine has a thermometer in each tank and at its final rinse.',
      },
    ],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
