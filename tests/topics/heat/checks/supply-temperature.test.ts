import type { DataSheet } from '../../../../src/catalog';
import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/supply-temperature';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const f = (value: number) => toSI(value, 'F');
const subjects = ['machine'];
const fed = (hotF: number, leastF: number, sheet: Partial<DataSheet> = {}): Plan =>
  sheetPlan(
    { temperatures: { washC: f(150), rinseC: f(180), supplyC: f(leastF) }, ...sheet },
    ({ supply }) => void (supply.hotWaterC = f(hotF)),
  );
const connect = (plan: Plan, water: 'hot' | 'cold' | null) => {
  for (const machine of plan.machines) machine.hookUp.water = water;
};
const feed = (measured: 'hot' | 'cold') => ({ verdict: 'clear' as const, part: 'feed', subjects, measured, limit: measured });
const warm = (verdict: 'clear' | 'watch' | 'stop', measured: number, limit: number) => ({
  verdict,
  part: 'temperature',
  subjects,
  measured: f(measured),
  limit: f(limit),
});

/** UFC 4-750-01NF 6-2.3.2: supply of 140 °F; the least of each machine stands on its data sheet. A cold-fed machine on hot water wins nothing back: common practice. */
describeCheck(check, [
  { name: '140 °F where the sheet asks for it', plan: fed(140, 140), expect: [feed('hot'), warm('clear', 140, 140)] },
  {
    name: '120 °F where the sheet asks for 140 °F',
    plan: fed(120, 140),
    expect: [
      {
        ...warm('stop', 120, 140),
        says: 'Hot water comes at 120 °F and the machine needs 140 °F by its data sheet: have the water made hotter, or the rinse waits for the booster.',
      },
      feed('hot'),
    ],
  },
  {
    name: '120 °F where the sheet is content with 110 °F',
    plan: fed(120, 110),
    expect: [
      {
        ...warm('watch', 120, 110),
        says: 'Hot water comes at 120 °F, enough for the data sheet of the machine; design guides ask for 140 °F, with which the booster has less to do.',
      },
      feed('hot'),
    ],
  },
  { name: 'chemicals at 120 °F', plan: fed(120, 120, { sanitizing: 'chemical' }), expect: [feed('hot'), warm('clear', 120, 120)] },
  {
    name: 'chemicals at 110 °F',
    plan: fed(110, 120, { sanitizing: 'chemical' }),
    expect: [
      {
        ...warm('stop', 110, 120),
        says: 'Hot water comes at 110 °F and the machine needs 120 °F by its data sheet: have the water made hotter, or wash and sanitiser do not work as they should.',
      },
      feed('hot'),
    ],
  },
  {
    name: 'the hot water is not known',
    plan: linePlan({}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ verdict: 'ask', part: 'temperature', subjects, measured: null, asks: 'supply.hotWaterC' }, feed('hot')],
  },
  {
    name: 'a cold-fed machine on hot water',
    plan: linePlan({ family: 'heat-recovery' }, (plan) => connect(plan, 'hot')),
    expect: [
      {
        verdict: 'stop',
        part: 'feed',
        subjects,
        measured: 'hot',
        limit: 'cold',
        repairs: ['connect-to-cold'],
        says: 'The machine is made for cold water and is connected to hot: it wins back no heat, and its vapour goes into the room. Connect it to cold water.',
      },
      { verdict: 'clear', part: 'temperature', subjects, measured: 12, limit: 4.44 },
    ],
  },
  {
    name: 'a hot-fed machine on cold water',
    plan: linePlan({}, (plan) => connect(plan, 'cold')),
    expect: [
      { verdict: 'stop', part: 'feed', subjects, measured: 'cold', limit: 'hot', repairs: ['connect-to-hot'] },
      { verdict: 'clear', part: 'temperature', subjects, measured: 60, limit: 60 },
    ],
  },
  {
    name: 'its connection is not known',
    plan: linePlan({}, (plan) => connect(plan, null)),
    expect: [
      { verdict: 'ask', part: 'feed', subjects, measured: null, asks: 'machines.0.hookUp.water' },
      { verdict: 'clear', part: 'temperature', subjects, measured: 60 },
    ],
  },
  {
    name: 'icy water in a cold-fed machine',
    plan: linePlan({ family: 'heat-recovery' }, ({ supply }) => void (supply.coldWaterC = 3)),
    expect: [{ verdict: 'stop', part: 'temperature', subjects, measured: 3, limit: 4.44 }, feed('cold')],
  },
]);
