import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/heat-units';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const f = (value: number) => toSI(value, 'F');
const recordPlan = (readings: readonly (readonly [at: number, f: number])[], family = 'recirculating-hot-water'): Plan =>
  linePlan({ family }, ({ machines: [machine] }) => {
    if (machine !== undefined) machine.hookUp.plateRecord = readings.map(([at, tempF]) => ({ at, tempC: f(tempF) }));
  });
const held = (tempF: number, seconds: number) =>
  recordPlan([
    [10, tempF],
    [10 + seconds, tempF],
  ]);
const total = (verdict: 'clear' | 'stop', measured: number, within: number) => ({
  verdict,
  part: 'total',
  subjects,
  measured,
  within,
  limit: 3600,
});
const surface = (verdict: 'clear' | 'stop', tempF: number) => ({
  verdict,
  part: 'surface',
  subjects,
  measured: f(tempF),
  limit: f(160),
});

/** 3,600 at the dish; 161 °F for 15 s are 1800, 165 °F and up for 30 s 10,404; 160 °F at the surface. */
describeCheck(check, [
  { name: '161 °F for 31 s', plan: held(161, 31), expect: [total('clear', 3720, 2), surface('clear', 161)] },
  {
    name: '161 °F for 15 s',
    plan: held(161, 15),
    expect: [
      {
        ...total('stop', 1800, 0.5),
        says: 'In the recorded cycle of the machine a plate took up 1800 heat units of the 3600 that sanitise: a hotter rinse or a longer cycle, then record it again.',
      },
      surface('clear', 161),
    ],
  },
  {
    // 150 °F for 559 s gather 3600, and the surface stays too cool.
    name: '150 °F for 10 min',
    plan: held(150, 600),
    expect: [
      {
        ...surface('stop', 150),
        says: 'In the recorded cycle of the machine a plate came to 150 °F and the food code asks for 160 °F at its surface: a hotter rinse, then record it again.',
      },
      total('clear', 3862, 3),
    ],
  },
  {
    name: 'one reading is no record',
    plan: recordPlan([[10, 170]]),
    expect: [{ verdict: 'ask', part: 'total', subjects, measured: null }, surface('clear', 170)],
  },
  { name: 'no record', plan: linePlan(), expect: [] },
  {
    name: 'chemicals',
    plan: recordPlan(
      [
        [10, 100],
        [20, 110],
      ],
      'chemical-sanitising',
    ),
    expect: [],
  },
]);
