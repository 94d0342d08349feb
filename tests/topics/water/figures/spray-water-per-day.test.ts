import { rule } from '../../../../src/topics/water/figures/spray-water-per-day';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['pre-rinse', 'soiled-table'];
const of = (part: string, gpm: number, notes: string) => ({ part, subjects, value: toSI(gpm * 200, 'gal'), notes });

/** 10 CFR 431.266 from 28 January 2019: 1.28, 1.20 and 1.00 gpm; before, 1.6; usually at most 200 min a day. */
describeFigure(rule, [
  {
    name: 'the spray of the line, by the class of its valve',
    plan: linePlan(),
    expect: [
      of('strong', 1.28, '200 min'),
      of('middle', 1.2, '8.0 ozf'),
      of('light', 1, '5.0 ozf'),
      of('older', 1.6, '2006 to January 2019'),
    ],
  },
  {
    name: 'a sink without a spray',
    plan: linePlan({}, ({ tables }) => {
      for (const fitting of tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'sink') fitting.spray = false;
    }),
    expect: [],
  },
]);
