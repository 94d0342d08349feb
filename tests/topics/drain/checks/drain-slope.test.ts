import { check } from '../../../../src/topics/drain/checks/drain-slope';
import { describeCheck } from '../../../support/cases';
import { floorSink, hookedPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const laid = (inches: number, perFoot: number) => hookedPlan({ waste: 'direct', drainBore: inches * 25.4, drainSlope: perFoot / 12 });
const found = (verdict: 'clear' | 'stop', perFoot: number, least: number) => ({
  verdict,
  subjects,
  measured: perFoot / 12,
  limit: least / 12,
});
const receptor = ['machine', 'floor-drain'];
const pipe = (verdict: 'clear' | 'stop', perFoot: number) => ({ ...found(verdict, perFoot, 0.25), part: 'waste-pipe' });

/** Chicago Table 18-29-704.1 (read): ¼ in/ft to 2½ in, ⅛ from 3 to 6 in, 1/16 from 8 in. */
describeCheck(check, [
  { name: '2 in at ¼', plan: laid(2, 0.25), expect: [found('clear', 0.25, 0.25)] },
  {
    name: '2 in at ⅛',
    plan: laid(2, 0.125),
    expect: [
      {
        ...found('stop', 0.125, 0.25),
        says: 'The drain of the machine falls ⅛″ per ft; a pipe of 2″ needs ¼″ per ft. Lay it steeper, or have a plumber take a larger one.',
      },
    ],
  },
  { name: '3 in at ⅛', plan: laid(3, 0.125), expect: [found('clear', 0.125, 0.125)] },
  { name: 'cast iron of 2.96 in at ⅛', plan: laid(2.96, 0.125), expect: [found('clear', 0.125, 0.125)] },
  { name: 'a bore between 2½ and 3 in takes the steeper', plan: laid(2.8, 0.125), expect: [found('stop', 0.125, 0.25)] },
  { name: '4 in at 1/16', plan: laid(4, 0.0625), expect: [found('stop', 0.0625, 0.125)] },
  { name: '8 in at 1/16', plan: laid(8, 0.0625), expect: [found('clear', 0.0625, 0.0625)] },
  { name: 'level', plan: laid(4, 0), expect: [found('stop', 0, 0.125)] },
  {
    name: 'connected directly, the drain is not known',
    plan: hookedPlan({ waste: 'direct', drainBore: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'connected directly, its fall is not known',
    plan: hookedPlan({ waste: 'direct', drainSlope: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  { name: 'thinner than any drain', plan: laid(1, 0.25), expect: [{ verdict: 'ask', subjects, measured: null }] },
  {
    name: 'over an air gap: the pipe of the floor sink, and the waste pipe to it',
    plan: linePlan(),
    expect: [
      {
        ...found('clear', 0.25, 0.125),
        subjects: receptor,
        says: 'The pipe of the floor drain that takes the waste of the machine falls ¼″ per ft; a pipe of 4″ needs ⅛″ per ft.',
      },
      pipe('clear', 0.25),
    ],
  },
  {
    name: 'the pipe of the floor sink falls too little',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: 1 / 192 })),
    expect: [{ ...found('stop', 0.0625, 0.125), subjects: receptor }, pipe('clear', 0.25)],
  },
  {
    name: 'the waste pipe falls too little',
    plan: hookedPlan({ drainSlope: 1 / 96 }),
    expect: [
      {
        ...pipe('stop', 0.125),
        says: 'The waste pipe of the machine falls ⅛″ per ft; a pipe of 2″ needs ¼″ per ft. Lay it steeper, or have a plumber take a larger one.',
      },
      { ...found('clear', 0.25, 0.125), subjects: receptor },
    ],
  },
  {
    name: 'over an air gap nothing is known of the pipes',
    plan: hookedPlan({ drainBore: null }, (plan) => floorSink(plan, { slope: null })),
    expect: [
      { verdict: 'ask', subjects: receptor, measured: null, asks: 'room.floorDrains.0.waste.slope' },
      { verdict: 'ask', part: 'waste-pipe', subjects, measured: null, asks: 'machines.0.hookUp.drainBore' },
    ],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        asks: 'machines.0.hookUp.waste',
        says: 'To hold the fall of its drain against the least, say the way in which the waste is connected.',
      },
    ],
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains' }],
  },
]);
