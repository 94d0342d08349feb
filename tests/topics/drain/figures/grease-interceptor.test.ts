import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/grease-interceptor';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const notes = /One city’s formula.*local authority sizes it/;
const sinks = (plan: Plan, number: number) => {
  for (let i = 0; i < number; i += 1) addThing(plan, `sink-${i}`, 30_000 + 3000 * i, 30_000, 2286, 711, { kind: 'three-compartment-sink' });
};

/** One city: units × 3 gpm × 12 min, at least 500 gal with a dish machine (secondary); 20 units are 720 gal. A machine counts by the larger of its rows (read). */
describeFigure(rule, [
  {
    name: 'a machine of 4 units and a pre-rinse of 3: 252, so 500 gal',
    plan: linePlan(),
    expect: [{ subjects: [], value: toSI(500, 'gal'), notes }],
  },
  {
    name: 'three sinks of 4 more: 19 units, 684 gal',
    plan: linePlan({}, (plan) => sinks(plan, 3)),
    expect: [{ subjects: [], value: toSI(684, 'gal') }],
  },
  {
    name: 'a tank of more than 30 gal is 6 units: 21 units, 756 gal',
    plan: linePlan({ family: ownDataSheet({ tank: { volume: toSI(31, 'gal'), heater: 3000 } }) }, (plan) => sinks(plan, 3)),
    expect: [{ subjects: [], value: toSI(756, 'gal') }],
  },
  {
    name: 'a tank of more than 100 gal is beyond the table',
    plan: linePlan({ family: ownDataSheet({ tank: { volume: toSI(101, 'gal'), heater: 3000 } }) }),
    expect: [{ subjects: [], value: null, refuses: 'see the code itself' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
