import { rule } from '../../../../src/topics/air/figures/room-temperature-steady';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { moistRoom, temperatureBy } from '../../../support/roomAirPlans';

const open = (asks: string) => [{ subjects: [], value: null, asks }];

// Sensible heat of an airstream, 1.08 Q Δt; the air by PsychroLib.
describeFigure(rule, [
  {
    name: '560 W into 0.2 m³/s: about 2.3 K above its supply',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }),
    expect: [{ subjects: [], value: temperatureBy(0.2, 0.18), within: 1e-4, notes: /no cooling/ }],
  },
  {
    name: 'half the air, twice as warm',
    plan: moistRoom({ roomExhaust: 0.1, makeUp: 0.09 }),
    expect: [{ subjects: [], value: temperatureBy(0.1, 0.09), within: 1e-4 }],
  },
  {
    name: 'no air passes',
    plan: moistRoom({ roomExhaust: 0, makeUp: 0 }),
    expect: [{ subjects: [], value: null, refuses: 'airflowM3s is 0' }],
  },
  { name: 'the make-up air is not known', plan: moistRoom({ roomExhaust: 0.2, makeUp: null }), expect: open('air.makeUp') },
  { name: 'its temperature is not known', plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18, makeUpC: null }), expect: open('air.makeUpC') },
  {
    name: 'pieces a rack not known',
    plan: moistRoom({ roomExhaust: 0.2, makeUp: 0.18 }, ({ demand }) => void (demand.piecesPerRack = null), 'silent-recovery'),
    expect: open('demand.piecesPerRack'),
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
