import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/power/checks/working-space';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { versionOf } from '../../../support/figurePlans';
import { hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const FOOT = 0.3048;
const feet = (count: number) => count * FOOT;
const CONTROLS = { part: 'controls', subjects: ['machine'] };
const panel = (verdict: 'clear' | 'stop', measured: number, limit: number, more: string[] = [], says?: string): ExpectedFinding => ({
  verdict,
  part: 'panel',
  subjects: ['panel', ...more],
  measured,
  limit: feet(limit),
  ...(says === undefined ? {} : { says }),
});

/** One leaf as wide as the panel board, 500 mm: as much is free before it as before the panel, unless the case says otherwise. */
const door = (measured: number, verdict: 'clear' | 'watch' = 'clear', more: string[] = [], says?: string): ExpectedFinding => ({
  verdict,
  part: 'door',
  subjects: ['panel', ...more],
  measured,
  limit: 0.5,
  ...(says === undefined ? {} : { says }),
});

/** Far from the room's line a room of its own would be drawn; here the panel hangs on the left wall, its front to the right: free floor of 4812.5 less what stands before it. */
const withPanel = (voltage: number | null, change: (plan: Plan) => void = () => {}, toGroundV: number | null = voltage) =>
  linePlan({}, (plan) => {
    Object.assign(plan.supply, { voltage, toGroundV });
    addThing(plan, 'panel', 75, 1600, 500, 150, { kind: 'panel-board', rotationDeg: -90, height: 1900 });
    change(plan);
  });
/** A cart whose near edge is so far from the panel's front, which is 150 from the wall. */
const cartAt = (plan: Plan, distanceM: number, y = 1600) => addThing(plan, 'cart', 150 + distanceM * 1000 + 300, y, 600, 600);

/** Something low on the wall below the panel, which then begins 700 above the floor. */
function ledgeBelow(plan: Plan, out: number): void {
  for (const thing of plan.things) if (thing.id === 'panel') thing.clearBelow = 700;
  addThing(plan, 'ledge', (150 + out) / 2, 1600, 400, 150 + out, { kind: 'other', rotationDeg: -90, height: 650 });
}

/** The clean table's edge at 4045.5, beyond the panel's strip of 762: 4045.5 − 150. */
const FREE = 4045.5 - 150;
const clearControls: ExpectedFinding = { ...CONTROLS, verdict: 'clear', measured: 3.2, within: 0.5 };

/** 29 CFR 1910.303(g)(1), Table S-1 (read), 30 in of width, 6 in of projection, doors by 90° (read); volts to ground. */
describeCheck(check, [
  {
    name: 'free across the room: nothing near enough to count, 3 ft',
    plan: withPanel(208),
    expect: [panel('clear', FREE / 1000, 3), door(FREE / 1000), clearControls],
  },
  {
    name: 'a cart at 3 ft 6 in, 208 V: as if earthed',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3.5))),
    expect: [panel('clear', feet(3.5), 3.5), door(feet(3.5)), clearControls],
  },
  {
    name: 'a cart at 3 ft 5 in, 208 V',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3) + 5 * 0.0254)),
    expect: [
      panel(
        'stop',
        feet(3) + 5 * 0.0254,
        3.5,
        ['cart'],
        'The cart leaves 3′ 5″ before the panel board; 3′ 6″ is needed, 2′ 6″ wide and not for storage. Make 1″ more room.',
      ),
      door(feet(3) + 5 * 0.0254),
      clearControls,
    ],
  },
  {
    name: '120/208 V from a star point: 120 V to ground, 3 ft',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3)), 120),
    expect: [panel('clear', feet(3), 3), door(feet(3)), clearControls],
  },
  {
    name: '277/480 V from a star point: 277 V to ground, 3 ft 6 in',
    plan: withPanel(480, (plan) => cartAt(plan, feet(3)), 277),
    expect: [panel('stop', feet(3), 3.5, ['cart']), door(feet(3)), { ...clearControls, limit: feet(3) }],
  },
  {
    name: 'how 208 V is earthed is not known, and decides at 3 ft 2 in',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3) + 2 * 0.0254), null),
    expect: [
      {
        verdict: 'ask',
        part: 'panel',
        subjects: ['panel'],
        measured: null,
        asks: 'supply.toGroundV',
        says: 'To hold it against the room to work before the panel board, say the voltage to ground.',
      },
      door(feet(3) + 2 * 0.0254),
      clearControls,
    ],
  },
  {
    name: 'how 208 V is earthed is not known: 3 ft 6 in is enough either way',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3.5)), null),
    expect: [panel('clear', feet(3.5), 3.5), door(feet(3.5)), clearControls],
  },
  {
    name: 'how 208 V is earthed is not known: 2 ft 11 in is too little either way',
    plan: withPanel(208, (plan) => cartAt(plan, feet(3) - 0.0254), null),
    expect: [panel('stop', feet(3) - 0.0254, 3, ['cart']), door(feet(3) - 0.0254), clearControls],
  },
  {
    name: '480 V however it is earthed: 3 ft 6 in',
    plan: withPanel(480, (plan) => cartAt(plan, feet(3.5)), null),
    expect: [panel('clear', feet(3.5), 3.5), door(feet(3.5)), clearControls],
  },
  {
    name: 'a ledge below it that reaches out 6 in',
    plan: withPanel(208, (plan) => ledgeBelow(plan, 6 * 25.4)),
    expect: [panel('clear', FREE / 1000, 3), door(FREE / 1000), clearControls],
  },
  {
    name: 'a ledge below it that reaches out 7 in: the door opens above it',
    plan: withPanel(208, (plan) => ledgeBelow(plan, 7 * 25.4)),
    expect: [panel('stop', 0, 3.5, ['ledge']), door(FREE / 1000), clearControls],
  },
  {
    name: 'a panel board 1.2 m wide, a cart at 3 ft 8 in: its door, were it one leaf, cannot open',
    plan: withPanel(120, (plan) => {
      cartAt(plan, 1.1);
      for (const thing of plan.things) if (thing.id === 'panel') thing.width = 1200;
    }),
    expect: [
      {
        ...door(
          1.1,
          'watch',
          ['cart'],
          'The cart leaves 3′ 7 ⁵⁄₁₆″ before the panel board; its door, as of one leaf 3′ 11 ¼″ wide, must open by 90°. Make room, or see that it has narrower leaves.',
        ),
        limit: 1.2,
      },
      panel('clear', 1.1, 3),
      clearControls,
    ],
  },
  {
    name: 'the same with 120 V: 3 ft',
    plan: withPanel(120, (plan) => cartAt(plan, feet(3) + 5 * 0.0254)),
    expect: [panel('clear', feet(3) + 5 * 0.0254, 3), door(feet(3) + 5 * 0.0254), clearControls],
  },
  {
    name: 'another panel board opposite at 3 ft 9 in: live on both sides, 4 ft',
    plan: withPanel(208, (plan) =>
      addThing(plan, 'other-panel', 150 + 75 + feet(3.75) * 1000, 1600, 900, 150, { kind: 'panel-board', rotationDeg: 90, height: 1900 }),
    ),
    expect: [
      panel('stop', feet(3.75), 4, ['other-panel']),
      { ...panel('stop', feet(3.75), 4), subjects: ['other-panel', 'panel'] },
      door(feet(3.75)),
      { ...door(feet(3.75)), subjects: ['other-panel'], limit: 0.9 },
      clearControls,
    ],
  },
  {
    name: 'a cart beside it leaves the panel’s own width free, but not 30 in either way',
    plan: withPanel(208, (plan) => {
      cartAt(plan, feet(1), 1600 + 250 + 100 + 300);
      addThing(plan, 'bin', 150 + feet(1.2) * 1000 + 200, 1600 - 250 - 100 - 200, 400, 400, { kind: 'bin' });
    }),
    expect: [{ verdict: 'stop', part: 'panel', subjects: ['panel', 'bin'], measured: feet(1.2) }, door(FREE / 1000), clearControls],
  },
  {
    name: 'with one of them the 30 in lie to the other side',
    plan: withPanel(208, (plan) => cartAt(plan, feet(1), 1600 + 250 + 20 + 300)),
    expect: [panel('clear', FREE / 1000, 3), door(FREE / 1000), clearControls],
  },
  {
    name: 'in the corner the 30 in lie away from the wall beside it, and the soiled table begins in them',
    plan: withPanel(208, (plan) => {
      plan.things = plan.things.filter(({ kind }) => kind !== 'bin');
      for (const thing of plan.things) if (thing.id === 'panel') thing.y = 255;
    }),
    expect: [panel('stop', 0.9, 3.5, ['soiled-table']), door(0.9), clearControls],
  },
  {
    name: 'the voltage is not known',
    plan: withPanel(null),
    expect: [
      { verdict: 'ask', part: 'panel', subjects: ['panel'], measured: null, asks: 'supply.voltage' },
      door(FREE / 1000),
      clearControls,
    ],
  },
  {
    name: 'a bin 2 ft 6 in before the controls: a watch',
    plan: linePlan({}, (plan) => addThing(plan, 'bin', 3800, 849.5 + 762 + 150, 300, 300, { kind: 'bin' })),
    expect: [{ ...CONTROLS, verdict: 'watch', subjects: ['machine', 'bin'], measured: 0.762, limit: feet(3) }],
  },
  {
    name: 'the same with 115 V: 3 ft',
    plan: hookedSheetPlan({ electrical: versionOf(1.8, 115, 1, 15.7) }),
    expect: [{ ...clearControls, limit: feet(3) }],
  },
  {
    name: 'no version is chosen',
    plan: linePlan({}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ ...CONTROLS, verdict: 'ask', measured: null, asks: 'machines.0.electrical' }],
  },
]);
