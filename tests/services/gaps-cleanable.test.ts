import { createPlan } from '../../src/plan';
import { check } from '../../src/services/rules/gaps-cleanable';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { FREE, linePlan, tableOf } from '../support/linePlan';

const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit: true,
});
const soiled = of('soiled-table', 'clear', true);
const clean = of('clean-table', 'clear', true);

/** The right wall, moved so that this much lies behind the clean table; 5 as drawn. */
const behind = (gap: number, sealed: boolean | null) =>
  linePlan({}, (plan) => {
    for (const corner of plan.room.outline) if (corner.x > 4000) corner.x += gap - 5;
    tableOf(plan, 'clean').make.sealed = sealed;
  });

/** FDA Food Code 4-402.11 as WAC 246-215-04405 (L-24, L-LT8; read); 14 in: Grandview Heights OH 1721.12 (L-25, read). */
describeCheck(check, [
  {
    name: '5 mm behind both tables, sealed',
    plan: linePlan(),
    expect: [{ ...soiled, says: 'Behind the soiled table a gap of ³⁄₁₆″ is left to the wall, sealed.' }, clean],
  },
  {
    name: '1/32 in, not sealed',
    plan: behind(25.4 / 32, false),
    expect: [soiled, { ...clean, says: 'The clean table stands against the wall.' }],
  },
  {
    name: '0.04 in, not sealed',
    plan: behind(0.04 * 25.4, false),
    expect: [of('clean-table', 'stop', false), soiled],
  },
  {
    name: '10 in, not sealed',
    plan: behind(254, false),
    expect: [
      {
        ...of('clean-table', 'stop', false),
        says: 'Behind the clean table a gap of 10″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
      soiled,
    ],
  },
  { name: '10 in, sealed', plan: behind(254, true), expect: [soiled, clean] },
  {
    name: '10 in, not known',
    plan: behind(254, null),
    expect: [{ ...of('clean-table', 'ask', null), asks: 'tables.1.make.sealed' }, soiled],
  },
  { name: '14 in is room to clean', plan: behind(355.6, false), expect: [soiled] },
  { name: 'a table in the middle of the room', plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)), expect: [soiled] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
