import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/air/figures/machine-heat-gain';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, ownDataSheet, recoverySheet } from '../../../support/linePlan';

/** A cycle of 72 s: 50 racks an hour. With 20 pieces a rack, 1000 dishes an hour. */
const sheet = ownDataSheet({ cycle: { washS: 45, rinseS: 12, dwellS: 5, loadS: 10 } });
const chemical = ownDataSheet({ cycle: sheet.cycle, sanitizing: 'chemical' });
const pieces =
  (piecesPerRack: number | null, change: (plan: Plan) => void = () => {}) =>
  (plan: Plan) => {
    plan.demand.piecesPerRack = piecesPerRack;
    change(plan);
  };
const bare = (plan: Plan) => {
  plan.hoods = [];
  return plan;
};
const table = (heatTable: Plan['codes']['heatTable']) => (plan: Plan) => void (plan.codes = { ...plan.codes, heatTable });
/** W of a Btu/h, by definition of the calorie of the tables. */
const BTU = 1055.05585262 / 3600;
const statedSheet = (sensible: number | null, latent: number | null) => {
  const own = recoverySheet(0.45, { cycle: sheet.cycle });
  return own.vent.kind === 'recovery' ? { ...own, vent: { ...own.vent, sensible, latent } } : own;
};
const expected = (sensible: number, latent: number, notes: RegExp) => [
  { part: 'sensible', subjects: ['machine'], value: sensible, notes },
  { part: 'latent', subjects: ['machine'], value: latent, notes },
];
const missing = (asks: string) => ['sensible', 'latent'].map((part) => ({ part, subjects: ['machine'], value: null, asks }));

describeFigure(rule, [
  {
    // ASHRAE Fundamentals 2001 (SI), ch. 29 Table 5 (read): 560 + 1230 W for 1000 dishes an hour.
    name: 'hot water, nothing takes the vapour',
    plan: linePlan({ family: sheet }, pieces(20, bare)),
    expect: expected(560, 1230, /nothing takes/),
  },
  {
    name: 'chemical, nothing takes the vapour: 500 + 1100 W',
    plan: linePlan({ family: chemical }, pieces(20, bare)),
    expect: expected(500, 1100, /nothing takes/),
  },
  {
    name: 'under a hood the sensible heat alone is left',
    plan: linePlan({ family: sheet }, pieces(20)),
    expect: expected(560, 0, /hood/),
  },
  {
    name: 'a hood that draws no air takes nothing',
    plan: linePlan(
      { family: sheet },
      pieces(20, ({ hoods }) => {
        for (const hood of hoods) hood.exhaust = 0;
      }),
    ),
    expect: expected(560, 1230, /nothing takes/),
  },
  {
    name: 'a machine that wins back its heat, its sheet silent: the row without recovery, an upper bound',
    plan: linePlan(
      {
        family: ownDataSheet({
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
    // Minn. R. 1346.0507: the sensible and latent heat of the machine itself count.
    name: 'a machine that wins back its heat and states what it still gives: pieces a rack are not asked',
    plan: linePlan({ family: statedSheet(1500, 700) }, pieces(null)),
    expect: expected(1500, 700, /data sheet states/),
  },
  {
    // Trade fact, common practice: fed with hot water it wins nothing back (supply-temperature says so).
    name: 'the same fed with hot water: the vapour of the row without recovery, the dry heat of the sheet, which is more',
    plan: linePlan(
      { family: statedSheet(1500, 700) },
      pieces(20, ({ machines }) => {
        for (const { hookUp } of machines) hookUp.water = 'hot';
      }),
    ),
    expect: [
      { part: 'sensible', subjects: ['machine'], value: 1500, notes: /no less than the data sheet states/ },
      { part: 'latent', subjects: ['machine'], value: 1230, notes: /wins nothing back/ },
    ],
  },
  {
    name: 'one of the two stated is not enough',
    plan: linePlan({ family: statedSheet(1500, null) }, pieces(null)),
    expect: missing('demand.piecesPerRack'),
  },
  {
    // ASHRAE Fundamentals 2009–2017, ch. 18 Table 5E (memory): 1980 and 2790 Btu/h whatever it washes.
    name: 'the later table where the plan goes by it',
    plan: linePlan(
      { family: sheet },
      pieces(20, (plan) => table('2009-2017')(bare(plan))),
    ),
    expect: expected(1980 * BTU, 2790 * BTU, /2009–2017, which was not read/),
  },
  {
    name: 'the later table, under a hood: it radiates nothing',
    plan: linePlan({ family: sheet }, pieces(20, table('2009-2017'))),
    expect: expected(0, 0, /hood/),
  },
  {
    name: 'the older table where the plan goes by it',
    plan: linePlan(
      { family: sheet },
      pieces(20, (plan) => table('2001')(bare(plan))),
    ),
    expect: expected(560, 1230, /table of 2001/),
  },
  {
    name: 'no table chosen: the row that gives more in all, 475 + 1045 W against 580 + 818',
    plan: linePlan({ family: chemical }, pieces(10, bare)),
    expect: expected(475, 1045, /table of 2001/),
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
