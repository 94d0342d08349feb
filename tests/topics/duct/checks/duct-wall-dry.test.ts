import psychrolib from 'psychrolib';
import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/duct/checks/duct-wall-dry';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runPlan } from '../../../support/runPlans';

const F = (fahrenheit: number) => toSI(fahrenheit, 'F');
const UP = [[0, 0, 3000]] as const;
const dewPointBy = (temperatureC: number, humidity: number) => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return psychrolib.GetTDewPointFromRelHum(temperatureC, humidity);
};

/** A run with air of so many °F and such humidity, in an attic of 40 °F, with insulation. */
const attic = (exhaustF: number, exhaustHumidity: number, insulation: number | null) =>
  runPlan(UP, { exhaustC: F(exhaustF), exhaustHumidity, insulation }, ({ air }) => void (air.ductAirC = F(40)));
/** The same of 95 °F and 70 %, in a room of 75 °F and out through the wall into 40 °F. */
const outside = (insulation: number, change: (plan: Plan) => void = () => {}) =>
  runPlan(
    [
      [0, 0, 670],
      [0, -900, 20],
    ],
    { exhaustC: F(95), exhaustHumidity: 0.7, insulation },
    (plan) => {
      plan.air.ductAirC = F(75);
      plan.air.outdoorC = F(40);
      change(plan);
    },
  );
const found = (verdict: ExpectedFinding['verdict'], measuredF: number, within: number, dewPoint: number): ExpectedFinding => ({
  verdict,
  subjects: ['run', 'machine'],
  measured: F(measuredF),
  within,
  limit: dewPoint,
});

// Dish exhaust in an attic, resistances in a row: bare 94.09 and 82.50 °F; computed, the films are from memory.
describeCheck(check, [
  {
    name: '110 °F and 80 %, bare: 94.09 °F, below the dew point of 102.4',
    plan: attic(110, 0.8, 0),
    expect: [{ ...found('watch', 94.09, 0.01, dewPointBy(F(110), 0.8)), repairs: ['insulate-run'] }],
  },
  {
    name: '95 °F and 70 %, bare: 82.50 °F, below the dew point of 83.66',
    plan: attic(95, 0.7, 0),
    expect: [
      {
        ...found('watch', 82.5, 0.01, dewPointBy(F(95), 0.7)),
        repairs: ['insulate-run'],
        says: 'The wall of the run is at 82.5 °F, 1.2 °F below the dew point of its air, and runs wet. Insulate it with ½″ or more, or give it its fall and a drain.',
      },
    ],
  },
  {
    name: '95 °F and 70 % under an inch and a half',
    plan: attic(95, 0.7, 38.1),
    expect: [found('clear', 93.57, 0.5, dewPointBy(F(95), 0.7))],
  },
  {
    name: 'saturated air: nothing keeps it dry',
    plan: attic(110, 1, 50),
    expect: [{ ...found('watch', 108.7, 0.6, dewPointBy(F(110), 1)), within: 0.6 }],
  },
  {
    name: 'the insulation is not known',
    plan: attic(110, 0.8, null),
    expect: [{ verdict: 'ask', subjects: ['run', 'machine'], measured: null, asks: 'runs.0.duct.insulation' }],
  },
  {
    name: 'the air around it is not known',
    plan: runPlan(UP, {}, ({ air }) => void (air.ductAirC = null)),
    expect: [{ verdict: 'ask', subjects: ['run', 'machine'], measured: null, asks: 'air.ductAirC' }],
  },
  {
    name: 'the air in it is not known',
    plan: runPlan(UP, { exhaustHumidity: null }),
    expect: [{ verdict: 'ask', subjects: ['run', 'machine'], measured: null, asks: 'runs.0.duct.exhaustHumidity' }],
  },
  // Out through the wall, with wind: 95 − 55 × 0.2 / 0.37 = 65.27 °F.
  {
    name: 'dry in the room, wet outside: the part outdoors counts',
    plan: outside(0),
    expect: [
      {
        ...found('watch', 95 - (55 * 0.2) / 0.37, 0.01, dewPointBy(F(95), 0.7)),
        repairs: ['insulate-run'],
        says: 'The wall of the run outdoors is at 65.3 °F, 18.4 °F below the dew point of its air, and runs wet. Insulate it with ½″ or more, or give it its fall and a drain.',
      },
    ],
  },
  { name: 'insulated against the wind', plan: outside(25.4), expect: [found('clear', 92, 1, dewPointBy(F(95), 0.7))] },
  {
    name: 'the coldest air outside is not known',
    plan: outside(0, ({ air }) => void (air.outdoorC = null)),
    expect: [{ verdict: 'ask', subjects: ['run', 'machine'], measured: null, asks: 'air.outdoorC' }],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
