import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/landing-racks';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const inch = 25.4;
const before = { verdict: 'clear', part: 'before', subjects: ['soiled-table'], measured: 3, limit: 3 } satisfies ExpectedFinding;
const after = { verdict: 'clear', part: 'after', subjects: ['clean-table'], measured: 3, limit: 3 } satisfies ExpectedFinding;

/** A bare clean table of so many inches: all of it is landing. */
const cleanOf = (inches: number, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    Object.assign(tableOf(plan, 'clean'), { legs: [{ length: inches * inch, turnDeg: 0 }], fittings: [] });
    change(plan);
  });

describeCheck(check, [
  {
    name: 'three racks on each side',
    plan: linePlan(),
    expect: [{ ...before, says: 'The soiled table has room for 3 racks on 5′ 0 ¼″; 3 are wanted.' }, after],
  },
  // source: whole racks at 20 in pitch: 36→1, 48→2, 60→3, 72→3, 84→4 · computed · exact
  ...(
    [
      [36, 1],
      [48, 2],
      [60, 3],
      [72, 3],
      [84, 4],
    ] as const
  ).map(([inches, racks]) => ({
    name: `${inches} in of table hold ${racks} at 20 in each`,
    plan: cleanOf(inches, ({ settings }) => Object.assign(settings, { rackPitch: 20 * inch, racksAfter: racks })),
    expect: [before, { ...after, measured: racks, limit: racks }],
  })),
  // source: at 20½ in pitch: 60→2 · computed · exact
  {
    name: '60 in hold only two at 20½ in each',
    plan: cleanOf(60, ({ settings }) => Object.assign(settings, { rackPitch: 20.5 * inch, racksBefore: 2, racksAfter: 2 })),
    expect: [
      { ...before, measured: 2, limit: 2 },
      { ...after, measured: 2, limit: 2 },
    ],
  },
  {
    name: 'one rack short, and room to lengthen the table',
    plan: cleanOf(48, (plan) => void (plan.things = [])),
    expect: [
      {
        ...after,
        verdict: 'watch',
        measured: 2,
        repairs: ['lengthen-table'],
        says: 'The clean table has room for 2 racks on 4′ 0″; 3 are wanted. Lengthen it, or clear it.',
      },
      before,
    ],
  },
  {
    name: 'one rack short, and shelving at the end of the table',
    plan: linePlan({}, (plan) => void (plan.settings.racksAfter = 4)),
    expect: [{ ...after, verdict: 'watch', limit: 4 }, before],
  },
  {
    name: 'what lies beyond the landing moves out with the end',
    plan: linePlan({}, (plan) => void (plan.settings.racksBefore = 4)),
    expect: [{ ...before, verdict: 'watch', limit: 4, repairs: ['lengthen-table'] }, after],
  },
  {
    name: 'no rack finds room after the machine',
    plan: cleanOf(16, (plan) => void (plan.things = [])),
    expect: [
      {
        ...after,
        verdict: 'stop',
        measured: 0,
        repairs: ['lengthen-table'],
        says: 'The clean table has room for no racks on 1′ 4″; 3 are wanted. Lengthen it, or clear it.',
      },
      before,
    ],
  },
  {
    name: 'a sink cuts the landing short',
    plan: cleanOf(84, (plan) => {
      tableOf(plan, 'clean').fittings = [
        { id: 'sink', kind: 'sink', at: 1000, length: 400, width: 400, bowlDepth: 200, spray: false, rackSlide: null, waste: null },
      ];
      plan.things = [];
    }),
    expect: [{ ...after, verdict: 'watch', measured: 1, repairs: ['lengthen-table'] }, before],
  },
  {
    name: 'none wanted after the machine',
    plan: cleanOf(16, ({ settings }) => void (settings.racksAfter = 0)),
    expect: [before, { ...after, measured: 0, limit: 0 }],
  },
  { name: 'only the table that is there', plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)), expect: [before] },
]);
