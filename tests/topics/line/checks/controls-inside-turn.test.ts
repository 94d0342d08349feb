import { expect, it } from 'vitest';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/line/checks/controls-inside-turn';
import { isInsideTurn } from '../../../../src/topics/line/checks/support/controls';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';

const subjects = ['machine'];
const clear = { verdict: 'clear', subjects, measured: true } satisfies ExpectedFinding;
const stop = { verdict: 'stop', subjects, measured: false } satisfies ExpectedFinding;

it('controls at the corner of the turn that look away from it are not inside', () => {
  const { machine, inside } = deriveScene(linePlan()).lines[0]!;
  const controls = machine.controls!;
  const { normal } = controls;
  const facing = (x: number, y: number) => isInsideTurn(machine, { ...controls, normal: { x, y } }, inside!);
  expect([facing(normal.x, normal.y), facing(-normal.x, -normal.y), facing(-1, 0), facing(1, 0)]).toEqual([true, false, true, false]);
});

/** A post of 85 mm on a side of the machine. */
const post = (side: 'left' | 'right' | 'back' | 'front', from: number) => ({
  id: 'only',
  name: `Post on the ${side}`,
  side,
  from,
  to: from + 85,
  zFrom: 300,
  zTo: 800,
});
const withPost = (side: Parameters<typeof post>[0], from: number) => ownDataSheet({ controls: [post(side, from)] });

describeCheck(check, [
  {
    name: 'corner at the left, controls at the front left',
    plan: linePlan(),
    expect: [{ ...clear, says: 'The controls are at the corner inside the turn.' }],
  },
  { name: 'corner at the right, controls at the front right', plan: linePlan({ configuration: 'right-front' }), expect: [clear] },
  {
    // 737 − 47.5 mm from the front left corner.
    name: 'corner at the left, controls at the front right',
    plan: linePlan({}, (plan) => void (plan.machines[0]!.controls = 'front-right')),
    expect: [
      {
        ...stop,
        repairs: ['controls-front-left'],
        says: 'The controls are outside the turn, 2′ 3 ⅛″ from its corner. Move them on site before the tables go in.',
      },
    ],
  },
  {
    name: 'corner at the right, controls at the front left, moved by the maker only',
    plan: linePlan({ configuration: 'right-front', family: 'tall-door' }, (plan) => void (plan.machines[0]!.controls = 'front-left')),
    expect: [
      {
        ...stop,
        repairs: ['controls-front-right'],
        says: 'The controls are outside the turn, 2′ 4 ⅛″ from its corner. They cannot be moved on site: change the order.',
      },
    ],
  },
  {
    name: 'controls above the deck are held to the same corner',
    plan: linePlan({ family: 'direct-vent' }, (plan) => void (plan.machines[0]!.controls = 'front-right')),
    expect: [{ ...stop, repairs: ['controls-front-left'] }],
  },
  { name: 'straight through, controls at the front left', plan: linePlan({ configuration: 'straight' }), expect: [clear] },
  {
    name: 'straight through, controls at the front right',
    plan: linePlan({ configuration: 'straight' }, (plan) => void (plan.machines[0]!.controls = 'front-right')),
    expect: [{ ...clear, says: 'The controls are at the front, before the operator.' }],
  },
  {
    name: 'straight through, controls at the back',
    plan: linePlan({ configuration: 'straight', family: withPost('back', 300) }),
    expect: [{ ...stop, says: 'The controls are not at the front, where the operator stands. Move them on site before the tables go in.' }],
  },
  {
    name: 'straight through, a side face near the front looks along the edge',
    plan: linePlan({ configuration: 'straight', family: withPost('left', 620) }),
    expect: [clear],
  },
  {
    name: 'straight through, a side face near the back',
    plan: linePlan({ configuration: 'straight', family: withPost('left', 10) }),
    expect: [stop],
  },
  { name: 'corner, the side face at the turn looks along the edge', plan: linePlan({ family: withPost('left', 620) }), expect: [clear] },
  { name: 'corner, the side face near the back', plan: linePlan({ family: withPost('left', 10) }), expect: [stop] },
  { name: 'corner, the closed side, near the front', plan: linePlan({ family: withPost('right', 620) }), expect: [stop] },
  { name: 'corner, just on the turn’s half of the front', plan: linePlan({ family: withPost('front', 325) }), expect: [clear] },
  { name: 'corner, just on the other half of the front', plan: linePlan({ family: withPost('front', 327) }), expect: [stop] },
  {
    name: 'a position that the data sheet does not have',
    plan: linePlan({}, (plan) => void (plan.machines[0]!.controls = 'on-the-roof')),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        asks: 'machines.0.controls',
        repairs: ['controls-front-left'],
        says: 'The data sheet has no such position of the controls. Choose one that it has.',
      },
    ],
  },
  { name: 'no configuration, no turn', plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)), expect: [] },
]);
