import { check } from '../../../../src/topics/cleanliness/checks/backsplash';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const splash = (height: number) => linePlan({}, (plan) => void (tableOf(plan, 'soiled').backsplash = height));
const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit: 254,
});
const clean = of('clean-table', 'clear', 254);
const short = (measured: number): ExpectedFinding => ({
  ...of('soiled-table', 'watch', measured),
  repairs: ['raise-backsplash-soiled-table'],
});

/** 10 in: UFGS 11400N §2.4.2.4 (read); 6 in is that of other counters. */
describeCheck(check, [
  { name: '10 in', plan: splash(254), expect: [of('soiled-table', 'clear', 254), clean] },
  {
    name: '250 mm in a plan of millimetres, as the guide prints it',
    plan: linePlan({}, (plan) => {
      plan.settings.units = 'metric';
      tableOf(plan, 'soiled').backsplash = 250;
    }),
    expect: [
      { ...of('soiled-table', 'clear', 250), limit: 250 },
      { ...clean, limit: 250 },
    ],
  },
  {
    name: '6 in, as on another counter',
    plan: splash(152.4),
    expect: [{ ...short(152.4), says: 'The soiled table has a backsplash of 6″; 10″ keeps splash off the wall.' }, clean],
  },
  {
    name: 'none',
    plan: splash(0),
    expect: [{ ...short(0), says: 'The soiled table has no backsplash; 10″ keeps splash off the wall.' }, clean],
  },
  {
    name: 'a free table is no dish table',
    plan: linePlan({}, (plan) => void Object.assign(tableOf(plan, 'clean'), { place: FREE, backsplash: 0 })),
    expect: [of('soiled-table', 'clear', 254)],
  },
]);
