import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/drain/checks/drain-size';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { floorSink, hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const mm = (inches: number) => inches * 25.4;
const row =
  (part: string, subjects: string[]) =>
  (verdict: 'clear' | 'watch' | 'stop', inches: number, least: number, says?: string): ExpectedFinding => ({
    verdict,
    part,
    subjects,
    measured: mm(inches),
    limit: mm(least),
    ...(says === undefined ? {} : { says }),
  });
const branch = row('branch', ['floor-drain']);
const outlet = row('outlet', ['machine']);
const tank = row('tank', ['machine']);
const pipe = (inches: number) => hookedPlan({ drainBore: mm(inches) });
const below = (bore: number | null) => linePlan({}, (plan) => floorSink(plan, { bore }));
const holding = (gallons: number, inches: number) =>
  hookedSheetPlan({ tank: { volume: toSI(gallons, 'gal'), heater: 3000 } }, { drainBore: mm(inches) });

/**
 * An underground branch from a floor drain of 2 in (Chicago, read), as wide as the trap of a floor drain anywhere (IPC,
 * secondary; UPC, secondary); a dish machine to 30 gal 2 in, to 100 gal 3 in (an old municipal code, read). The family's outlet is 2 in and its tank 30 L.
 */
describeCheck(check, [
  {
    name: '4 in below the floor sink, a waste pipe of 2 in',
    plan: linePlan(),
    expect: [
      branch(
        'clear',
        4,
        2,
        'The pipe of the floor drain is 4″; 2″ is the least under ground, and the least trap that codes give a floor drain on any floor.',
      ),
      outlet('clear', 2, 2, 'The waste pipe of the machine is 2″, its outlet 2″.'),
      tank('clear', 2, 2, 'The waste pipe of the machine is 2″; for its tank an old city code wants 2″.'),
    ],
  },
  { name: '2 in below the floor sink', plan: below(50.8), expect: [branch('clear', 2, 2), outlet('clear', 2, 2), tank('clear', 2, 2)] },
  {
    name: 'plastic of 1.97 in counts as 2 in',
    plan: below(mm(1.97)),
    expect: [branch('clear', 2, 2), outlet('clear', 2, 2), tank('clear', 2, 2)],
  },
  {
    name: '1½ in below the floor sink',
    plan: below(38.1),
    expect: [
      branch(
        'stop',
        1.5,
        2,
        'The pipe of the floor drain is 1 ½″; 2″ is the least under ground, and the least trap that codes give a floor drain on any floor. Have a larger one laid.',
      ),
      outlet('clear', 2, 2),
      tank('clear', 2, 2),
    ],
  },
  {
    name: 'the pipe of the floor sink is not known',
    plan: below(null),
    expect: [
      { verdict: 'ask', part: 'branch', subjects: ['floor-drain'], measured: null, asks: 'room.floorDrains.0.waste.bore' },
      outlet('clear', 2, 2),
      tank('clear', 2, 2),
    ],
  },
  {
    name: 'a waste pipe of 1½ in',
    plan: pipe(1.5),
    expect: [
      outlet('stop', 1.5, 2, 'The waste pipe of the machine is 1 ½″, its outlet 2″. Take a pipe as wide as the outlet.'),
      tank('watch', 1.5, 2, 'The waste pipe of the machine is 1 ½″; for its tank an old city code wants 2″. Ask the local authority.'),
      branch('clear', 4, 2),
    ],
  },
  {
    name: 'the waste pipe is not known',
    plan: hookedPlan({ drainBore: null }),
    expect: [
      { verdict: 'ask', part: 'outlet', subjects: ['machine'], measured: null, asks: 'machines.0.hookUp.drainBore' },
      { verdict: 'ask', part: 'tank', subjects: ['machine'], measured: null, asks: 'machines.0.hookUp.drainBore' },
      branch('clear', 4, 2),
    ],
  },
  { name: '30 gal on 2 in', plan: holding(30, 2), expect: [branch('clear', 4, 2), outlet('clear', 2, 2), tank('clear', 2, 2)] },
  { name: '31 gal on 2 in', plan: holding(31, 2), expect: [tank('watch', 2, 3), branch('clear', 4, 2), outlet('clear', 2, 2)] },
  { name: '100 gal on 3 in', plan: holding(100, 3), expect: [branch('clear', 4, 2), outlet('clear', 3, 2), tank('clear', 3, 3)] },
  {
    name: '101 gal are beyond the table',
    plan: holding(101, 3),
    expect: [{ verdict: 'ask', part: 'tank', subjects: ['machine'], measured: null }, branch('clear', 4, 2), outlet('clear', 3, 2)],
  },
  {
    name: 'no tank',
    plan: hookedSheetPlan({ tank: null }),
    expect: [branch('clear', 4, 2), outlet('clear', 2, 2), tank('clear', 2, 2)],
  },
  {
    name: 'a sheet that gives its drain no size',
    plan: hookedSheetPlan({ connections: [] }),
    expect: [branch('clear', 4, 2), tank('clear', 2, 2)],
  },
  {
    name: 'a floor sink without a trap, over an air gap',
    plan: linePlan({}, (plan) => floorSink(plan, { trapped: false })),
    expect: [
      {
        part: 'trap',
        subjects: ['floor-drain'],
        verdict: 'stop',
        measured: false,
        limit: true,
        says: 'The floor drain has no trap, and the air of the sewer comes into the room. Have a plumber set one below it, and keep it filled.',
      },
      branch('clear', 4, 2),
      outlet('clear', 2, 2),
      tank('clear', 2, 2),
    ],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
