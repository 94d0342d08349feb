import { rule } from '../../../../src/topics/people/figures/way-length';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, tableOf } from '../../../support/linePlan';

const subjects = ['machine'];

describeFigure(rule, [
  {
    name: 'no tables: nothing goes through',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: [],
  },
  {
    // Straight through a machine of 737 mm with flush tables: the rack goes from door to door.
    name: 'straight through: the width of the machine; the clean table alone, without a storage',
    plan: linePlan({ configuration: 'straight' }, (plan) => {
      plan.things = [];
      tableOf(plan, 'soiled').fittings = [{ id: 'drop', kind: 'drop-off', at: 1000, length: 500 }];
      tableOf(plan, 'clean').legs = [{ length: 1500, turnDeg: 0 }];
    }),
    expect: [
      { part: 'soiled', subjects, value: 1, notes: /drop-off/ },
      { part: 'rack', subjects, value: 0.737 },
      { part: 'clean', subjects, value: 1.5 },
    ],
  },
]);
