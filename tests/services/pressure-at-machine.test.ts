import { check } from '../../src/services/rules/pressure-at-machine';
import { fromSI } from '../../src/units';
import { describeCheck } from '../support/cases';
import { pressurePlan, psi } from '../support/pressurePlans';
import { placeStub, printedLine } from '../support/waterPlans';

const subjects = ['machine'];

/** 30 ft of the printed line take 2.7 ft of water (W-P5), 10 ft are climbed, and 2.31 ft are 1 psi (W-P7): 5.5 psi. */
const printed = (atStub: number) => printedLine(({ supply }) => void (supply.flowPressureKpa = fromSI(psi(atStub), 'kPa')));
const left = (atStub: number) => ({ subjects, measured: psi(atStub - 12.7 / 2.31), within: psi(0.03) });

describeCheck(check, [
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
