import { type Plan, UNKNOWN_DUCT } from '../../../../src/plan';
import { check } from '../../../../src/topics/room/checks/passable-width';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addColumn, addThing, addThingBetween, clearAway } from '../../../support/roomPlan';

/** 28 in to pass, 36 in wanted in an aisle; the door of the line is 914 wide. */
const door: ExpectedFinding = { part: 'door', verdict: 'clear', subjects: ['machine'], measured: 914, limit: 711.2 };
const aisle = { part: 'aisle', subjects: ['machine'], limit: 711.2 } as const;

/**
 * Two work tables, from the wall to the clean table, part the operator from the door but for a gap. The clean table's
 * edge is at 4045.5.
 */
const gapOf = (gap: number, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    addThingBetween(plan, 'bench', [0, 2150], [1500, 2440], { kind: 'work-table' });
    addThingBetween(plan, 'long-bench', [1500 + gap, 2150], [4045.5, 2440], { kind: 'work-table' });
    change(plan);
  });

const doorOf = (width: number, change: Partial<Plan['room']['openings'][number]> = {}) =>
  linePlan({}, (plan) => {
    for (const opening of plan.room.openings) Object.assign(opening, { width, ...change });
  });

describeCheck(check, [
  {
    name: 'a whole line',
    plan: linePlan(),
    expect: [
      { ...door, says: 'The door leaves 3′ 0″ to pass; 2′ 4″ is needed.' },
      { ...aisle, verdict: 'clear', measured: 914.4, says: 'The way to the operator’s place is at least 3′ 0″ wide.' },
    ],
  },
  { name: 'a gap of just 36 in', plan: gapOf(914.4), expect: [door, { ...aisle, verdict: 'clear', measured: 914.4 }] },
  {
    name: 'a gap a little under 36 in',
    plan: gapOf(914),
    expect: [{ ...aisle, verdict: 'watch', measured: 914 }, door],
  },
  {
    name: 'a gap of 30 in',
    plan: gapOf(762),
    expect: [
      {
        ...aisle,
        verdict: 'watch',
        measured: 762,
        says: 'The way to the operator’s place narrows to 2′ 6″ between work table 9 and work table 10; 3′ 0″ is wanted in an aisle.',
      },
      door,
    ],
  },
  { name: 'a gap of just 28 in', plan: gapOf(711.2), expect: [{ ...aisle, verdict: 'watch', measured: 711.2 }, door] },
  {
    name: 'a gap a little under 28 in',
    plan: gapOf(711),
    expect: [{ ...aisle, verdict: 'stop', measured: 711 }, door],
  },
  {
    name: 'a gap of 20 in',
    plan: gapOf(508),
    expect: [
      {
        ...aisle,
        verdict: 'stop',
        measured: 508,
        repairs: ['move-long-bench'],
        says: 'The way to the operator’s place narrows to 1′ 8″ between work table 9 and work table 10; 2′ 4″ is needed. Make room there.',
      },
      door,
    ],
  },
  { name: 'hardly a gap', plan: gapOf(10), expect: [{ ...aisle, verdict: 'stop', measured: 10 }, door] },
  {
    name: 'a column in the gap leaves the wider of two ways past it',
    plan: gapOf(1500, (plan) => addColumn(plan, 'column', 2150, 2295)),
    expect: [{ ...aisle, verdict: 'watch', measured: 750 }, door],
  },
  {
    name: 'a person of 34 in, as the plan has it',
    plan: gapOf(850, (plan) => {
      plan.settings.personWidth = 863.6;
    }),
    expect: [
      { ...aisle, verdict: 'stop', measured: 850, limit: 863.6 },
      { ...door, limit: 863.6 },
    ],
  },
  {
    name: 'a setting of 20 in: the exit access of 28 in counts all the same',
    plan: gapOf(508, (plan) => {
      plan.settings.personWidth = 508;
    }),
    expect: [
      {
        ...aisle,
        verdict: 'stop',
        measured: 508,
        repairs: ['move-long-bench'],
        says: 'The way to the operator’s place narrows to 1′ 8″ between work table 9 and work table 10; 2′ 4″ is needed to get out, whatever the plan’s setting of 1′ 8″. Make room there.',
      },
      { ...door, says: 'The door leaves 3′ 0″ to pass; 2′ 4″ is needed to get out, whatever the plan’s setting of 1′ 8″.' },
    ],
  },
  {
    name: 'a setting of 20 in, a gap of just 28 in',
    plan: gapOf(711.2, (plan) => {
      plan.settings.personWidth = 508;
    }),
    expect: [{ ...aisle, verdict: 'watch', measured: 711.2 }, door],
  },
  {
    name: 'an aisle of 48 in wanted, for two workers: 36 in no longer suffice',
    plan: gapOf(914.4, (plan) => {
      plan.settings.aisleWidth = 1219.2;
    }),
    expect: [
      {
        ...aisle,
        verdict: 'watch',
        measured: 914.4,
        repairs: ['move-long-bench'],
        says: 'The way to the operator’s place narrows to 3′ 0″ between work table 9 and work table 10; 4′ 0″ is wanted in an aisle by the setting of this plan.',
      },
      door,
    ],
  },
  {
    name: 'an aisle of 30 in wanted: 30 in suffice, and ways are told apart up to an accessible route',
    plan: gapOf(762, (plan) => {
      plan.settings.aisleWidth = 762;
    }),
    expect: [door, { ...aisle, verdict: 'clear', measured: 762, says: 'The way to the operator’s place is at least 2′ 6″ wide.' }],
  },
  {
    name: 'an aisle of 24 in wanted lowers no exit',
    plan: gapOf(685.8, (plan) => {
      plan.settings.aisleWidth = 609.6;
    }),
    expect: [{ ...aisle, verdict: 'stop', measured: 685.8 }, door],
  },
  {
    name: 'a run that hangs in the way, 6 ft above the floor',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'bench', [0, 2150], [1500, 2440], { kind: 'work-table' });
      const points = [2262, 4045.5].map((x) => ({ x, y: 2295, z: 1928.8 }));
      plan.runs.push({ id: 'low-run', machine: 'machine', points, diameter: 200, fan: null, outlet: 'wall', duct: UNKNOWN_DUCT });
    }),
    expect: [
      {
        ...aisle,
        verdict: 'watch',
        measured: 762,
        says: 'The way to the operator’s place narrows to 2′ 6″ between the work table and the run (it hangs 6′ 0″ above the floor, heads need 6′ 8″); 3′ 0″ is wanted in an aisle.',
      },
      door,
    ],
  },
  {
    name: 'the same run at 6 ft 8 in: heads pass under it',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'bench', [0, 2150], [1500, 2440], { kind: 'work-table' });
      const points = [2262, 4045.5].map((x) => ({ x, y: 2295, z: 2132 }));
      plan.runs.push({ id: 'low-run', machine: 'machine', points, diameter: 200, fan: null, outlet: 'wall', duct: UNKNOWN_DUCT });
    }),
    expect: [door, { ...aisle, verdict: 'clear', measured: 914.4 }],
  },
  {
    name: 'a cart in the way of nobody',
    plan: linePlan({}, (plan) => addThing(plan, 'cart', 400, 1400, 500, 500)),
    expect: [door, { ...aisle, verdict: 'clear', measured: 914.4 }],
  },
  {
    name: 'a cart before the whole door, 700 mm from it: between cart and jamb',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'cart', [150, 2900], [1264, 3349.5]);
    }),
    expect: [
      {
        ...aisle,
        verdict: 'stop',
        measured: 700,
        repairs: ['move-cart'],
        says: 'The way to the operator’s place narrows to 2′ 3 ⁹⁄₁₆″ between the wall and the cart; 2′ 4″ is needed. Make room there.',
      },
      door,
    ],
  },
  {
    name: 'a cart before half the door, 200 mm from it: between its corner and the other jamb',
    plan: linePlan({}, (plan) => addThingBetween(plan, 'cart', [100, 3400], [550, 3849.5])),
    expect: [{ ...aisle, verdict: 'stop', measured: Math.hypot(614, 200), repairs: ['move-cart'] }, door],
  },
  {
    name: 'a door of just 28 in',
    plan: doorOf(711.2),
    expect: [
      { ...door, measured: 711.2 },
      { ...aisle, verdict: 'clear', measured: 914.4 },
    ],
  },
  {
    name: 'a door of 26 in',
    plan: doorOf(660.4),
    expect: [
      {
        ...door,
        verdict: 'stop',
        measured: 660.4,
        says: 'The widest door leaves only 2′ 2″ to pass; 2′ 4″ is needed. Widen it by 2″.',
      },
      { ...aisle, verdict: 'clear', measured: 914.4 },
    ],
  },
  {
    name: 'a second way in by a wider opening',
    plan: linePlan({}, (plan) => {
      for (const opening of plan.room.openings) opening.width = 660.4;
      plan.room.openings.push({
        id: 'way',
        kind: 'cased-opening',
        wall: 'wall-left',
        from: 500,
        width: 1000,
        height: 2100,
        sill: 0,
        swing: 'none',
        hinge: 'start',
      });
    }),
    expect: [
      { ...door, measured: 1000 },
      { ...aisle, verdict: 'clear', measured: 914.4 },
    ],
  },
  {
    name: 'no door',
    plan: linePlan({}, (plan) => {
      plan.room.openings = [];
    }),
    expect: [
      {
        ...door,
        verdict: 'ask',
        measured: null,
        asks: 'room.openings',
        says: 'The room has no door that people walk through. Draw where they come in.',
      },
    ],
  },
  {
    name: 'a window is no way in',
    plan: doorOf(914, { kind: 'pass-window', sill: 900, height: 600, swing: 'none' }),
    expect: [{ ...door, verdict: 'ask', measured: null, asks: 'room.openings' }],
  },
  {
    name: 'a machine without tables has no operator’s place',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: [],
  },
]);
