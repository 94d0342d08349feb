import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/cleanable-below';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: number | null, limit = 152.4): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit,
});
const machine = (clearBelow: number | null) =>
  linePlan({}, ({ machines }) => {
    for (const item of machines) item.hookUp.clearBelow = clearBelow;
  });
const metric = (clearBelow: number) =>
  linePlan({}, ({ machines, settings }) => {
    settings.units = 'metric';
    for (const item of machines) item.hookUp.clearBelow = clearBelow;
  });
const tables = [of('soiled-table', 'clear', 254), of('clean-table', 'clear', 254)];
const clear = of('machine', 'clear', 152.4);
const sink = (depth: number, clearBelow: number | null) =>
  linePlan({}, (plan: Plan) => addThing(plan, 'sink', 2500, 2500, 1200, depth, { kind: 'three-compartment-sink', clearBelow }));

/** 6 in, or 4 in where no floor is more than 6 in from the access: FDA Food Code 4-402.12 (read). */
describeCheck(check, [
  {
    name: '15 cm in a plan of millimetres, as the code prints it',
    plan: metric(150),
    expect: [of('machine', 'clear', 150, 150), of('soiled-table', 'clear', 254, 150), of('clean-table', 'clear', 254, 150)],
  },
  {
    name: '149 mm',
    plan: metric(149),
    expect: [of('machine', 'stop', 149, 150), of('soiled-table', 'clear', 254, 150), of('clean-table', 'clear', 254, 150)],
  },
  {
    name: '6.0 in',
    plan: machine(152.4),
    expect: [{ ...clear, says: 'Under the machine 6″ is free; 6″ is needed to clean there.' }, ...tables],
  },
  {
    name: '5.9 in',
    plan: machine(149.86),
    expect: [
      {
        ...of('machine', 'stop', 149.86),
        says: 'Under the machine 5 ⅞″ is free, ⅛″ too little to clean there. Give it longer legs, or seal it to the floor.',
      },
      ...tables,
    ],
  },
  {
    name: 'on the floor: it must be sealed',
    plan: machine(0),
    expect: [{ ...of('machine', 'watch', 0), says: 'The machine stands on the floor: it must be sealed to it all around.' }, ...tables],
  },
  {
    name: 'machine not known',
    plan: machine(null),
    expect: [{ ...of('machine', 'ask', null), asks: 'machines.0.hookUp.clearBelow' }, ...tables],
  },
  {
    name: 'table not known',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').make.clearBelow = null)),
    expect: [{ ...of('clean-table', 'ask', null), asks: 'tables.1.make.clearBelow' }, clear, of('soiled-table', 'clear', 254)],
  },
  {
    name: 'a sink 6.0 in deep, 4 in above the floor',
    plan: sink(152.4, 101.6),
    expect: [clear, ...tables, of('sink', 'clear', 101.6, 101.6)],
  },
  { name: 'a sink 6.1 in deep, 4 in above the floor', plan: sink(154.94, 101.6), expect: [of('sink', 'stop', 101.6), clear, ...tables] },
  {
    name: 'a sink, not known',
    plan: sink(600, null),
    expect: [{ ...of('sink', 'ask', null), asks: 'things.4.clearBelow' }, clear, ...tables],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
