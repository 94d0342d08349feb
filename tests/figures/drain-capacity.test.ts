import { rule } from '../../src/figures/rules/drain-capacity';
import type { Machine } from '../../src/plan';
import { toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { hookedPlan } from '../support/hookUpPlans';

const subjects = ['machine'];
const drainOf = (inches: number, inchesPerFoot: number): Partial<Machine['hookUp']> => ({
  drainBore: inches * 25.4,
  drainSlope: inchesPerFoot / 12,
});
/** Half full as Manning has it at n 0.015 (computed, W-DM1 to W-DM6, to three digits); full is 2.00 times as much (NSPC 2009, Appendix K, read, W-DP6). */
const flows = (gpm: number) =>
  [
    { part: 'half-full', times: 1 },
    { part: 'full', times: 2 },
  ].map(({ part, times }) => ({ part, subjects, value: toSI(gpm * times, 'gpm'), within: toSI(0.06 * times, 'gpm'), notes: /0\.015/ }));

describeFigure(rule, [
  { name: '1½ in at ¼ in/ft: 3.91 gpm half full', plan: hookedPlan(drainOf(1.5, 0.25)), expect: flows(3.91) },
  { name: '2 in at ¼ in/ft: 8.41', plan: hookedPlan(drainOf(2, 0.25)), expect: flows(8.41) },
  { name: '2 in at ⅛ in/ft: 5.95', plan: hookedPlan(drainOf(2, 0.125)), expect: flows(5.95) },
  { name: '3 in at ⅛ in/ft: 17.5', plan: hookedPlan(drainOf(3, 0.125)), expect: flows(17.5) },
  { name: '4 in at ¼ in/ft: 53.4', plan: hookedPlan(drainOf(4, 0.25)), expect: flows(53.4) },
  {
    name: 'the drain is not known',
    plan: hookedPlan({ drainBore: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'its fall is not known',
    plan: hookedPlan({ drainSlope: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  {
    name: 'it is level',
    plan: hookedPlan({ drainSlope: 0 }),
    expect: ['half-full', 'full'].map((part) => ({ part, subjects, value: null, refuses: 'slope is 0' })),
  },
]);
