import { describe, expect, it } from 'vitest';
import { rule } from '../../../../src/topics/water/figures/pressure-at-machine';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';
import { flowOf, placeStub, printedLine } from '../../../support/waterPlans';

const subjects = ['machine', 'hot-water-stub'];
const supply = (psi: number) => fromSI(toSI(psi, 'psi'), 'kPa');

/** 1 psi is 2.31 ft of water (secondary); 30 ft of the printed line take 2.7 ft, and 10 ft are climbed. */
describeFigure(rule, [
  {
    name: '20 psi, less 2.7 ft of friction and 10 ft of height',
    plan: printedLine((plan) => void (plan.supply.flowPressureKpa = supply(20))),
    expect: [{ subjects, value: toSI(20 - 12.7 / 2.31, 'psi'), within: toSI(0.03, 'psi'), notes: 'The gauge at the rinse valve' }],
  },
  {
    name: 'the height alone, where next to nothing flows',
    plan: sheetPlan(flowOf(0.001), (plan) => {
      placeStub(plan, 0, 0, 23.1 * 304.8);
      plan.supply.flowPressureKpa = supply(20);
    }),
    expect: [{ subjects, value: toSI(30, 'psi'), within: toSI(0.02, 'psi') }],
  },
  {
    name: 'not measured',
    plan: linePlan({}, (plan) => void (plan.supply.flowPressureKpa = null)),
    expect: [{ subjects: ['machine'], value: null, asks: 'supply.flowPressureKpa' }],
  },
  {
    name: 'the pipe is not known',
    plan: linePlan({}, ({ pipes }) => void (pipes.bore = null)),
    expect: [{ subjects: ['machine'], value: null, asks: 'pipes.bore' }],
  },
]);

describe('what is left', () => {
  const left = (gpm: number, dx: number) =>
    figuresOf(
      rule,
      sheetPlan(flowOf(gpm), (plan) => placeStub(plan, dx, 0, 0)),
    )[0]?.value ?? Number.NaN;
  it('is less with more flow and with a longer way', () => {
    expect(left(6, 3000)).toBeLessThan(left(4, 3000));
    expect(left(4, 9000)).toBeLessThan(left(4, 3000));
  });
});
