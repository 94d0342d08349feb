import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/hood/checks/hood-exhaust-enough';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf, setWalls } from '../../../support/roomPlan';

/** A hood of 4 × 4 ft with its lip 3 ft above the deck, far from every wall, that draws so many cubic feet a minute. */
const island = (cfm: number | null, rule: Plan['codes']['exhaust'], change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    setWalls(
      plan,
      [
        [-3000, -3000],
        [9000, -3000],
        [9000, 9000],
        [-3000, 9000],
      ],
      { wall: 'wall-0', from: 1000 },
    );
    const exhaust = cfm === null ? null : toSI(cfm, 'cfm');
    Object.assign(hoodOf(plan), { x: 4318.5, y: 494, width: 1219.2, depth: 1219.2, lipHeight: 863.6 + 914.4, exhaust });
    plan.codes = { ...plan.codes, exhaust: rule };
    change(plan);
  });

const found = (verdict: ExpectedFinding['verdict'], cfm: number, limitCfm: number): ExpectedFinding => ({
  verdict,
  subjects: ['hood', 'machine'],
  measured: toSI(cfm, 'cfm'),
  limit: toSI(limitCfm, 'cfm'),
  ...(verdict === 'stop' ? { repairs: ['draw-more'] } : {}),
});
const asks = (path: string): ExpectedFinding => ({ verdict: 'ask', subjects: ['hood', 'machine'], measured: null, asks: path });
const cavity = (verdict: ExpectedFinding['verdict'], share: number): ExpectedFinding => ({
  verdict,
  part: 'cavity',
  subjects: ['hood', 'machine'],
  measured: share,
  limit: 0.1,
});
const blown = (cfm: number | null) => (plan: Plan) => Object.assign(hoodOf(plan), { cavityAir: cfm === null ? null : toSI(cfm, 'cfm') });
const noLip = (plan: Plan) => Object.assign(hoodOf(plan), { lipHeight: null });

// The printed airflows of a hood of 4 × 4 ft: IMC 400, UFC 800, VA 800 and 1600, IMC 2000 1200 and 2400 cfm.
describeCheck(check, [
  { name: 'the model code, just met', plan: island(400, 'length'), expect: [found('clear', 400, 400)] },
  {
    name: 'the model code, missed',
    plan: island(399, 'length'),
    expect: [
      {
        ...found('stop', 399, 400),
        says: 'The hood draws 399 cfm, and the model code (length of the hood) asks 400 cfm: 1 cfm too little. Give it a fan for that, and make-up air to match.',
      },
    ],
  },
  { name: 'by the face', plan: island(800, 'face'), expect: [found('clear', 800, 800)] },
  { name: 'by the area, low end', plan: island(790, 'area-least'), expect: [found('stop', 790, 800)] },
  { name: 'by the area, high end', plan: island(1590, 'area-most'), expect: [found('stop', 1590, 1600)] },
  { name: 'by the older area', plan: island(1201, 'older-area'), expect: [found('clear', 1201, 1200)] },
  { name: 'by the older edge', plan: island(2399, 'older-perimeter'), expect: [found('stop', 2399, 2400)] },
  {
    name: 'no rule chosen: enough for the code in force, less than the superseded rule that asks most',
    plan: island(1600, 'strictest'),
    expect: [
      {
        ...found('watch', 1600, 400),
        repairs: ['draw-more'],
        says: 'The hood draws 1600 cfm: enough for the model code (length of the hood) with its 400 cfm, 800 cfm less than 2400 cfm by the superseded model code of 2000 (the hood’s open edge and height). Draw more, or choose in the plan the rule that counts there.',
      },
    ],
  },
  {
    name: 'no rule chosen: less than the code in force',
    plan: island(399, 'strictest'),
    expect: [
      {
        ...found('stop', 399, 400),
        says: 'The hood draws 399 cfm, and the model code (length of the hood) asks 400 cfm: 1 cfm too little (the superseded model code of 2000 (the hood’s open edge and height) asks 2400 cfm). Give it a fan for that, and make-up air to match.',
      },
    ],
  },
  {
    name: 'no rule chosen: as much as the one that asks most',
    plan: island(2400, 'strictest'),
    expect: [
      {
        ...found('clear', 2400, 400),
        says: 'The hood draws 2400 cfm; the superseded model code of 2000 (the hood’s open edge and height) asks 2400 cfm.',
      },
    ],
  },
  // IMC 507.3.4: net exhaust; Wash. C403.7.7.1: at most 10 % into the cavity.
  {
    name: 'air blown into the hood is taken off: 444 cfm less 44 are 400',
    plan: island(444, 'length', blown(44)),
    expect: [
      {
        ...found('clear', 400, 400),
        says: 'The hood draws 400 cfm net of the 44 cfm blown into it; the model code (length of the hood) asks 400 cfm.',
      },
      cavity('clear', 44 / 444),
    ],
  },
  {
    name: 'too little net',
    plan: island(444, 'length', blown(44.4)),
    expect: [found('stop', 399.6, 400), cavity('clear', 0.1)],
  },
  {
    name: 'more than a tenth is blown into it',
    plan: island(600, 'length', blown(90)),
    expect: [
      {
        ...cavity('stop', 0.15),
        says: '15 % of what the hood draws is blown into it, more than 10 %. Bring that air into the room instead, where it carries the vapour to the hood.',
      },
      found('clear', 510, 400),
    ],
  },
  {
    name: 'more is blown into it than it draws',
    plan: island(400, 'length', blown(401)),
    expect: [{ verdict: 'ask', subjects: ['hood', 'machine'], measured: null }],
  },
  { name: 'what is blown into it is not known', plan: island(400, 'length', blown(null)), expect: [asks('hoods.0.cavityAir')] },
  { name: 'what it draws is not known', plan: island(null, 'length'), expect: [asks('hoods.0.exhaust')] },
  {
    name: 'the lip is not known, and one of the rules needs it',
    plan: island(500, 'strictest', noLip),
    expect: [asks('hoods.0.lipHeight')],
  },
  {
    name: 'the lip is not known, and the code in force is missed without it',
    plan: island(399, 'strictest', noLip),
    expect: [found('stop', 399, 400)],
  },
  { name: 'the lip is not known, and the rule does not need it', plan: island(500, 'length', noLip), expect: [found('clear', 500, 400)] },
  { name: 'no hood', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);
