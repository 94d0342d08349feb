import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/water/checks/static-pressure';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { psi } from '../../../support/pressurePlans';

const atRest = (staticPressure: number | null) => linePlan({}, ({ pipes }) => void (pipes.staticPressure = staticPressure));

/** UPC 608.2 (2015): a pressure-reducing valve above 80 psi. */
describeCheck(check, [
  { name: '80 psi', plan: atRest(psi(80)), expect: [{ verdict: 'clear', subjects: [], measured: psi(80), limit: psi(80) }] },
  {
    name: '81 psi',
    plan: atRest(psi(81)),
    expect: [
      {
        verdict: 'stop',
        subjects: [],
        measured: psi(81),
        limit: psi(80),
        says: 'At rest the water stands at 81 psi, more than 80 psi: have a pressure-reducing valve fitted, set to that or less, and an expansion tank after it; pipes after it are sized on 80 % of what it is set to.',
      },
    ],
  },
  {
    name: 'not measured',
    plan: atRest(null),
    expect: [{ verdict: 'ask', subjects: [], measured: null, asks: 'pipes.staticPressure' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
