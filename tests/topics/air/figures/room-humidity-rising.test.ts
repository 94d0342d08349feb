import { rule } from '../../../../src/topics/air/figures/room-humidity-rising';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { humidityBy, moistRoom, vapourBy } from '../../../support/roomAirPlans';
import { setWalls } from '../../../support/roomPlan';

/** 6 × 5 × 3 m. */
const room = (ceilingHeight: number | null) =>
  moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }, (plan) => {
    setWalls(
      plan,
      [
        [0, 0],
        [6000, 0],
        [6000, 5000],
        [0, 5000],
      ],
      { wall: 'wall-2', from: 1000 },
    );
    plan.room.ceilingHeight = ceilingHeight;
  });
const after = (part: string, seconds: number) => ({
  part,
  subjects: [],
  value: humidityBy(vapourBy(0.2, 0.18, seconds, 90)),
  within: 1e-5,
  notes: 'walls',
});

describeFigure(rule, [
  // Room concentration with a source and ventilation (read).
  { name: '90 m³', plan: room(3000), expect: [after('5-minutes', 300), after('15-minutes', 900), after('60-minutes', 3600)] },
  { name: 'the ceiling is not known', plan: room(null), expect: [{ subjects: [], value: null, asks: 'room.ceilingHeight' }] },
  {
    name: 'the exhaust is not known',
    plan: moistRoom({ roomExhaust: null, makeUp: 0.18 }),
    expect: [{ subjects: [], value: null, asks: 'air.roomExhaust' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
