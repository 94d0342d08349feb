import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/people/figures/station-way-width';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThing, addThingBetween, clearAway } from '../../../support/roomPlan';

const STATIONS = [
  ['drop-off', 'drop-off'],
  ['pre-rinse', 'pre-rinse'],
  ['clean-landing', 'clean-landing'],
  ['storage', 'clean-shelving'],
] as const;
const SINK = ['hand-sink', 'hand-sink'] as const;
const wide = ([part, subject]: readonly [string, string]) => ({ part, subjects: [subject], value: 0.9144 });

describeFigure(rule, [
  { name: 'a whole line: 36 in or more everywhere', plan: linePlan(), expect: [...STATIONS, SINK].map(wide) },
  {
    name: 'a gap of 30 in to the drop-off',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'bench', [0, 1800], [1700, 2000], { kind: 'work-table' });
      addThingBetween(plan, 'post', [1500, 767 + 762], [1700, 1800], { kind: 'work-table' });
    }),
    expect: STATIONS.map((station) => (station[0] === 'drop-off' ? { ...wide(station), value: 0.762 } : wide(station))),
  },
  {
    // The cart, front to the left, 600 deep, goes from 1300…1900 to 700…1300; the door ends at 1164, the left wall is at 0.
    name: 'a cart that rolls out in the open leaves as much',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThing(plan, 'cart', 1600, 3000, 600, 600, { rotationDeg: 90 });
    }),
    expect: [...STATIONS.map(wide), { part: 'beside-carts', subjects: [], value: 0.9144, notes: /rolled out/ }],
  },
  {
    // Benches bar the storage but for the way along the lower wall, at 4049.5. There a door of 800 stands open: its leaf, hinged at
    // 3000, reaches up to 3249.5, and the bench down to 2700.
    name: 'past the leaf of an open door',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'bench', [2600, 2455], [4340, 2700], { kind: 'work-table' });
      const side = { kind: 'door', from: 4812.5 - 3000, width: 800, swing: 'in', hinge: 'start' } as const;
      const [door] = plan.room.openings;
      if (door !== undefined) plan.room.openings.push({ ...door, ...side, id: 'side-door' });
    }),
    expect: STATIONS.map((station) => (station[0] === 'storage' ? { ...wide(station), value: 0.5495 } : wide(station))),
  },
  {
    name: 'no door',
    plan: linePlan({}, ({ room }) => void (room.openings = [])),
    expect: [{ subjects: [], value: null, asks: 'room.openings' }],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
