import type { DataSheet } from '../../../../src/catalog';
import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/hood/checks/waived-exhaust-enough';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { setWalls } from '../../../support/roomPlan';
import { listedSheet } from '../../../support/unhooded';

/** A room of 6 × 5 m, 30 m²: 0.70 cfm to each of its square feet. */
const NEEDED = 30 * toSI(0.7, 'fpm');
const room = (family: string | DataSheet, roomExhaust: number | null, hoodWaived: boolean | null = null) =>
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
    Object.assign(plan.air, { roomExhaust, hoodWaived });
  });
const found = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured,
  limit: NEEDED,
});

// Where nobody says that the room takes it a hood is missing: `hood-where-needed` stops at that.
// IMC 507.3, restated: 0.70 cfm/ft² where the ventilation takes the heat and moisture.
describeCheck(check, [
  {
    name: 'a machine that wins back its heat, not listed as condensing: enough',
    plan: room(listedSheet(false), 0.11),
    expect: [found('clear', 0.11)],
  },
  {
    name: 'too little, and nobody has said that the room takes it',
    plan: room(listedSheet(false), 0.1),
    expect: [
      {
        ...found('watch', 0.1),
        says: 'The machine stands without a hood. For the room to take its place it would have to draw 226 cfm, and it draws 212 cfm: 14 cfm too little.',
      },
    ],
  },
  { name: 'a machine that needs a hood', plan: room('recirculating-hot-water', 0.1), expect: [found('watch', 0.1)] },
  {
    name: 'the exhaust of the room is not known',
    plan: room(listedSheet(false), null),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'air.roomExhaust' }],
  },
  {
    name: 'its listing is not known',
    plan: room(listedSheet(null), 0.11),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'sheets.0.vent.listedCondensing' }],
  },
  { name: 'the plan says that the room takes it', plan: room('recirculating-hot-water', 0.11, true), expect: [found('clear', 0.11)] },
  {
    name: 'it says so, and draws too little',
    plan: room('recirculating-hot-water', 0.1, true),
    expect: [
      {
        ...found('stop', 0.1),
        says: 'The machine stands without a hood, and the room draws 212 cfm of the 226 cfm that are asked: 14 cfm too little. Give the room an exhaust at its ceiling for that.',
      },
    ],
  },
  { name: 'the plan says that a hood is wanted: no exhaust stands for it', plan: room('recirculating-hot-water', 0.1, false), expect: [] },
  { name: 'a machine that is listed as condensing', plan: room('heat-recovery', 0.1), expect: [] },
  { name: 'a machine under its hood', plan: linePlan(), expect: [] },
  { name: 'a machine with its own vent', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);
