import { check } from '../../../../src/topics/air/checks/room-humidity';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { humidityBy, moistRoom, vapourBy } from '../../../support/roomAirPlans';

const found = (verdict: ExpectedFinding['verdict'], exhaust: number, makeUp: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured: humidityBy(vapourBy(exhaust, makeUp)),
  within: 1e-5,
  limit: 0.65,
});
const air = (roomExhaust: number, makeUp: number) => ({ roomExhaust, makeUp });
const asks = (path: string): ExpectedFinding => ({ verdict: 'ask', subjects: ['machine'], measured: null, asks: path });

// Minn. R. 1346.0507: at most 65 % where the machine recovers its heat, its whole heat counted; for others a watch.
describeCheck(check, [
  { name: 'plenty of air', plan: moistRoom(air(0.3, 0.27)), expect: [found('clear', 0.3, 0.27)] },
  { name: 'too little air', plan: moistRoom(air(0.05, 0.045)), expect: [found('stop', 0.05, 0.045)] },
  { name: 'no make-up air: all of it out of the next rooms', plan: moistRoom(air(0.3, 0)), expect: [found('clear', 0.3, 0)] },
  {
    name: 'a machine that needs a hood and has none',
    plan: moistRoom(air(0.05, 0.045), undefined, 'hood'),
    expect: [found('watch', 0.05, 0.045)],
  },
  {
    name: 'a machine that wins back its heat and does not state what it gives: the most that it can be, so a watch',
    plan: moistRoom(air(0.05, 0.045), undefined, 'silent-recovery'),
    expect: [found('watch', 0.05, 0.045)],
  },
  {
    name: 'more vapour than the air holds counts as saturated',
    plan: moistRoom(air(0.01, 0.009)),
    expect: [
      {
        verdict: 'stop',
        subjects: ['machine'],
        measured: 1,
        limit: 0.65,
        says: 'While the machine washes rack after rack the room grows to 100 %, more than 65 %. Draw 193 cfm of such air through the room, or drier air.',
      },
    ],
  },
  {
    name: 'pieces a rack not known',
    plan: moistRoom(air(0.3, 0.27), ({ demand }) => void (demand.piecesPerRack = null), 'silent-recovery'),
    expect: [asks('demand.piecesPerRack')],
  },
  {
    name: 'humidity of the room not known',
    plan: moistRoom({ ...air(0.3, 0.27), roomHumidity: null }),
    expect: [asks('air.roomHumidity')],
  },
  {
    name: 'humidity of the make-up air not known',
    plan: moistRoom({ ...air(0.3, 0.27), makeUpHumidity: null }),
    expect: [asks('air.makeUpHumidity')],
  },
  { name: 'make-up air not known', plan: moistRoom({ ...air(0.3, 0), makeUp: null }), expect: [asks('air.makeUp')] },
  {
    name: 'no air passes at all',
    plan: moistRoom(air(0, 0)),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
