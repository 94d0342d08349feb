import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/water-hardness';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const hard = (hardness: number | null) => linePlan({}, ({ pipes }) => void (pipes.hardness = hardness));

describeFigure(rule, [
  { name: '6 gpg', plan: hard(toSI(6, 'gpg')), expect: [{ subjects: [], value: toSI(6, 'gpg'), notes: 'calcium carbonate' }] },
  { name: 'not tested', plan: hard(null), expect: [{ subjects: [], value: null, asks: 'pipes.hardness' }] },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
