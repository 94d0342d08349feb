import { describe, expect, it } from 'vitest';
import { rule } from '../../../../src/topics/water/figures/water-line-loss';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { cycleOf, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';
import { printedLine } from '../../../support/waterPlans';

const subjects = ['machine', 'hot-water-stub'];

/** Engineering ToolBox, Hazen-Williams: 200 gpm, 3.048 in, C 140, 30 ft: 2.7 ft of water (read, 1 %). */
describeFigure(rule, [
  {
    name: 'the printed example',
    plan: printedLine(),
    expect: [{ subjects, value: toSI(2.7, 'ftH2O'), within: toSI(0.027, 'ftH2O'), notes: 'bends, valves and a hose come on top' }],
  },
  {
    name: 'the bore is not known',
    plan: linePlan({}, ({ pipes }) => void (pipes.bore = null)),
    expect: [{ subjects: ['machine'], value: null, asks: 'pipes.bore' }],
  },
  {
    name: 'the material is not known',
    plan: linePlan({}, ({ pipes }) => void (pipes.material = null)),
    expect: [{ subjects: ['machine'], value: null, asks: 'pipes.material' }],
  },
  {
    name: 'a sheet that states no time for the rinse',
    plan: sheetPlan({ cycle: cycleOf(55, 5) }),
    expect: [{ subjects, value: null, refuses: 'rinseS is 0' }],
  },
  {
    name: 'a pipe too thin for it',
    plan: linePlan({}, ({ pipes }) => void (pipes.bore = 5)),
    expect: [{ subjects, value: null, refuses: 'boreM is 0.005' }],
  },
]);

describe('it grows', () => {
  const lossOf = (material: 'copper' | 'plastic' | 'new-steel' | 'old-steel', bore = 77.4) =>
    figuresOf(
      rule,
      printedLine(({ pipes }) => void Object.assign(pipes, { material, bore })),
    )[0]?.value ?? Number.NaN;
  it('with the roughness of the pipe', () => {
    expect(lossOf('copper')).toBe(lossOf('plastic'));
    expect(lossOf('new-steel')).toBeGreaterThan(lossOf('copper'));
    expect(lossOf('old-steel')).toBeGreaterThan(lossOf('new-steel'));
  });
  it('with a narrower bore', () => expect(lossOf('copper', 60)).toBeGreaterThan(lossOf('copper', 80)));
});
