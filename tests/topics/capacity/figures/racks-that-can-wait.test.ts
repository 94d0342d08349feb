import { createPlan, type Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/racks-that-can-wait';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addCart } from '../../../support/rushPlans';

const cartPlan = (cart: Parameters<typeof addCart>[1]): Plan => linePlan({}, (plan) => addCart(plan, cart));
const holds = (value: number, notes?: string) => [{ subjects: [], value, ...(notes === undefined ? {} : { notes }) }];

/** 60 in before the machine hold three racks at 20 in, the drop-off one. */
describeFigure(rule, [
  { name: 'the line', plan: linePlan(), expect: holds(4, '3 before the machine, 1 at the drop-off, 0 on carts') },
  {
    name: 'racks of 20½ in',
    plan: linePlan({}, ({ settings }) => void (settings.rackPitch = 520.7)),
    expect: holds(3, '2 before the machine, 1 at the drop-off'),
  },
  { name: 'a cart for two racks', plan: cartPlan({ width: 600, depth: 1100 }), expect: holds(6, '2 on carts') },
  { name: 'a cart narrower than a rack', plan: cartPlan({ width: 450, depth: 1100 }), expect: holds(4) },
  { name: 'a cart for clean ware', plan: cartPlan({ width: 600, depth: 1100, ware: 'clean' }), expect: holds(4) },
  {
    name: 'no tables',
    plan: linePlan({}, (plan) => void (plan.tables = [])),
    expect: holds(0),
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
