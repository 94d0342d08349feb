import psychrolib from 'psychrolib';
import { rule } from '../../../../src/topics/air/figures/surface-margin';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { humidityBy, moistRoom, vapourBy } from '../../../support/roomAirPlans';

const AIR = { roomExhaust: 0.2, makeUp: 0.18, outdoorC: -10, wallConductance: 0.5, ceilingConductance: 0.3 };
/** h·ft²·°F/Btu in m²·K/W. */
const R = 0.1761102;

/** The surface from the whole conductance and its film (from memory), the dew point by PsychroLib. */
const marginBy = (conductance: number, film: number) =>
  24 - conductance * 34 * film * R - psychrolib.GetTDewPointFromRelHum(24, humidityBy(vapourBy(0.2, 0.18)));
const row = (part: string, value: number) => ({ part, subjects: [], value, within: 0.005 });
const wall = row('wall', marginBy(0.5, 0.68));
const ceiling = row('ceiling', marginBy(0.3, 0.61));

describeFigure(rule, [
  { name: 'insulated', plan: moistRoom(AIR), expect: [wall, ceiling] },
  { name: 'a bare wall', plan: moistRoom({ ...AIR, wallConductance: 5 }), expect: [row('wall', marginBy(5, 0.68)), ceiling] },
  {
    name: 'more heat than both films let pass',
    plan: moistRoom({ ...AIR, ceilingConductance: 9 }),
    expect: [wall, { part: 'ceiling', subjects: [], value: null, refuses: 'wallR is -' }],
  },
  {
    name: 'the ceiling is not known',
    plan: moistRoom({ ...AIR, ceilingConductance: null }),
    expect: [wall, { part: 'ceiling', subjects: [], value: null, asks: 'air.ceilingConductance' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
