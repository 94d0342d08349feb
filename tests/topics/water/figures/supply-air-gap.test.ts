import type { Connection } from '../../../../src/catalog';
import { rule } from '../../../../src/topics/water/figures/supply-air-gap';
import { describeFigure } from '../../../support/figureCases';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const inch = (count: number) => count * 0.0254;
const inlet = (size: number, kind: 'hot-water' | 'cold-water' = 'hot-water'): Connection => ({
  id: kind,
  kind,
  x: 110,
  y: 60,
  z: 320,
  size,
  note: '',
});
const fed = (...connections: Connection[]) => hookedSheetPlan({ connections });
const of = (inches: number) => fed(inlet(inches * 25.4));

/** Twice the opening and an inch at least (FDA Food Code 5-202.13, read; Plan Review Guide, read), or the table of a city code (read): the larger. */
describeFigure(rule, [
  {
    name: 'the family takes its water by ¾ in: 1½ in by both',
    plan: linePlan(),
    expect: [{ subjects, value: inch(1.5), notes: /^Twice the opening, an inch at least, governs\..*three openings of a wall/ }],
  },
  { name: '⅜ in: an inch', plan: of(0.375), expect: [{ subjects, value: inch(1) }] },
  { name: '½ in: an inch', plan: of(0.5), expect: [{ subjects, value: inch(1) }] },
  {
    name: '0.6 in: 1½ in by the table, 1.2 in by twice the opening',
    plan: of(0.6),
    expect: [{ subjects, value: inch(1.5), notes: /^The city table governs/ }],
  },
  { name: '0.8 in: 2 in by the table', plan: of(0.8), expect: [{ subjects, value: inch(2), notes: /^The city table governs/ }] },
  { name: '1 in: 2 in', plan: of(1), expect: [{ subjects, value: inch(2) }] },
  { name: '1¼ in: 2½ in', plan: of(1.25), expect: [{ subjects, value: inch(2.5) }] },
  { name: 'behind a preventer as well', plan: hookedPlan({ backflow: 'preventer' }), expect: [{ subjects, value: inch(1.5) }] },
  {
    name: 'two connections bear their names',
    plan: fed(inlet(12.7), inlet(25.4, 'cold-water')),
    expect: [
      { part: 'hot-water', subjects, value: inch(1) },
      { part: 'cold-water', subjects, value: inch(2) },
    ],
  },
  { name: 'more than the formula holds', plan: of(7), expect: [{ subjects, value: null, refuses: 'openingM' }] },
  { name: 'no size stated', plan: fed(inlet(0)), expect: [] },
  { name: 'no water connection', plan: fed(), expect: [] },
]);
