import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/people/figures/work-area';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

/** 16 × 12 ft. */
const SMALL = 192 * 0.3048 ** 2;

/** 1000 ft²: ADA Standards 206.2.8, exception 1 (read); 300 ft² in a school's programme (read). */
describeFigure(rule, [
  { name: 'an empty room of 192 ft²', plan: createPlan(), expect: [{ subjects: [], value: SMALL, notes: /is not known/ }] },
  {
    name: 'a line’s room',
    plan: linePlan(),
    expect: [{ subjects: [], value: (4812.5 * 4049.5) / 1e6, notes: /its door must\. One programme .* 300 ft² \(28 m²\)\.$/ }],
  },
  {
    name: 'bounds that can be moved',
    plan: linePlan({}, ({ finish }) => void (finish.fixedWalls = false)),
    expect: [{ subjects: [], value: (4812.5 * 4049.5) / 1e6, notes: 'its bounds can be moved' }],
  },
]);
