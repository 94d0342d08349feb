import psychrolib from 'psychrolib';
import { check } from '../../../../src/topics/air/checks/walls-dry';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { humidityBy, moistRoom, vapourBy } from '../../../support/roomAirPlans';

const AIR = { roomExhaust: 0.2, makeUp: 0.18, outdoorC: -10, wallConductance: 0.5, ceilingConductance: 0.3 };

/** Film of 0.68 and 0.61 h·ft²·°F/Btu on the room side (from memory), in m²·K/W. */
const FILM = { wall: 0.68 * 0.1761102, ceiling: 0.61 * 0.1761102 };

/** Surface of a room of 24 °C, from the whole conductance, above the dew point by PsychroLib. */
function marginBy(part: keyof typeof FILM, conductance: number): number {
  const surface = 24 - conductance * 34 * FILM[part];
  return surface - psychrolib.GetTDewPointFromRelHum(24, humidityBy(vapourBy(0.2, 0.18)));
}

const found = (verdict: ExpectedFinding['verdict'], part: keyof typeof FILM, conductance: number): ExpectedFinding => ({
  verdict,
  part,
  subjects: ['machine'],
  measured: marginBy(part, conductance),
  within: 0.005,
  limit: 0,
});
const asks = (part: string, path: string): ExpectedFinding => ({ verdict: 'ask', part, subjects: ['machine'], measured: null, asks: path });

describeCheck(check, [
  { name: 'insulated', plan: moistRoom(AIR), expect: [found('clear', 'wall', 0.5), found('clear', 'ceiling', 0.3)] },
  {
    name: 'a bare wall sweats',
    plan: moistRoom({ ...AIR, wallConductance: 4 }),
    expect: [found('watch', 'wall', 4), found('clear', 'ceiling', 0.3)],
  },
  {
    name: 'a bare ceiling sweats',
    plan: moistRoom({ ...AIR, ceilingConductance: 5 }),
    expect: [found('watch', 'ceiling', 5), found('clear', 'wall', 0.5)],
  },
  {
    name: 'more heat than the films let pass',
    plan: moistRoom({ ...AIR, wallConductance: 9 }),
    expect: [{ verdict: 'ask', part: 'wall', subjects: ['machine'], measured: null }, found('clear', 'ceiling', 0.3)],
  },
  {
    name: 'the wall is not known',
    plan: moistRoom({ ...AIR, wallConductance: null }),
    expect: [asks('wall', 'air.wallConductance'), found('clear', 'ceiling', 0.3)],
  },
  {
    name: 'the cold outside is not known',
    plan: moistRoom({ ...AIR, outdoorC: null }),
    expect: [asks('wall', 'air.outdoorC'), asks('ceiling', 'air.outdoorC')],
  },
  {
    name: 'the height above the sea is not known',
    plan: moistRoom({ ...AIR, elevation: null }),
    expect: [asks('wall', 'air.elevation'), asks('ceiling', 'air.elevation')],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
