import type { Codes } from '../../../../src/plan';
import type { Verdict } from '../../../../src/rules';
import { check } from '../../../../src/topics/water/checks/pressure-at-machine';
import { fromSI } from '../../../../src/units';
import { type CheckCase, describeCheck } from '../../../support/cases';
import { type Plate, pressurePlan, psi } from '../../../support/pressurePlans';
import { placeStub, printedLine } from '../../../support/waterPlans';

const subjects = ['machine'];

/** 30 ft of the printed line take 2.7 ft of water, 10 ft are climbed, and 2.31 ft are 1 psi: 5.5 psi. */
const printed = (atStub: number) => printedLine(({ supply }) => void (supply.flowPressureKpa = fromSI(psi(atStub), 'kPa')));
const left = (atStub: number) => ({ subjects, measured: psi(atStub - 12.7 / 2.31), within: psi(0.03) });

const WIDE: Plate = [1, 60];

/** The stub at the inlet itself: nothing is lost. */
const here = (
  name: string,
  [atStub, plate, code = 'strictest']: [atStub: number, plate: Plate, code?: Codes['rinsePressure']],
  verdict: Verdict,
  limit: number,
  says?: string,
): CheckCase => ({
  name,
  plan: pressurePlan(atStub, plate, code, (plan) => placeStub(plan, 0, 0, 0)),
  expect: [{ verdict, subjects, measured: psi(atStub), limit: psi(limit), ...(says === undefined ? {} : { says }) }],
});

/** FDA Food Code 4-501.113: within the data plate, 5 to 30 psi; older codes 15 to 25 psi. A bound itself holds. */
describeCheck(check, [
  here('19 psi', [19, WIDE], 'clear', 15, 'The rinse of the machine has 19 psi of flow pressure at the machine, within 15 psi to 25 psi.'),
  here('strictest: 15 psi', [15, WIDE], 'clear', 15),
  here('strictest: 14 psi', [14, WIDE], 'stop', 15),
  here('strictest: 25 psi', [25, WIDE], 'clear', 25),
  here('strictest: 26 psi', [26, WIDE], 'stop', 25),
  here('older codes: 26 psi', [26, WIDE, 'older'], 'stop', 25),
  here('food code: 26 psi', [26, WIDE, 'food-code'], 'clear', 30),
  here('food code: 5 psi', [5, WIDE, 'food-code'], 'clear', 5),
  here('food code: 4.9 psi', [4.9, WIDE, 'food-code'], 'stop', 5),
  here(
    'food code: 31 psi',
    [31, WIDE, 'food-code'],
    'stop',
    30,
    'The rinse of the machine has 31 psi of flow pressure at the machine and the food code allows 30 psi at most: have a pressure-reducing valve fitted before it, set to 5 psi to 30 psi.',
  ),
  here(
    'a plate narrower than the code',
    [23, [18, 22], 'food-code'],
    'stop',
    22,
    'The rinse of the machine has 23 psi of flow pressure at the machine and its data plate allows 22 psi at most: have a pressure-reducing valve fitted before it, set to 18 psi to 22 psi.',
  ),
  here('the plate is not known, and the codes forbid it', [40, null], 'stop', 25),
  {
    name: '28 psi at the stub less 5.5 psi, by the food code alone',
    plan: printedLine(({ supply, codes }) => {
      supply.flowPressureKpa = fromSI(psi(28), 'kPa');
      codes.rinsePressure = 'food-code';
    }),
    expect: [{ verdict: 'clear', ...left(28), limit: psi(25) }],
  },
  {
    name: 'the plate is not known, and the codes allow it',
    plan: pressurePlan(20, null, 'strictest', (plan) => placeStub(plan, 0, 0, 0)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'sheets.0.rinsePressure' }],
  },
  {
    name: 'not measured',
    plan: pressurePlan(20, WIDE, 'strictest', ({ supply }) => void (supply.flowPressureKpa = null)),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        asks: 'supply.flowPressureKpa',
        says: 'To know whether the flow pressure at the machine is right, say the flow pressure at the stub.',
      },
    ],
  },
  { name: '21 psi at the stub leave 15.5', plan: printed(21), expect: [{ verdict: 'clear', ...left(21), limit: psi(15) }] },
  {
    name: '20 psi at the stub leave 14.5',
    plan: printed(20),
    expect: [
      {
        verdict: 'stop',
        ...left(20),
        limit: psi(15),
        says: 'The rinse of the machine has 14.5 psi of flow pressure at the machine and its data plate asks for 15 psi: have the pressure set higher or the pipe made wider, to 15 psi to 25 psi.',
      },
    ],
  },
  { name: '29 psi at the stub leave 23.5', plan: printed(29), expect: [{ verdict: 'clear', ...left(29), limit: psi(25) }] },
  {
    name: 'a stub far above adds to it',
    plan: pressurePlan(24, [15, 25], 'strictest', (plan) => placeStub(plan, 0, 0, 2500)),
    expect: [{ verdict: 'stop', subjects, measured: psi(24) + 2.5 * 9806.65, within: psi(0.4), limit: psi(25) }],
  },
  {
    name: 'the bore is not known',
    plan: pressurePlan(20, [15, 25], 'strictest', ({ pipes }) => void (pipes.bore = null)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'pipes.bore' }],
  },
  {
    name: 'the material is not known',
    plan: pressurePlan(20, [15, 25], 'strictest', ({ pipes }) => void (pipes.material = null)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'pipes.material' }],
  },
  {
    name: 'no hot stub',
    plan: pressurePlan(20, [15, 25], 'strictest', ({ room }) => void (room.stubs = [])),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.stubs' }],
  },
]);
