import type { FormulaResult } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { MM_PER_INCH, toSI } from '../../../../units';
import { ratedRate } from '../../../line';
import { FIXTURE_DEMANDS, STORAGE_SHARES } from '../../formulas/fixtureDemand';
import type { HotWaterDemandInputs } from '../../formulas/hotWaterDemand';
import type { InstantDemandInputs } from '../../formulas/instantDemand';
import { rackWater } from '../../formulas/rackWater';
import { feedOf } from './feed';
import { rinseOf } from './rinseWater';
import { bowlsOf, bowlVolume } from './sinkBowls';
import { lineFlow } from './waterLine';

/** So many of a fixture, and the hot water that each takes as a steady flow. */
export interface FixtureUse {
  units: number;
  eachM3S: number;
}

/** Inputs of the demand of so many fixtures, in a place with three meals a day. */
export const demandInputs = (fixtures: readonly FixtureUse[]): HotWaterDemandInputs => ({
  units: fixtures.map(({ units }) => units),
  eachM3S: fixtures.map(({ eachM3S }) => eachM3S),
  share: STORAGE_SHARES.heavy,
});

const COMPARTMENTS = 3;
/** A sink this long can have compartments of 24 in; the demand table knows 18 in and 24 in alone. */
const LARGE_SINK = COMPARTMENTS * 24 * MM_PER_INCH;

/**
 * Every fixture of the room that takes hot water: sprays, sinks (each bowl once an hour, by its size where that is known),
 * and machines that are fed hot, these at their rated rate.
 */
export function hotWaterFixtures(scene: Scene): FormulaResult<FixtureUse[]> {
  const uses = sinkUses(scene);
  for (const { thing } of sinksOf(scene)) {
    const found = bowlsOf(thing);
    if (!('bowls' in found)) continue;
    const volume = bowlVolume(found.bowls);
    if (!volume.ok) return volume;
    uses.push({ units: found.bowls.count, eachM3S: toSI(volume.value, 'm3/h') });
  }
  for (const placed of scene.machines.filter((machine) => feedOf(machine) === 'hot')) {
    const rated = ratedRate(placed);
    const inAnHour = rated.ok ? rackWater(rinseOf(placed, rated.value)) : rated;
    if (!inAnHour.ok) return inAnHour;
    uses.push({ units: 1, eachM3S: toSI(inAnHour.value, 'm3/h') });
  }
  return { ok: true, value: uses };
}

/** What may draw on a heater without a store at once: every sink, that of the pre-rinse too, and the rinse of each machine that is fed hot. */
export function drawnAtOnce({ plan, things, machines }: Scene): FormulaResult<InstantDemandInputs> {
  const fitted = plan.tables.flatMap(({ fittings }) => fittings).filter(({ kind }) => kind === 'sink');
  const standing = things.filter(({ thing }) => thing.kind.endsWith('sink'));
  const rinses = machines.filter((placed) => feedOf(placed) === 'hot').map(lineFlow);
  const refused = rinses.find(({ ok }) => !ok);
  if (refused?.ok === false) return refused;
  return { ok: true, value: { sinks: fitted.length + standing.length, rinsesM3S: rinses.map((rinse) => (rinse.ok ? rinse.value : 0)) } };
}

const sinksOf = ({ things }: Scene) => things.filter(({ thing }) => thing.kind === 'three-compartment-sink');

/** By the demand table: sprays, hand sinks, and sinks whose bowls are not known. */
function sinkUses(scene: Scene): FixtureUse[] {
  const { things, plan } = scene;
  const sinks = sinksOf(scene)
    .map(({ thing }) => thing)
    .filter((thing) => !('bowls' in bowlsOf(thing)));
  const large = sinks.filter(({ width }) => width >= LARGE_SINK).length;
  const sprays = plan.tables.flatMap(({ fittings }) => fittings).filter((fitting) => fitting.kind === 'sink' && fitting.spray);
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
