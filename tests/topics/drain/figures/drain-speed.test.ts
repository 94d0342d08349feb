import type { Machine } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/drain-speed';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { floorSink, hookedPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const laid = (inches: number, perFoot: number, drainMaterial: Machine['hookUp']['drainMaterial']) =>
  hookedPlan({ waste: 'direct', drainBore: inches * 25.4, drainSlope: perFoot / 12, drainMaterial });
const speed = (feetPerSecond: number, notes: RegExp) => [
  { subjects, value: toSI(feetPerSecond, 'ft/s'), within: toSI(0.01, 'ft/s'), notes },
];
const SCOURS = /^2 ft\/s or more/;
const SLOWER = /^Slower than 2 ft\/s/;

/** Manning, half full (computed); 2 ft/s scours (NSPC 2009, Appendix K, read). */
describeFigure(rule, [
  { name: '2 in at ¼ in/ft, plastic: 2.86 ft/s', plan: laid(2, 0.25, 'plastic'), expect: speed(2.86, SCOURS) },
  { name: '2 in at ¼ in/ft, cast iron: 1.98', plan: laid(2, 0.25, 'cast-iron'), expect: speed(1.98, SLOWER) },
  { name: '3 in at ⅛ in/ft, old: 1.59', plan: laid(3, 0.125, 'old'), expect: speed(1.59, /old pipe, 0\.015/) },
  { name: '3 in at ⅛ in/ft, nobody knows: as old, 1.59', plan: laid(3, 0.125, null), expect: speed(1.59, /not said: as old pipe/) },
  { name: '4 in at ¼ in/ft, cast iron: 3.15', plan: laid(4, 0.25, 'cast-iron'), expect: speed(3.15, SCOURS) },
  {
    name: 'over an air gap the pipe of the floor sink: 3 in at ¼ in/ft, cast iron, 2.60',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: 76.2 })),
    expect: speed(2.6, SCOURS).map((row) => ({ ...row, subjects: ['machine', 'floor-drain'] })),
  },
  {
    name: 'its pipe is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ subjects: ['machine', 'floor-drain'], value: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'connected directly, its fall is not known',
    plan: hookedPlan({ waste: 'direct', drainSlope: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.waste' }],
  },
  { name: 'level', plan: laid(4, 0, 'old'), expect: [{ subjects, value: null, refuses: 'slope is 0' }] },
]);
