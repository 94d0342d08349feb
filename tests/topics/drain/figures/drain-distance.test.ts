import { type FloorDrain, type Plan, UNKNOWN_FLOOR_WASTE } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/drain-distance';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

/** The outlet: 110 from the left and 60 from the back edge of the footprint at 3950, 138.5. */
const OUTLET = { x: 4060, y: 198.5 };

const drains =
  (...offsets: [id: string, dx: number, dy: number][]) =>
  (plan: Plan) => {
    plan.room.floorDrains = offsets.map(
      ([id, dx, dy]): FloorDrain => ({ id, kind: 'floor-sink', x: OUTLET.x + dx, y: OUTLET.y + dy, size: 300, waste: UNKNOWN_FLOOR_WASTE }),
    );
  };

describeFigure(rule, [
  {
    // FDA Food Code 5-402.11 as South Carolina 61-25 (read): 5 ft.
    name: '5 ft just hold',
    plan: linePlan({}, drains(['sink', -1524, 0])),
    expect: [{ subjects: ['machine', 'sink'], value: 1.524, notes: /^Within 5 ft: a direct connection is possible where law/ }],
  },
  {
    name: '1 mm more does not',
    plan: linePlan({}, drains(['sink', -1525, 0])),
    expect: [{ subjects: ['machine', 'sink'], value: 1.525, notes: /no direct connection/ }],
  },
  {
    name: 'the nearest of two: 3, 4, 5',
    plan: linePlan({}, drains(['far', -3000, 0], ['near', -600, 800])),
    expect: [{ subjects: ['machine', 'near'], value: 1 }],
  },
  { name: 'no drain drawn', plan: linePlan({}, drains()), expect: [{ subjects: ['machine'], value: null, asks: 'room.floorDrains' }] },
  { name: 'a sheet without a drain', plan: linePlan({ family: ownDataSheet({ connections: [] }) }, drains(['sink', 0, 500])), expect: [] },
]);
