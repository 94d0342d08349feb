import { rule } from '../../../../src/topics/drain/figures/waste-air-gap';
import { describeFigure } from '../../../support/figureCases';
import { hookedPlan, hookUp } from '../../../support/hookUpPlans';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

const drain = (id: string, inches: number) => ({ id, kind: 'drain', x: 110, y: 60, z: 190, size: inches * 25.4, note: '' }) as const;
const withDrains = (...connections: ReturnType<typeof drain>[]) =>
  linePlan({ family: ownDataSheet({ connections }) }, (plan) => hookUp(plan, { drainBore: null }));

/** Chicago plumbing code: twice the waste pipe; 1½ in give 3 in (read). */
describeFigure(rule, [
  { name: '1½ in: 3 in', plan: withDrains(drain('drain', 1.5)), expect: [{ subjects: ['machine'], value: 0.0762 }] },
  { name: 'the family has 2 in: 4 in', plan: linePlan(), expect: [{ subjects: ['machine'], value: 0.1016 }] },
  { name: 'a waste pipe of 3 in: 6 in', plan: hookedPlan({ drainBore: 76.2 }), expect: [{ subjects: ['machine'], value: 0.1524 }] },
  {
    name: 'a drain of 4 in, connected directly, says nothing of it',
    plan: hookedPlan({ drainBore: 101.6, waste: 'direct' }),
    expect: [{ subjects: ['machine'], value: 0.1016 }],
  },
  {
    name: 'two drains bear their names',
    plan: withDrains(drain('tank', 1.5), drain('scrap', 2)),
    expect: [
      { part: 'tank', subjects: ['machine'], value: 0.0762 },
      { part: 'scrap', subjects: ['machine'], value: 0.1016 },
    ],
  },
  {
    name: 'more than the formula holds',
    plan: withDrains(drain('drain', 10)),
    expect: [{ subjects: ['machine'], value: null, refuses: 'pipeM' }],
  },
  { name: 'no size stated', plan: withDrains(drain('drain', 0)), expect: [] },
]);
