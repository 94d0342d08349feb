import { rule } from '../../../../src/topics/air/figures/total-exhaust';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

describeFigure(rule, [
  {
    name: 'a hood of 1.2 m³/s and 0.3 at the ceiling',
    plan: linePlan({}, (plan) => {
      hoodOf(plan).exhaust = 1.2;
      plan.air.roomExhaust = 0.3;
    }),
    expect: [{ subjects: [], value: 1.5 }],
  },
  {
    name: 'a run counts as its sheet needs it',
    plan: linePlan({ family: 'direct-vent' }, ({ air }) => void (air.roomExhaust = 0.1)),
    expect: [{ subjects: [], value: 0.3 }],
  },
  {
    name: 'the hood is not known',
    plan: linePlan({}, (plan) => void (hoodOf(plan).exhaust = null)),
    expect: [{ subjects: [], value: null, asks: 'hoods.0.exhaust' }],
  },
  {
    name: 'the ceiling is not known',
    plan: linePlan({}, ({ air }) => void (air.roomExhaust = null)),
    expect: [{ subjects: [], value: null, asks: 'air.roomExhaust' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
