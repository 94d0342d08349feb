import type { Verdict } from '../../src/checks';
import { check } from '../../src/services/rules/rinse-pressure';
import { type CheckCase, describeCheck } from '../support/cases';
import { type Plate, pressurePlan, psi } from '../support/pressurePlans';

const subjects = ['machine'];
const WIDE: Plate = [1, 60];
const at = (name: string, plan: CheckCase['plan'], verdict: Verdict, measured: number, limit: number, says?: string): CheckCase => ({
  name,
  plan,
  expect: [{ verdict, subjects, measured: psi(measured), limit: psi(limit), ...(says === undefined ? {} : { says }) }],
});

/** FDA Food Code 4-501.113: within the data plate, 5 to 30 psi (W-F4); older codes 15 to 25 psi (W-F5). A bound itself holds. */
describeCheck(check, [
  at(
    '20 psi',
    pressurePlan(19, WIDE),
    'clear',
    19,
    15,
    'The rinse of the machine has 19 psi of flow pressure at the stub, within 15 psi to 25 psi.',
  ),
  at('strictest: 15 psi', pressurePlan(15, WIDE), 'clear', 15, 15),
  at(
    'strictest: 14 psi',
    pressurePlan(14, WIDE),
    'stop',
    14,
    15,
    'The rinse of the machine has 14 psi of flow pressure at the stub and the older codes ask for 15 psi: have the pressure set higher or the pipe made wider, to 15 psi to 25 psi.',
  ),
  at('strictest: 25 psi', pressurePlan(25, WIDE), 'clear', 25, 25),
  at('strictest: 26 psi', pressurePlan(26, WIDE), 'stop', 26, 25),
  at('older codes: 26 psi', pressurePlan(26, WIDE, 'older'), 'stop', 26, 25),
  at('food code: 26 psi', pressurePlan(26, WIDE, 'food-code'), 'clear', 26, 30),
  at('food code: 5 psi', pressurePlan(5, WIDE, 'food-code'), 'clear', 5, 5),
  at('food code: 4.9 psi', pressurePlan(4.9, WIDE, 'food-code'), 'stop', 4.9, 5),
  at(
    'food code: 31 psi',
    pressurePlan(31, WIDE, 'food-code'),
    'stop',
    31,
    30,
    'The rinse of the machine has 31 psi of flow pressure at the stub and the food code allows 30 psi at most: have a pressure-reducing valve fitted before it, set to 5 psi to 30 psi.',
  ),
  at(
    'a plate narrower than the code',
    pressurePlan(23, [18, 22], 'food-code'),
    'stop',
    23,
    22,
    'The rinse of the machine has 23 psi of flow pressure at the stub and its data plate allows 22 psi at most: have a pressure-reducing valve fitted before it, set to 18 psi to 22 psi.',
  ),
  at(
    'chemicals: the plate alone',
    pressurePlan(40, WIDE, 'strictest', () => {}, 'chemical'),
    'clear',
    40,
    60,
  ),
  { name: 'chemicals without a plate', plan: pressurePlan(40, null, 'strictest', () => {}, 'chemical'), expect: [] },
  {
    name: 'the plate is not known, and the codes allow it',
    plan: pressurePlan(20, null),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'sheets.0.rinsePressure' }],
  },
  at('the plate is not known, and the codes forbid it', pressurePlan(40, null), 'stop', 40, 25),
  {
    name: 'not measured',
    plan: pressurePlan(20, WIDE, 'strictest', ({ supply }) => void (supply.flowPressureKpa = null)),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        asks: 'supply.flowPressureKpa',
        says: 'To know whether the flow pressure at the stub is right, say the flow pressure at the stub.',
      },
    ],
  },
]);
