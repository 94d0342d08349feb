import { rule } from '../../src/figures/rules/machine-heat-gain';
import type { Plan } from '../../src/plan';
import { describeFigure } from '../support/figureCases';
import { linePlan, ownSheet } from '../support/linePlan';

/** A cycle of 72 s: 50 racks an hour. With 20 pieces a rack, 1000 dishes an hour. */
const sheet = ownSheet({ cycle: { washS: 45, rinseS: 12, dwellS: 5, loadS: 10 } });
const chemical = ownSheet({ cycle: sheet.cycle, sanitizing: 'chemical' });
const pieces =
  (piecesPerRack: number | null, change: (plan: Plan) => void = () => {}) =>
  (plan: Plan) => {
    plan.demand.piecesPerRack = piecesPerRack;
    change(plan);
  };
const bare = (plan: Plan) => {
  plan.hoods = [];
};
const expected = (sensible: number, latent: number, notes: RegExp) => [
  { part: 'sensible', subjects: ['machine'], value: sensible, notes },
  { part: 'latent', subjects: ['machine'], value: latent, notes },
];
const missing = (asks: string) => ['sensible', 'latent'].map((part) => ({ part, subjects: ['machine'], value: null, asks }));

describeFigure(rule, [
  {
    // ASHRAE Fundamentals 2001 (SI), ch. 29 Table 5 (A-HG1 to A-HG4, read): 560 + 1230 W for 1000 dishes an hour (A-HG5).
    name: 'hot water, nothing takes the vapour',
    plan: linePlan({ family: sheet }, pieces(20, bare)),
    expect: expected(560, 1230, /nothing takes/),
  },
  {
    name: 'chemical, nothing takes the vapour: 500 + 1100 W (A-HG5)',
    plan: linePlan({ family: chemical }, pieces(20, bare)),
    expect: expected(500, 1100, /nothing takes/),
  },
  {
    name: 'under a hood the sensible heat alone is left',
    plan: linePlan({ family: sheet }, pieces(20)),
    expect: expected(560, 0, /hood/),
  },
  {
    name: 'a machine that recovers its heat counts in full (Minn. R. 1346.0507, A-H17)',
    plan: linePlan(
      {
        family: ownSheet({
          cycle: sheet.cycle,
          vent: {
            kind: 'recovery',
            recovered: null,
            listedCondensing: null,
            sensible: null,
            latent: null,
            box: { x: 0, y: 0, width: 500, depth: 300, zFrom: 1500, zTo: 1900 },
          },
        }),
      },
      pieces(20),
    ),
    expect: expected(560, 1230, /most that it can be/),
  },
  {
    name: 'fewer dishes than the table holds: as its least, 950 an hour',
    plan: linePlan({ family: sheet }, pieces(10, bare)),
    expect: expected(532, 1168.5, /counted as that many/),
  },
  {
    name: 'more dishes than the table holds',
    plan: linePlan({ family: sheet }, pieces(41)),
    expect: ['sensible', 'latent'].map((part) => ({ part, subjects: ['machine'], value: null, refuses: 'dishesPerHour is 2050' })),
  },
  { name: 'pieces a rack not known', plan: linePlan({ family: sheet }, pieces(null)), expect: missing('demand.piecesPerRack') },
]);
