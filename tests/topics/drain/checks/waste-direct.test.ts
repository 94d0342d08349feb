import type { FloorDrain, Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/drain/checks/waste-direct';
import { describeCheck } from '../../../support/cases';
import { floorSink, hookedPlan } from '../../../support/hookUpPlans';

/** The drain of the machine as drawn: 110 from the left and 60 from the back of a footprint that begins at 3950, 138.5. */
const OUTLET = { x: 4060, y: 198.5 };
const at = (plan: Plan, inches: number, trapped: boolean | null) =>
  floorSink(plan, { trapped }, { x: OUTLET.x, y: OUTLET.y + inches * 25.4 });
const direct = (inches: number, trapped: boolean | null, more: readonly [inches: number, trapped: boolean | null][] = []) =>
  hookedPlan({ waste: 'direct' }, (plan) => {
    at(plan, inches, trapped);
    for (const [i, [way, hasTrap]] of more.entries()) plan.room.floorDrains.push(anotherDrain(plan, `drain-${i}`, way, hasTrap));
  });

function anotherDrain({ room }: Plan, id: string, inches: number, trapped: boolean | null): FloorDrain {
  const [first] = room.floorDrains;
  if (first === undefined) throw new Error('the room has no floor drain');
  return { ...first, id, x: OUTLET.x - inches * 25.4, y: OUTLET.y, waste: { ...first.waste, trapped } };
}

const vented = (isVented: boolean | null, trapped = true) =>
  hookedPlan({ waste: 'direct' }, (plan) => floorSink(plan, { trapped, vented: isVented }, { x: OUTLET.x, y: OUTLET.y + 24 * 25.4 }));

const metres = (inches: number) => inches * 0.0254;
const near = { subjects: ['machine', 'floor-drain'], limit: metres(60) };

/** Food Code 5-402.11(C): within 5 ft of a trapped drain, on the inlet side of a vented trap (read); 60 in allowed, 61 not. */
describeCheck(check, [
  {
    name: '60 in from a trapped drain',
    plan: direct(60, true),
    expect: [
      {
        ...near,
        verdict: 'clear',
        measured: metres(60),
        says: 'The machine is connected directly, 5′ 0″ from a floor drain that is trapped and vented; up to 5′ 0″ it may be, where local law allows it.',
      },
    ],
  },
  {
    name: '61 in',
    plan: direct(61, true),
    expect: [
      {
        ...near,
        verdict: 'stop',
        measured: metres(61),
        says: 'The machine is connected directly, 5′ 1″ from a floor drain that is trapped and vented, and may be 5′ 0″ at most. Let it run over an air gap, or set such a drain nearer.',
      },
    ],
  },
  {
    name: 'the drain has no trap',
    plan: direct(24, false),
    expect: [
      {
        verdict: 'stop',
        subjects: ['machine'],
        measured: false,
        limit: true,
        says: 'The machine is connected directly, but the drain has no trap. Let it run over an air gap, or set a trapped and vented floor drain beside it.',
      },
    ],
  },
  {
    name: 'the near drain has no trap, a farther one within 5 ft has',
    plan: direct(24, false, [[48, true]]),
    expect: [{ verdict: 'clear', subjects: ['machine', 'drain-0'], measured: metres(48) }],
  },
  {
    name: 'whether it has one is not known',
    plan: direct(24, null),
    expect: [{ ...near, verdict: 'ask', measured: null, asks: 'room.floorDrains.0.waste.trapped' }],
  },
  {
    name: 'a farther drain is known to have one, so that it does not matter',
    plan: direct(24, null, [[48, true]]),
    expect: [{ verdict: 'clear', subjects: ['machine', 'drain-0'], measured: metres(48) }],
  },
  {
    name: 'a trapped drain too far, and a near one of which it is not known',
    plan: direct(90, true, [[48, null]]),
    expect: [{ verdict: 'ask', subjects: ['machine', 'drain-0'], measured: null, asks: 'room.floorDrains.1.waste.trapped' }],
  },
  {
    name: 'its trap is not vented',
    plan: vented(false),
    expect: [
      {
        verdict: 'stop',
        subjects: ['machine'],
        measured: false,
        limit: true,
        says: 'The machine is connected directly, but the trap is not vented. Let it run over an air gap, or set a trapped and vented floor drain beside it.',
      },
    ],
  },
  {
    name: 'whether its trap is vented is not known',
    plan: vented(null),
    expect: [
      {
        ...near,
        verdict: 'ask',
        measured: null,
        asks: 'room.floorDrains.0.waste.vented',
        says: 'The machine is connected directly: say whether the trap of the floor drain beside it is vented.',
      },
    ],
  },
  {
    name: 'it has no trap, so that its vent does not matter',
    plan: vented(null, false),
    expect: [{ verdict: 'stop', subjects: ['machine'], measured: false, limit: true }],
  },
  {
    name: 'nothing is known of a drain too far away',
    plan: direct(90, null),
    expect: [{ verdict: 'stop', subjects: ['machine'], measured: false, limit: true }],
  },
  {
    name: 'no drain drawn',
    plan: hookedPlan({ waste: 'direct' }, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'room.floorDrains' }],
  },
  { name: 'over an air gap', plan: hookedPlan({ waste: 'indirect' }), expect: [] },
]);
