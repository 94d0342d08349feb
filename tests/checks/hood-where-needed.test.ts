import { check } from '../../src/checks/rules/hood-where-needed';
import type { Plan } from '../../src/plan';
import { describeCheck } from '../support/cases';
import { linePlan } from '../support/linePlan';
import { hoodOf, setOverhang } from '../support/roomPlan';

const machine = { subjects: ['machine'] } as const;

const without = (ceilingHeight: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    plan.hoods = [];
    plan.room.ceilingHeight = ceilingHeight;
    change(plan);
  });

const hooded = (family: string) =>
  linePlan({ family }, (plan) => {
    plan.hoods.push({
      id: 'hood',
      x: 0,
      y: 0,
      rotationDeg: 0,
      width: 100,
      depth: 100,
      lipHeight: 2063.6,
      height: 450,
      exhaust: null,
      cavityAir: null,
    });
    setOverhang(plan, 300, 100, 300, 100);
  });

describeCheck(check, [
  {
    name: 'a hood over a machine that needs one',
    plan: linePlan(),
    expect: [{ ...machine, verdict: 'clear', measured: true, limit: true, says: 'The hood hangs over the machine.' }],
  },
  {
    name: 'none: one can be hung',
    plan: without(3000),
    expect: [
      {
        ...machine,
        verdict: 'stop',
        measured: false,
        limit: true,
        repairs: ['place-hood'],
        says: 'The machine gives its vapour to the room and has no hood over it. Hang one, larger than the machine.',
      },
    ],
  },
  {
    name: 'none, and the ceiling is not known',
    plan: without(null),
    expect: [{ ...machine, verdict: 'stop', measured: false, repairs: ['place-hood'] }],
  },
  {
    name: 'none, straight through, with tables on both sides',
    plan: linePlan({ configuration: 'straight' }, (plan) => {
      plan.hoods = [];
    }),
    expect: [{ ...machine, verdict: 'stop', measured: false, repairs: ['place-hood'] }],
  },
  // Deck 863.6 + 4 ft = 2082.8; a body of 300 above it needs 2382.8.
  {
    name: 'a ceiling with just the height for a hood',
    plan: without(2382.8),
    expect: [{ ...machine, verdict: 'stop', measured: false, repairs: ['place-hood'] }],
  },
  { name: 'a ceiling too low for one', plan: without(2382), expect: [{ ...machine, verdict: 'stop', measured: false }] },
  {
    name: 'a hood that hangs elsewhere',
    plan: linePlan({}, (plan) => Object.assign(hoodOf(plan), { x: 2000, y: 2500 })),
    expect: [{ ...machine, verdict: 'stop', measured: false, repairs: ['place-hood'] }],
  },
  {
    name: 'heat recovery needs none',
    plan: linePlan({ family: 'heat-recovery' }),
    expect: [
      {
        ...machine,
        verdict: 'clear',
        measured: false,
        limit: false,
        says: 'The machine recovers its heat and needs no hood; none hangs over it.',
      },
    ],
  },
  {
    name: 'a hood over heat recovery',
    plan: hooded('heat-recovery'),
    expect: [
      {
        ...machine,
        verdict: 'watch',
        measured: true,
        limit: false,
        repairs: ['take-hood-away'],
        says: 'The hood hangs over the machine, which recovers its heat and needs none. Leave it out unless the local official wants it.',
      },
    ],
  },
  {
    name: 'a direct vent needs none',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [{ ...machine, verdict: 'clear', measured: false, limit: false }],
  },
  {
    name: 'a hood over a direct vent',
    plan: hooded('direct-vent'),
    expect: [{ ...machine, verdict: 'watch', measured: true, repairs: ['take-hood-away'] }],
  },
]);
