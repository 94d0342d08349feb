import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/people/figures/working-reach';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, tableOf } from '../../../support/linePlan';
import { addShelf } from '../../../support/roomPlan';

describeFigure(rule, [
  {
    name: 'a bowl of 510 on a rack line 273 from the edge, a rack of 508 on the other',
    plan: linePlan(),
    expect: [
      { subjects: ['soiled-table'], value: 0.528, notes: 'bowl' },
      { subjects: ['clean-table'], value: 0.527, notes: 'rack' },
    ],
  },
  {
    name: 'an overshelf 300 deep over a table of 762 begins nearer than the rack ends',
    plan: linePlan({}, (plan) => addShelf(tableOf(plan, 'clean'), 100, 700, 1400)),
    expect: [
      { subjects: ['soiled-table'], value: 0.528 },
      { subjects: ['clean-table'], value: 0.527 },
    ],
  },
  {
    name: 'a scrap opening 700 across',
    plan: linePlan({}, (plan) => {
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'scrap') fitting.width = 700;
    }),
    expect: [
      { subjects: ['soiled-table'], value: 0.623, notes: 'scrap opening' },
      { subjects: ['clean-table'], value: 0.527 },
    ],
  },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
