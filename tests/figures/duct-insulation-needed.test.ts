import { expect, it } from 'vitest';
import { readingsOf } from '../../src/figures';
import { rule } from '../../src/figures/rules/duct-insulation-needed';
import { deriveScene } from '../../src/scene';
import { toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';
import { runOf } from '../support/roomPlan';
import { runPlan } from '../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;
const F = (fahrenheit: number) => toSI(fahrenheit, 'F');
const duct = (exhaustF: number, exhaustHumidity: number | null, aroundF: number, insulation = 0) =>
  runPlan(UP, { exhaustC: F(exhaustF), exhaustHumidity, insulation }, (plan) => {
    runOf(plan).diameter = 304.8;
    plan.air.ductAirC = F(aroundF);
  });

describeFigure(rule, [
  // A-K6 about a cylinder, computed: flat, R 0.962 h·ft²·°F/Btu of k 0.036 are 6.1 mm; the round shell takes a little more.
  { name: '110 °F and 80 % in 40 °F', plan: duct(110, 0.8, 40), expect: [{ subjects, value: 0.0064, within: 1e-4 }] },
  // A-K7, computed: in a ceiling of 75 °F the bare wall of 95 °F and 70 % stays dry.
  { name: '95 °F and 70 % in 75 °F needs none', plan: duct(95, 0.7, 75), expect: [{ subjects, value: 0 }] },
  { name: 'saturated air: none is enough', plan: duct(110, 1, 40), expect: [{ subjects, value: null, refuses: 'is enough' }] },
  { name: 'humidity not known', plan: duct(110, null, 40), expect: [{ subjects, value: null, asks: 'runs.0.duct.exhaustHumidity' }] },
  { name: 'no run', plan: linePlan(), expect: [] },
]);

it('so much insulation brings the wall to the dew point', () => {
  const needed = readingsOf(deriveScene(duct(110, 0.8, 40)), 'duct-insulation-needed')[0]?.value ?? Number.NaN;
  const scene = deriveScene(duct(110, 0.8, 40, needed * 1000));
  const of = (id: string) => readingsOf(scene, id)[0]?.value ?? Number.NaN;
  expect(of('duct-wall-temperature')).toBeCloseTo(of('duct-dew-point'), 6);
});
