import type { DataSheet } from '../../../../src/catalog';
import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/hood/checks/hood-where-needed';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf, setOverhang } from '../../../support/roomPlan';
import { listedSheet } from '../../../support/unhooded';

const machine = { subjects: ['machine'] } as const;

const without = (ceilingHeight: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    plan.hoods = [];
    plan.room.ceilingHeight = ceilingHeight;
    change(plan);
  });

const hooded = (family: string | DataSheet) =>
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
        says: 'The machine gives its vapour to the room and has no hood over it. Hang one, larger than the machine, or say in the plan that the room’s ventilation is designed for its heat and moisture.',
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
    name: 'none, and the plan says that the room is not designed for it',
    plan: without(3000, ({ air }) => void (air.hoodWaived = false)),
    expect: [
      {
        ...machine,
        verdict: 'stop',
        measured: false,
        repairs: ['place-hood'],
        says: 'The machine gives its vapour to the room and has no hood over it. Hang one, larger than the machine.',
      },
    ],
  },
  {
    name: 'none, and the plan says that the room takes it',
    plan: without(3000, ({ air }) => void (air.hoodWaived = true)),
    expect: [
      {
        ...machine,
        verdict: 'clear',
        measured: true,
        limit: true,
        says: 'The machine has no hood over it: the plan says that the room’s ventilation takes its heat and moisture. The exhaust of the room is judged for that.',
      },
    ],
  },
  // IMC 507.1, exceptions: electric, listed to UL 921 with condensing of its own.
  {
    name: 'a machine that wins back its heat, its listing not known',
    plan: linePlan({ family: listedSheet(null) }),
    expect: [
      {
        ...machine,
        verdict: 'ask',
        measured: null,
        asks: 'sheets.0.vent.listedCondensing',
        says: 'The machine wins back its heat. Is it electric and listed to UL 921 as condensing? Else it needs a hood.',
      },
    ],
  },
  {
    name: 'its listing not known, and the room takes it either way',
    plan: linePlan({ family: listedSheet(null) }, ({ air }) => void (air.hoodWaived = true)),
    expect: [{ ...machine, verdict: 'clear', measured: true, limit: true }],
  },
  {
    name: 'not listed: it needs one as others do',
    plan: linePlan({ family: listedSheet(false) }),
    expect: [
      {
        ...machine,
        verdict: 'stop',
        measured: false,
        repairs: ['place-hood'],
        says: 'The machine wins back its heat but is not listed as condensing and has no hood over it. Hang one, larger than the machine, or say in the plan that the room’s ventilation is designed for its heat and moisture.',
      },
    ],
  },
  {
    name: 'not listed, under a hood',
    plan: hooded(listedSheet(false)),
    expect: [{ ...machine, verdict: 'clear', measured: true, limit: true }],
  },
  {
    name: 'listed as condensing: it needs none',
    plan: linePlan({ family: 'heat-recovery' }),
    expect: [
      {
        ...machine,
        verdict: 'clear',
        measured: false,
        limit: false,
        says: 'The machine is listed as condensing its own vapour and needs no hood; none hangs over it.',
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
        says: 'The hood hangs over the machine, which is listed as condensing its own vapour and needs none. Leave it out unless the local official wants it.',
      },
    ],
  },
  {
    name: 'a direct vent needs none',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [{ ...machine, verdict: 'clear', measured: false, limit: false }],
  },
  {
    name: 'a direct vent whose run is not drawn: no word of one that it has',
    plan: linePlan({ family: 'direct-vent' }, (plan) => void (plan.runs = [])),
    expect: [
      {
        ...machine,
        verdict: 'clear',
        measured: false,
        limit: false,
        says: 'The machine is made to vent through a run of its own and needs no hood; none hangs over it.',
      },
    ],
  },
  {
    name: 'a hood over a direct vent',
    plan: hooded('direct-vent'),
    expect: [{ ...machine, verdict: 'watch', measured: true, repairs: ['take-hood-away'] }],
  },
]);
