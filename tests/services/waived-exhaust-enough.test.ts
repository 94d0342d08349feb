import type { Plan } from '../../src/plan';
import { check } from '../../src/services/rules/waived-exhaust-enough';
import { toSI } from '../../src/units';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { linePlan } from '../support/linePlan';
import { setWalls } from '../support/roomPlan';

/** A room of 6 × 5 m, 30 m²: 0.70 cfm to each of its square feet. */
const NEEDED = 30 * toSI(0.7, 'fpm');
const room = (family: string, roomExhaust: number | null) =>
  linePlan({ family }, (plan: Plan) => {
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
    plan.hoods = [];
    plan.air.roomExhaust = roomExhaust;
  });
const found = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured,
  limit: NEEDED,
});

// IMC 507.3, restated: 0.70 cfm/ft² where the ventilation takes the heat and moisture.
describeCheck(check, [
  { name: 'a machine that recovers its heat, enough', plan: room('heat-recovery', 0.11), expect: [found('clear', 0.11)] },
  {
    name: 'too little: it may be free of it by its listing, so a watch',
    plan: room('heat-recovery', 0.1),
    expect: [
      {
        ...found('watch', 0.1),
        says: 'The machine stands without a hood, and the room draws 212 cfm of the 226 cfm that are asked: 14 cfm too little. Give the room an exhaust at its ceiling for that.',
      },
    ],
  },
  { name: 'a machine that needs a hood', plan: room('recirculating-hot-water', 0.1), expect: [found('stop', 0.1)] },
  {
    name: 'the exhaust of the room is not known',
    plan: room('heat-recovery', null),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'air.roomExhaust' }],
  },
  { name: 'a machine under its hood', plan: linePlan(), expect: [] },
  { name: 'a machine with its own vent', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);
