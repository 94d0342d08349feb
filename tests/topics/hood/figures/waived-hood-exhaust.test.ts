import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/hood/figures/waived-hood-exhaust';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { setWalls } from '../../../support/roomPlan';
import { listedSheet } from '../../../support/unhooded';

const CFM = 0.3048 ** 3 / 60;
const subjects = ['machine'];
/** EN 16282-1, quick method: 120 m³ an hour to a square metre. */
const quick = (squareFeet: number) => ({
  part: 'quick-method',
  subjects,
  value: (squareFeet * 0.3048 ** 2 * 120) / 3600,
  notes: /not judged/,
});

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
    // IMC 507.3 and 507.1, secondary: 0.70 cfm/ft², each appliance at least 100 ft².
    name: '300 ft²: 210 cfm',
    plan: linePlan({}, roomOf(300)),
    expect: [{ subjects, value: 210 * CFM, notes: /designed to take/ }, quick(300)],
  },
  { name: '80 ft² count as 100: 70 cfm', plan: linePlan({}, roomOf(80)), expect: [{ subjects, value: 70 * CFM }, quick(80)] },
  {
    name: 'a machine that wins back its heat and is not listed as condensing',
    plan: linePlan({ family: listedSheet(false) }, roomOf(300)),
    expect: [{ subjects, value: 210 * CFM }, quick(300)],
  },
  {
    name: 'its listing is not known',
    plan: linePlan({ family: listedSheet(null) }, roomOf(300)),
    expect: [{ subjects, value: null, asks: 'sheets.0.vent.listedCondensing' }, quick(300)],
  },
  { name: 'listed: it does not count', plan: linePlan({ family: 'heat-recovery' }, roomOf(300)), expect: [] },
  {
    name: 'the plan says that the room takes it',
    plan: linePlan({}, (plan) => {
      roomOf(300)(plan);
      plan.air.hoodWaived = true;
    }),
    expect: [{ subjects, value: 210 * CFM, notes: /The plan says/ }, quick(300)],
  },
  {
    name: 'the plan says that a hood is wanted',
    plan: linePlan({}, (plan) => {
      roomOf(300)(plan);
      plan.air.hoodWaived = false;
    }),
    expect: [],
  },
  { name: 'a machine with its own vent does not count', plan: linePlan({ family: 'direct-vent' }), expect: [] },
  { name: 'a machine under its hood', plan: linePlan(), expect: [] },
]);
