import type { Plan } from '../../../../src/plan';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/air/checks/make-up-tempered';
import { rule as roomTemperatureSteadyFigure } from '../../../../src/topics/air/figures/room-temperature-steady';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, recoverySheet } from '../../../support/linePlan';

const F = (fahrenheit: number) => toSI(fahrenheit, 'F');
const K = (fahrenheit: number) => toSI(fahrenheit, 'deltaF');
const room = (makeUpF: number | null, roomF: number | null, makeUp: number | null = 1.35) =>
  linePlan({}, ({ air }: Plan) =>
    Object.assign(air, { makeUp, makeUpC: makeUpF === null ? null : F(makeUpF), roomC: roomF === null ? null : F(roomF) }),
  );
const row = (verdict: ExpectedFinding['verdict'], part: string, measured: number | null): ExpectedFinding => ({
  verdict,
  part,
  subjects: ['machine'],
  measured,
});
const makeUp = (verdict: ExpectedFinding['verdict'], fahrenheit: number) => row(verdict, 'make-up', F(fahrenheit));
const difference = (verdict: ExpectedFinding['verdict'], fahrenheit: number) => row(verdict, 'difference', K(fahrenheit));
const work = (verdict: ExpectedFinding['verdict'], fahrenheit: number) => row(verdict, 'work-area', F(fahrenheit));

/** What the figure says: its own test holds it against PsychroLib. */
const warmed = (verdict: ExpectedFinding['verdict'], plan: Plan): ExpectedFinding =>
  row(verdict, 'warmed', readFigure(roomTemperatureSteadyFigure, deriveScene(plan))[0]?.value ?? null);
/** A room at 80 °F whose machine of its own wins back its heat and still gives so many W, with little air. */
const warm = (sensible: number) => {
  const sheet = recoverySheet(0.45);
  if (sheet.vent.kind !== 'recovery') throw new Error('the sheet wins no heat back');
  return linePlan({ family: { ...sheet, vent: { ...sheet.vent, sensible } } }, ({ air }: Plan) =>
    Object.assign(air, { roomExhaust: 0.25, makeUp: 0.225, makeUpC: F(80), roomC: F(80) }),
  );
};

// Minn. R. 1346.0508: 50 °F; UFC 3-410-01FA 4-10.1: 65 °F, and 85 °F in the work area; NYC 508.1.1: 10 °F, 25 °F where it helps.
describeCheck(check, [
  {
    name: 'at the limits',
    plan: room(65, 75),
    expect: [makeUp('clear', 65), difference('clear', 10), work('clear', 75), warmed('clear', room(65, 75))],
  },
  {
    name: 'cooler than 65 °F, and more than 10 °F apart',
    plan: room(60, 75),
    expect: [makeUp('watch', 60), difference('watch', 15), work('clear', 75), warmed('clear', room(60, 75))],
  },
  {
    name: 'colder than 50 °F, and more than 25 °F apart',
    plan: room(45, 75),
    expect: [
      { ...makeUp('stop', 45), says: 'The make-up air comes in at 45 °F, and 50 °F is looked for. Heat it first.' },
      {
        ...difference('stop', 30),
        says: 'Make-up air and room are 30 °F apart, and 25 °F is the most even where it helps the load. Heat or cool it nearer to the room.',
      },
      work('clear', 75),
      warmed('clear', room(45, 75)),
    ],
  },
  {
    name: 'a hot room',
    plan: room(80, 86),
    expect: [work('watch', 86), makeUp('clear', 80), difference('clear', 6), warmed('clear', room(80, 86))],
  },
  {
    name: 'a room at 85 °F',
    plan: room(80, 85),
    expect: [makeUp('clear', 80), difference('clear', 5), work('clear', 85), warmed('clear', room(80, 85))],
  },
  { name: 'no make-up air: the room alone', plan: room(null, 75, 0), expect: [work('clear', 75), warmed('clear', room(null, 75, 0))] },
  {
    name: 'a machine that warms the room past 85 °F where nothing cools it',
    plan: warm(1500),
    expect: [
      {
        ...warmed('watch', warm(1500)),
        says: 'Without cooling the machines warm the room to 89.2 °F, more than 85 °F for work. Draw more air through the room, or cool it.',
      },
      makeUp('clear', 80),
      difference('clear', 0),
      work('clear', 80),
    ],
  },
  {
    name: 'one that gives less',
    plan: warm(500),
    expect: [makeUp('clear', 80), difference('clear', 0), work('clear', 80), warmed('clear', warm(500))],
  },
  {
    name: 'its temperature is not known',
    plan: room(null, 75),
    expect: [{ ...row('ask', 'make-up', null), asks: 'air.makeUpC' }, work('clear', 75)],
  },
  {
    name: 'the temperature of the room is not known',
    plan: room(65, null),
    expect: [
      { ...row('ask', 'difference', null), asks: 'air.roomC' },
      { ...row('ask', 'work-area', null), asks: 'air.roomC' },
      makeUp('clear', 65),
    ],
  },
  {
    name: 'that there is make-up air is not known: it is asked for elsewhere, its temperature here',
    plan: room(null, 75, null),
    expect: [{ ...row('ask', 'make-up', null), asks: 'air.makeUpC' }, work('clear', 75)],
  },
]);
