import { rule } from '../../../../src/topics/air/figures/room-vapour';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { moistRoom, vapourBy } from '../../../support/roomAirPlans';

describeFigure(rule, [
  {
    // Balance of a ventilated room with 1230 W of latent heat (read), the air by PsychroLib.
    name: 'a tenth out of the next rooms',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }),
    expect: [{ subjects: [], value: vapourBy(0.2, 0.18), within: 1e-7, notes: 'next rooms' }],
  },
  {
    name: 'no make-up air',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0 }),
    expect: [{ subjects: [], value: vapourBy(0.2, 0), within: 1e-7 }],
  },
  {
    name: 'no air passes',
    plan: moistRoom({ roomExhaust: 0, makeUp: 0 }),
    expect: [{ subjects: [], value: null, refuses: 'airflowM3s is 0' }],
  },
  {
    name: 'the make-up air is not known',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: null }),
    expect: [{ subjects: [], value: null, asks: 'air.makeUp' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
