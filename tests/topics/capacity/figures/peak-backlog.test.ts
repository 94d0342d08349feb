import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/peak-backlog';
import { describeFigure } from '../../../support/figureCases';
import { rushPlan } from '../../../support/rushPlans';

describeFigure(rule, [
  {
    // 90 racks an hour for an hour, washed 60 an hour: 30 wait; at 0.70 of it 48 (share from memory).
    name: '90 racks an hour, washed 60 an hour',
    plan: rushPlan(),
    expect: [
      { part: 'rated', subjects: [], value: 30, notes: 'wait for their boosters' },
      { part: 'practice', subjects: [], value: 48, notes: 'from memory' },
    ],
  },
  {
    name: '45 racks an hour',
    plan: rushPlan(({ demand }) => void (demand.peakMeals = 150)),
    expect: [
      { part: 'rated', subjects: [], value: 0 },
      { part: 'practice', subjects: [], value: 3 },
    ],
  },
  {
    name: 'the pieces a rack are not known',
    plan: rushPlan(({ demand }) => void (demand.piecesPerRack = null)),
    expect: [{ subjects: [], value: null, asks: 'demand.piecesPerRack' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
