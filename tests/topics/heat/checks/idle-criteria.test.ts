import { check } from '../../../../src/topics/heat/checks/idle-criteria';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';

const found = (verdict: ExpectedFinding['verdict'], measured: number, limit: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured,
  limit,
});

// memory: ENERGY STAR 3.0, door machines: 0.55 kW with hot water, 0.60 kW with chemicals · memory · exact. Never more than a watch.
describeCheck(check, [
  { name: '550 W', plan: sheetPlan({ idle: 550 }), expect: [found('clear', 550, 550)] },
  {
    name: '700 W, as 2.0 allowed',
    plan: sheetPlan({ idle: 700 }),
    expect: [
      {
        ...found('watch', 700, 550),
        says: 'While it is ready and washes nothing, the machine takes 0.7 kW, more than the 0.55 kW of the published criteria: switch it off between meals, or take another.',
      },
    ],
  },
  {
    name: '600 W with chemicals',
    plan: sheetPlan({ idle: 600, sanitizing: 'chemical', booster: null }),
    expect: [found('clear', 600, 600)],
  },
  {
    name: '650 W with chemicals',
    plan: sheetPlan({ idle: 650, sanitizing: 'chemical', booster: null }),
    expect: [found('watch', 650, 600)],
  },
  { name: 'no tank', plan: sheetPlan({ tank: null }), expect: [] },
  {
    name: 'the data sheet does not say',
    plan: sheetPlan({ idle: null }),
    expect: [
      {
        verdict: 'ask',
        subjects: ['machine'],
        measured: null,
        asks: 'sheets.0.idle',
        says: 'To know how it stands beside the criteria, say the power of the machine while it is idle.',
      },
    ],
  },
]);
