import { check } from '../../../../src/topics/power/checks/signals-drive-contactors';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';

const subjects = ['machine'];
const found = (part: string, verdict: 'clear' | 'stop' = 'clear', says?: string): ExpectedFinding => ({
  verdict,
  part,
  subjects,
  measured: verdict === 'clear',
  limit: true,
  repairs: verdict === 'stop' ? ['set-contactor'] : [],
  ...(says === undefined ? {} : { says }),
});

/** Common practice: the outputs for vent, rinse aid and detergent are 120 V signals, each for a coil. */
describeCheck(check, [
  { name: 'contactors', plan: hookedPlan({}), expect: [found('vent'), found('rinse-aid'), found('detergent')] },
  {
    name: 'the fan on the signal',
    plan: hookedPlan({ ventSignal: 'motor' }),
    expect: [
      found(
        'vent',
        'stop',
        'The vent signal of the machine drives a fan directly; it can carry a coil alone. Have a licensed electrician set a contactor between.',
      ),
      found('rinse-aid'),
      found('detergent'),
    ],
  },
  {
    name: 'both feeders on theirs',
    plan: hookedPlan({ rinseAidSignal: 'motor', detergentSignal: 'motor', ventSignal: 'nothing' }),
    expect: [
      found('rinse-aid', 'stop'),
      found('detergent', 'stop'),
      found('vent', 'clear', 'The vent signal of the machine drives nothing.'),
    ],
  },
  {
    name: 'what one drives is not known',
    plan: hookedPlan({ detergentSignal: null }),
    expect: [
      {
        verdict: 'ask',
        part: 'detergent',
        subjects,
        measured: null,
        asks: 'machines.0.hookUp.detergentSignal',
        says: 'Say what the detergent signal of the machine drives: a contactor, a motor or nothing.',
      },
      found('vent'),
      found('rinse-aid'),
    ],
  },
  { name: 'a data sheet without signals', plan: hookedSheetPlan({ connections: [] }), expect: [] },
]);
