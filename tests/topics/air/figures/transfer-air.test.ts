import { rule } from '../../../../src/topics/air/figures/transfer-air';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

const room = (exhaust: number, makeUp: number | null) =>
  linePlan({}, (plan) => {
    hoodOf(plan).exhaust = exhaust;
    plan.air.makeUp = makeUp;
  });

describeFigure(rule, [
  { name: 'drawn out of the next rooms', plan: room(1.5, 1.3), expect: [{ subjects: [], value: 0.2 }] },
  { name: 'blown out into them', plan: room(1, 1.25), expect: [{ subjects: [], value: -0.25 }] },
  { name: 'the make-up air is not known', plan: room(1, null), expect: [{ subjects: [], value: null, asks: 'air.makeUp' }] },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
