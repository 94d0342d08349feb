import type { Plan } from '../../../../src/plan';
import type { Verdict } from '../../../../src/rules';
import { check } from '../../../../src/topics/water/checks/rinse-pressure';
import { fromSI } from '../../../../src/units';
import { type CheckCase, describeCheck } from '../../../support/cases';
import { type Plate, pressurePlan, psi } from '../../../support/pressurePlans';
import { printedLine } from '../../../support/waterPlans';

const subjects = ['machine'];
const WIDE: Plate = [1, 60];
const at = (name: string, plan: CheckCase['plan'], verdict: Verdict, measured: number, limit: number, says?: string): CheckCase => ({
  name,
  plan,
  expect: [{ verdict, subjects, measured: psi(measured), limit: psi(limit), ...(says === undefined ? {} : { says }) }],
});

/** Nobody knows what the line takes. */
const noBore = ({ pipes }: Plan) => void (pipes.bore = null);
const printed = (atStub: number) => printedLine(({ supply }) => void (supply.flowPressureKpa = fromSI(psi(atStub), 'kPa')));

/**
 * FDA Food Code 4-501.113: within the data plate, 5 to 30 psi at the rinse valve; older codes 15 to 25 psi. The
 * stub is only watched, and only while the pressure at the machine is not known.
 */
describeCheck(check, [
  { name: '28 psi at the stub, of which the line takes 5.5: judged at the machine', plan: printed(28), expect: [] },
  { name: '34 psi at the stub, of which the line takes 5.5: judged at the machine', plan: printed(34), expect: [] },
  at(
    '20 psi, the bore not known',
    pressurePlan(20, WIDE, 'strictest', noBore),
    'clear',
    20,
    15,
    'The rinse of the machine has 20 psi of flow pressure at the stub, within 15 psi to 25 psi; what its line leaves at the machine counts.',
  ),
  at(
    '14 psi',
    pressurePlan(14, WIDE, 'strictest', noBore),
    'watch',
    14,
    15,
    'The rinse of the machine has 14 psi of flow pressure at the stub and the older codes ask for 15 psi at the rinse valve: find out what the line takes, and hold what is left against 15 psi to 25 psi.',
  ),
  at('28 psi', pressurePlan(28, WIDE, 'strictest', noBore), 'watch', 28, 25),
  at(
    'food code: 31 psi',
    pressurePlan(31, WIDE, 'food-code', noBore),
    'watch',
    31,
    30,
    'The rinse of the machine has 31 psi of flow pressure at the stub and the food code allows 30 psi at most at the rinse valve: find out what the line takes, and hold what is left against 5 psi to 30 psi.',
  ),
  at('the plate is not known: the line asks for it', pressurePlan(20, null, 'strictest', noBore), 'clear', 20, 15),
  at(
    'no hot stub',
    pressurePlan(40, WIDE, 'strictest', ({ room }) => void (room.stubs = [])),
    'watch',
    40,
    25,
  ),
  { name: 'chemicals without a plate', plan: pressurePlan(40, null, 'strictest', noBore, 'chemical'), expect: [] },
  {
    name: 'not measured: asked for once, at the machine',
    plan: pressurePlan(20, WIDE, 'strictest', ({ supply }) => void (supply.flowPressureKpa = null)),
    expect: [],
  },
]);
