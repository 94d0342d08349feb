import { check } from '../../../../src/topics/duct/checks/fan-on-run';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runOf, setFan } from '../../../support/roomPlan';

/** The run of the line is 1358.5 long, its fan at 350, the cord's way 1800; 10 ft (3048) of cord come with the machine. */
const subjects = ['run', 'machine'];
const place: ExpectedFinding = { part: 'place', verdict: 'clear', subjects, measured: true, limit: true };
const cord: ExpectedFinding = { part: 'cord', verdict: 'clear', subjects, measured: 1800, limit: 3048 };
const hole = { part: 'drain-hole', subjects, limit: true } as const;

const fan = (change: Parameters<typeof setFan>[1]) => linePlan({ family: 'direct-vent' }, (plan) => setFan(plan, change));

/** A run that goes up and 4 m to the left, with its fan 3500 from the collar and no cord way. */
const farFan = linePlan({ family: 'direct-vent' }, (plan) => {
  runOf(plan).points = [
    { x: 4318.5, y: 288.5, z: 2630 },
    { x: 318.5, y: 288.5, z: 2630 },
  ];
  setFan(plan, { at: 3500, cordWay: null });
});

describeCheck(check, [
  {
    name: 'as the line has it',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [
      { ...place, says: 'The fan sits 1′ 1 ¾″ from the collar; the run is 6′ 5 ⅛″ long.' },
      { ...cord, says: 'The cord’s way is 5′ 10 ⅞″; 10′ 0″ of cord come with the machine.' },
    ],
  },
  { name: 'on the machine', plan: fan({ at: 0 }), expect: [place, cord] },
  { name: 'at the very end', plan: fan({ at: 1358.5 }), expect: [place, cord] },
  {
    name: 'beyond the end',
    plan: fan({ at: 2000 }),
    expect: [
      {
        ...place,
        verdict: 'stop',
        measured: false,
        repairs: ['fan-onto-run'],
        says: 'The fan is drawn 6′ 6 ¾″ from the collar, and the run is only 6′ 5 ⅛″ long. Move it onto the run.',
      },
      cord,
    ],
  },
  {
    name: 'no fan',
    plan: linePlan({ family: 'direct-vent' }, (plan) => {
      runOf(plan).fan = null;
    }),
    expect: [
      {
        ...place,
        verdict: 'ask',
        measured: null,
        asks: 'runs.0.fan',
        says: 'The run has no fan yet. Place it on the machine or above the ceiling.',
      },
    ],
  },
  {
    name: 'on its side, hole not known',
    plan: fan({ attitude: 'on-side', drainHole: null }),
    expect: [{ ...hole, verdict: 'ask', measured: null, asks: 'runs.0.fan.drainHole' }, place, cord],
  },
  {
    name: 'on its side without a hole',
    plan: fan({ attitude: 'on-side', drainHole: false }),
    expect: [{ ...hole, verdict: 'stop', measured: false, repairs: ['make-drain-hole'] }, place, cord],
  },
  {
    name: 'on its side with a hole',
    plan: fan({ attitude: 'on-side', drainHole: true }),
    expect: [
      place,
      { ...hole, verdict: 'clear', measured: true, says: 'The fan lies on its side and has a drain hole at its bottom.' },
      cord,
    ],
  },
  { name: 'upright needs no hole', plan: fan({ drainHole: false }), expect: [place, cord] },
  { name: 'a way as long as the cord', plan: fan({ cordWay: 3048 }), expect: [place, { ...cord, measured: 3048 }] },
  {
    name: 'a way 2 ft longer',
    plan: fan({ cordWay: 3657.6 }),
    expect: [
      {
        ...cord,
        verdict: 'watch',
        measured: 3657.6,
        says: 'The cord’s way is 12′ 0″ and the cord 10′ 0″: 2′ 0″ short. Bring the fan nearer, or plan field wiring. Field wiring belongs to a licensed electrician.',
      },
      place,
    ],
  },
  {
    // From the vent signal at 4427, 178.5, 480 to the fan at 4318.5, 288.5, 2280.
    name: 'a way that is not known, near enough in a straight line',
    plan: fan({ cordWay: null }),
    expect: [
      {
        ...cord,
        verdict: 'ask',
        measured: null,
        asks: 'runs.0.fan.cordWay',
        says: 'The way of the fan’s cord is not known. In a straight line it is 5′ 11 ⅛″; the cord is 10′ 0″. Measure it as the cord will lie.',
      },
      place,
    ],
  },
  {
    // The fan is 700 up and 2800 along: at 1518.5, 288.5, 2630.
    name: 'a way that is not known and too long even in a straight line',
    plan: farFan,
    expect: [{ ...cord, verdict: 'watch', measured: Math.hypot(2908.5, 110, 2150) }, place],
  },
  { name: 'a machine under a hood', plan: linePlan(), expect: [] },
]);
