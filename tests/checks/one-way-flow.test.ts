import { check } from '../../src/checks/rules/one-way-flow';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { FREE, linePlan, tableOf } from '../support/linePlan';

const clear = { verdict: 'clear', subjects: ['machine'], measured: 0, limit: 0 } satisfies ExpectedFinding;
const cart = {
  id: 'cart',
  kind: 'cart',
  name: '',
  rotationDeg: 0,
  width: 500,
  depth: 700,
  height: 900,
  ware: 'soiled',
  clearBelow: null,
  basins: null,
} as const;

describeCheck(check, [
  {
    name: 'soiled from the left, clean away to the right',
    plan: linePlan({ configuration: 'straight' }),
    expect: [{ ...clear, says: 'The way of soiled ware to the machine crosses no way of clean ware.' }],
  },
  { name: 'around a corner', plan: linePlan(), expect: [clear] },
  {
    // Soiled ware comes from a cart before the machine, clean ware goes to shelving on the soiled side: both pass the same floor.
    name: 'clean storage on the soiled side',
    plan: linePlan({ configuration: 'straight' }, (plan) => {
      const { x, y } = plan.machines[0]!;
      const soiled = tableOf(plan, 'soiled');
      soiled.legs = [{ length: 1500, turnDeg: 0 }];
      soiled.fittings = [];
      tableOf(plan, 'clean').legs = [{ length: 300, turnDeg: 0 }];
      tableOf(plan, 'clean').fittings = [];
      plan.things = [
        { ...cart, x: x - 300, y: y + 1700 },
        { ...cart, id: 'clean-shelving', kind: 'shelving', x: x - 1500, y: y + 1000, ware: 'clean' },
      ];
    }),
    expect: [
      {
        ...clear,
        verdict: 'stop',
        measured: 1,
        says: 'Soiled and clean ware cross at 1 place. Give drop-off and clean storage their own sides.',
      },
    ],
  },
  {
    name: 'without a clean table there is no clean way to cross',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [clear],
  },
]);
