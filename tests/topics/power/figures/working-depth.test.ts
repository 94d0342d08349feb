import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/power/figures/working-depth';
import { MM_PER_FOOT } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['panel'];
const panelPlan = (voltage: number | null, toGroundV: number | null = null): Plan =>
  linePlan({}, ({ supply, things }) => {
    Object.assign(supply, { voltage, toGroundV });
    things.push({
      id: 'panel',
      kind: 'panel-board',
      name: '',
      x: 30_000,
      y: 30_000,
      rotationDeg: 0,
      width: 500,
      depth: 150,
      height: 1900,
      ware: 'none',
      clearBelow: null,
      sealed: null,
      basins: null,
    });
  });
/** The words of the rule: grounded, not earthed. */
const notes = /^(Nothing live and nothing grounded|Something grounded|Live parts).*(star point).*licensed electrician decides/;
const depths = (...feet: number[]) =>
  ['A', 'B', 'C'].map((part, i) => ({ part, subjects, value: ((feet[i] ?? 0) * MM_PER_FOOT) / 1000, notes }));

const ASK = { subjects, value: null, asks: 'supply.toGroundV', notes };
const [three] = depths(3);

/** 29 CFR 1910.303(g)(1), Table S-1, as WAC 296-24-95703 copies it; volts to ground by a trade article. */
describeFigure(rule, [
  { name: '120 V: 3 ft', plan: panelPlan(120), expect: depths(3, 3, 3) },
  { name: '150 V: 3 ft', plan: panelPlan(150), expect: depths(3, 3, 3) },
  { name: '120/208 V from a star point: 120 V to ground, 3 ft', plan: panelPlan(208, 120), expect: depths(3, 3, 3) },
  { name: '277/480 V from a star point: 277 V to ground, 3, 3½ and 4 ft', plan: panelPlan(480, 277), expect: depths(3, 3.5, 4) },
  { name: '208 V from a corner: 3, 3½ and 4 ft', plan: panelPlan(208, 208), expect: depths(3, 3.5, 4) },
  { name: '120 V of a supply of 277 V to ground: no more than itself', plan: panelPlan(120, 277), expect: depths(3, 3, 3) },
  {
    name: '208 V, how it is earthed not known: it decides where something stands opposite',
    plan: panelPlan(208),
    expect: [
      { ...three, subjects, value: 0.9144 },
      { ...ASK, part: 'B' },
      { ...ASK, part: 'C' },
    ],
  },
  {
    name: '240 V, how it is earthed not known',
    plan: panelPlan(240),
    expect: [
      { ...three, subjects, value: 0.9144 },
      { ...ASK, part: 'B' },
      { ...ASK, part: 'C' },
    ],
  },
  { name: '480 V however it is earthed: 3, 3½ and 4 ft', plan: panelPlan(480), expect: depths(3, 3.5, 4) },
  { name: 'the voltage is not known', plan: panelPlan(null), expect: [{ subjects, value: null, asks: 'supply.voltage' }] },
  { name: 'above 600 V', plan: panelPlan(690), expect: [{ subjects, value: null, refuses: 'voltageV is 690' }] },
  { name: 'no panel board', plan: linePlan(), expect: [] },
]);
