import { rule } from '../../../../src/topics/people/figures/reach-over-table';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, tableOf } from '../../../support/linePlan';

const depths = (soiledInches: number, cleanInches: number) =>
  linePlan({}, (plan) => {
    tableOf(plan, 'soiled').depth = soiledInches * 25.4;
    tableOf(plan, 'clean').depth = cleanInches * 25.4;
  });

/** MIL-STD-1472G, 5th percentile woman, reach of 677 mm, reprinted in NUREG-0700 Rev. 3 (read). */
describeFigure(rule, [
  {
    name: '24 in are within reach, 30 in are 85 mm beyond',
    plan: depths(30, 24),
    expect: [
      { subjects: ['soiled-table'], value: -0.085, notes: /out of reach/ },
      { subjects: ['clean-table'], value: 0.0674, notes: /^(?!.*out of reach)/ },
    ],
  },
  {
    name: 'no tables',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: [],
  },
]);
