import { rule } from '../../src/figures/rules/spray-water-per-day';
import { toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';

/** 10 CFR 431.266 from 28 January 2019: 1.28 gpm (W-EN6); usually at most 200 min a day (W-EN4): 93,440 gal in 365 days (W-T16). */
describeFigure(rule, [
  {
    name: 'the spray of the line',
    plan: linePlan(),
    expect: [{ subjects: ['pre-rinse', 'soiled-table'], value: toSI(93_440 / 365, 'gal'), notes: '200 min' }],
  },
  {
    name: 'a sink without a spray',
    plan: linePlan({}, ({ tables }) => {
      for (const fitting of tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'sink') fitting.spray = false;
    }),
    expect: [],
  },
]);
