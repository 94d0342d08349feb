import type { Plan, Table } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/configuration-possible';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, joinAt, linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';

const none = (says: string): ExpectedFinding[] => [
  { verdict: 'stop', subjects: ['machine'], measured: 'none', limit: 'straight or corner', says },
];

const addTable = (plan: Plan, change: Partial<Table>) => void plan.tables.push({ ...tableOf(plan, 'clean'), fittings: [], ...change });

describeCheck(check, [
  {
    name: 'left and right',
    plan: linePlan({ configuration: 'straight' }),
    expect: [{ verdict: 'clear', subjects: ['machine'], measured: 'straight', limit: 'straight', says: 'The line is straight through.' }],
  },
  {
    name: 'left and front',
    plan: linePlan({ configuration: 'left-front' }),
    expect: [{ verdict: 'clear', subjects: ['machine'], measured: 'corner', limit: 'corner', says: 'The line is a corner.' }],
  },
  {
    name: 'front and right, right to left',
    plan: linePlan({ configuration: 'right-front', hand: 'right-to-left' }),
    expect: [{ verdict: 'clear', subjects: ['machine'], measured: 'corner' }],
  },
  {
    name: 'no table at the machine',
    plan: linePlan({}, (plan) => {
      for (const table of plan.tables) table.place = FREE;
    }),
    expect: none('No table meets the machine. Join a soiled table to one door and a clean table to another.'),
  },
  {
    name: 'no table at all',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: none('No table meets the machine. Join a soiled table to one door and a clean table to another.'),
  },
  {
    name: 'the soiled table alone',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'clean').place = FREE;
    }),
    expect: none('Only the soiled table meets the machine. Join a clean table to another door.'),
  },
  {
    name: 'the clean table alone',
    plan: linePlan({}, (plan) => {
      plan.tables = [tableOf(plan, 'clean')];
    }),
    expect: none('Only the clean table meets the machine. Join a soiled table to another door.'),
  },
  {
    name: 'a table at the back',
    plan: linePlan({}, (plan) => joinAt(plan, 'clean', 'back')),
    expect: none('A table meets the back of the machine, where no rack passes. Move it to the left, the right or the front.'),
  },
  {
    name: 'both at the front',
    plan: linePlan({}, (plan) => joinAt(plan, 'soiled', 'front')),
    expect: none('Two tables meet the same side of the machine. Move one of them to another door.'),
  },
  {
    name: 'three sides',
    plan: linePlan({}, (plan) =>
      addTable(plan, { id: 'third', place: { kind: 'joined', machine: 'machine', side: 'right', gap: 0, offset: 0, skewDeg: 0 } }),
    ),
    expect: none('Tables meet three sides of the machine. Take one away: a rack goes in at one door and out at another.'),
  },
  {
    name: 'a side without a door',
    plan: linePlan({ family: ownDataSheet({ doors: ['left', 'right'] }) }),
    expect: none('A table meets a side of the machine that has no door. Move it to a side with a door.'),
  },
  {
    name: 'two soiled tables',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'clean').role = 'soiled';
    }),
    expect: none('The tables at the machine are not one soiled and one clean. Give one of them the other role.'),
  },
]);
