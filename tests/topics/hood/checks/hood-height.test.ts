import { check } from '../../../../src/topics/hood/checks/hood-height';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';
import { hoodOf, setOverhang } from '../../../support/roomPlan';

/** The deck is at 863.6 (34 in): 4 ft above it is 2082.8, and heads need 80 in, 2032. */
const subjects = ['hood', 'machine'];
const lip = { part: 'lip', subjects, limit: 1219.2 } as const;
const head = { part: 'head', subjects, limit: 2032 } as const;

const hungAt = (lipHeight: number | null, height = 450) => linePlan({}, (plan) => Object.assign(hoodOf(plan), { lipHeight, height }));

const both = (lipMeasured: number, headMeasured: number): ExpectedFinding[] => [
  { ...lip, verdict: 'clear', measured: lipMeasured },
  { ...head, verdict: 'clear', measured: headMeasured },
];

describeCheck(check, [
  {
    name: 'as the line has it',
    plan: linePlan(),
    expect: [
      {
        ...lip,
        verdict: 'clear',
        measured: 1200,
        says: 'The lip of the hood is 3′ 11 ¼″ above the deck of the machine; 4′ 0″ at most.',
      },
      {
        ...head,
        verdict: 'clear',
        measured: 2063.6,
        says: 'The lip of the hood is 6′ 9 ¼″ above the floor, clear of heads; 6′ 8″ at least.',
      },
    ],
  },
  { name: 'just 4 ft above the deck', plan: hungAt(2082.8), expect: both(1219.2, 2082.8) },
  {
    name: 'a little more',
    plan: hungAt(2083.8),
    expect: [
      { ...lip, verdict: 'stop', measured: 1220.2, repairs: ['hang-hood'] },
      { ...head, verdict: 'clear', measured: 2083.8 },
    ],
  },
  {
    name: '4 ft 6 in above the deck',
    plan: hungAt(2235.2),
    expect: [
      {
        ...lip,
        verdict: 'stop',
        measured: 1371.6,
        repairs: ['hang-hood'],
        says: 'The lip of the hood is 4′ 6″ above the deck of the machine, 6″ too high. Lower it.',
      },
      { ...head, verdict: 'clear', measured: 2235.2 },
    ],
  },
  { name: 'just clear of heads', plan: hungAt(2032), expect: both(1168.4, 2032) },
  {
    name: 'too low for heads',
    plan: hungAt(1981.2),
    expect: [
      {
        ...head,
        verdict: 'watch',
        measured: 1981.2,
        repairs: ['hang-hood'],
        says: 'The lip of the hood is 6′ 6″ above the floor where the operator stands, 2″ too low for heads. Raise it, or pad its edge.',
      },
      { ...lip, verdict: 'clear', measured: 1117.6 },
    ],
  },
  {
    name: 'too low for heads under a ceiling that leaves no room to raise it',
    plan: linePlan({}, (plan) => {
      Object.assign(hoodOf(plan), { lipHeight: 1981.2, height: 450 });
      plan.room.ceilingHeight = 2440;
    }),
    expect: [
      { ...head, verdict: 'watch', measured: 1981.2 },
      { ...lip, verdict: 'clear', measured: 1117.6 },
    ],
  },
  {
    name: 'the operator does not stand under it',
    plan: linePlan({}, (plan) => {
      setOverhang(plan, -300, 105, -300, 118);
      hoodOf(plan).lipHeight = 1981.2;
    }),
    expect: [{ ...lip, verdict: 'clear', measured: 1117.6 }],
  },
  {
    name: 'a higher deck carries the hood higher',
    plan: linePlan({ family: ownDataSheet({ deckHeight: 900 }) }, (plan) => Object.assign(hoodOf(plan), { lipHeight: 2119.2 })),
    expect: both(1219.2, 2119.2),
  },
  {
    name: 'the lip is not known',
    plan: hungAt(null),
    expect: [
      {
        ...lip,
        verdict: 'ask',
        measured: null,
        asks: 'hoods.0.lipHeight',
        says: 'The height of the hood’s lip is not known. It may hang at most 4′ 0″ above the deck.',
      },
    ],
  },
  {
    name: 'no hood: said elsewhere',
    plan: linePlan({}, (plan) => {
      plan.hoods = [];
    }),
    expect: [],
  },
  { name: 'a machine that needs none', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);
