import { rule } from '../../src/figures/rules/waived-hood-exhaust';
import type { Plan } from '../../src/plan';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';
import { setWalls } from '../support/roomPlan';

const CFM = 0.3048 ** 3 / 60;
const subjects = ['machine'];

/** A room of so many square feet about the line. */
const roomOf = (squareFeet: number) => (plan: Plan) => {
  plan.hoods = [];
  const width = 8000;
  const height = (squareFeet * 304.8 ** 2) / width;
  setWalls(
    plan,
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    { wall: 'wall-0', from: 1000 },
  );
};

describeFigure(rule, [
  {
    // IMC 507.3 and 507.1 (A-H2, A-H3), secondary: 0.70 cfm/ft², each appliance at least 100 ft².
    name: '300 ft²: 210 cfm',
    plan: linePlan({}, roomOf(300)),
    expect: [{ subjects, value: 210 * CFM, notes: /designed to take/ }],
  },
  { name: '80 ft² count as 100: 70 cfm', plan: linePlan({}, roomOf(80)), expect: [{ subjects, value: 70 * CFM }] },
  {
    name: 'a machine that recovers its heat',
    plan: linePlan({ family: 'heat-recovery' }, roomOf(300)),
    expect: [{ subjects, value: 210 * CFM, notes: /recovers its heat/ }],
  },
  { name: 'a machine with its own vent does not count', plan: linePlan({ family: 'direct-vent' }), expect: [] },
  { name: 'a machine under its hood', plan: linePlan(), expect: [] },
]);
