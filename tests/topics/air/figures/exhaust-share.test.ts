import { rule } from '../../../../src/topics/air/figures/exhaust-share';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

const room = (hood: number, roomExhaust: number | null) =>
  linePlan({}, (plan) => {
    hoodOf(plan).exhaust = hood;
    plan.air.roomExhaust = roomExhaust;
  });

describeFigure(rule, [
  // UFC 3-410-01FA 4-10.1 (read): about 75 % at the dishwasher.
  { name: 'three parts of four', plan: room(0.9, 0.3), expect: [{ subjects: [], value: 0.75 }] },
  { name: 'all of it', plan: room(0.9, 0), expect: [{ subjects: [], value: 1 }] },
  { name: 'nothing is drawn', plan: room(0, 0), expect: [{ subjects: [], value: null, refuses: 'exhaustM3s is 0' }] },
  { name: 'the ceiling is not known', plan: room(0.9, null), expect: [{ subjects: [], value: null, asks: 'air.roomExhaust' }] },
  { name: 'neither hood nor run', plan: linePlan({ family: 'heat-recovery' }), expect: [] },
]);
