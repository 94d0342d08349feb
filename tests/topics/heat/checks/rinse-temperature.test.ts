import type { DataSheet } from '../../../../src/catalog';
import type { Settings } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/rinse-temperature';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const f = (value: number) => toSI(value, 'F');
const rinses = (rinseC: number, rinseKind: DataSheet['rinseKind'] = 'dual-temperature', units: Settings['units'] = 'us') =>
  sheetPlan({ temperatures: { washC: f(165), rinseC, supplyC: 60 }, rinseKind }, ({ settings }) => void (settings.units = units));
const found = (verdict: 'clear' | 'stop', measured: number, limit: number) => ({ verdict, subjects: ['machine'], measured, limit });

/** FDA Food Code 4-501.112: 165 °F single temperature, 180 °F others, 194 °F at most. */
describeCheck(check, [
  { name: 'dual, 180 °F', plan: rinses(f(180)), expect: [found('clear', f(180), f(180))] },
  {
    name: 'dual, 178 °F',
    plan: rinses(f(178)),
    expect: [
      {
        ...found('stop', f(178), f(180)),
        says: 'The final rinse of the machine is at least 178 °F by its data sheet and the food code asks for 180 °F: it does not sanitise; set the booster higher, or take another machine.',
      },
    ],
  },
  { name: 'single, 165 °F', plan: rinses(f(165), 'single-temperature'), expect: [found('clear', f(165), f(165))] },
  { name: 'single, 164 °F', plan: rinses(f(164), 'single-temperature'), expect: [found('stop', f(164), f(165))] },
  { name: '194 °F', plan: rinses(f(194)), expect: [found('clear', f(194), f(194))] },
  {
    name: '195 °F',
    plan: rinses(f(195)),
    expect: [
      {
        ...found('stop', f(195), f(194)),
        says: 'The final rinse of the machine is at least 195 °F by its data sheet and the food code allows 194 °F at most: it turns to steam on the way; set the booster lower.',
      },
    ],
  },
  // The code prints 82 °C beside 180 °F (82.2 °C).
  { name: 'in °C, 82', plan: rinses(82, 'dual-temperature', 'metric'), expect: [found('clear', 82, 82)] },
  { name: 'in °F, 82 °C', plan: rinses(82), expect: [found('stop', 82, f(180))] },
  { name: 'in °C, 81', plan: rinses(81, 'dual-temperature', 'metric'), expect: [found('stop', 81, 82)] },
  { name: 'chemicals', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
]);
