import { FIXTURE_DEMANDS, type Outcome, rackWater } from '../../engineering';
import type { Scene } from '../../scene';
import { MM_PER_INCH, toSI } from '../../units';
import { ratedRate } from './rackCycle';
import { rinseOf } from './rinseWater';

/** So many of a fixture, and the hot water that each takes as a steady flow. */
export interface FixtureUse {
  units: number;
  eachM3S: number;
}

const COMPARTMENTS = 3;
/** A sink this long can have compartments of 24 in; the demand table knows 18 in and 24 in alone. */
const LARGE_SINK = COMPARTMENTS * 24 * MM_PER_INCH;

/** Every fixture of the room that takes hot water: sinks, sprays, and machines that are fed hot, these at their rated rate. */
export function hotWaterFixtures(scene: Scene): Outcome<FixtureUse[]> {
  const uses = sinkUses(scene);
  for (const placed of scene.machines.filter(({ sheet }) => sheet.waterFeed === 'hot')) {
    const rated = ratedRate(placed);
    const inAnHour = rated.ok ? rackWater(rinseOf(placed, rated.value)) : rated;
    if (!inAnHour.ok) return inAnHour;
    uses.push({ units: 1, eachM3S: toSI(inAnHour.value, 'm3/h') });
  }
  return { ok: true, value: uses };
}

function sinkUses({ things, tables }: Scene): FixtureUse[] {
  const sinks = things.map(({ thing }) => thing).filter(({ kind }) => kind === 'three-compartment-sink');
  const large = sinks.filter(({ width }) => width >= LARGE_SINK).length;
  const sprays = tables.flatMap(({ fittings }) => fittings).filter(({ fitting }) => fitting.kind === 'sink' && fitting.spray);
  return [
    countOf('pre-rinse', sprays.length),
    countOf('utensil-sink-large', large * COMPARTMENTS),
    countOf('utensil-sink-small', (sinks.length - large) * COMPARTMENTS),
    countOf('hand-sink', things.filter(({ thing }) => thing.kind === 'hand-sink').length),
  ].filter(({ units }) => units > 0);
}

const countOf = (id: string, units: number): FixtureUse => ({
  units,
  eachM3S: FIXTURE_DEMANDS.find((one) => one.id === id)?.demandM3S ?? Number.NaN,
});
