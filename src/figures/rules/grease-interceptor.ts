import { type FixtureCode, findFixtureValue, fixtureSource, greaseInterceptor, greaseInterceptorRecord } from '../../engineering';
import type { Appliance, Scene } from '../../scene';
import { toSI } from '../../units';
import { compute, withSources } from '../compute';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'grease-interceptor',
  title: 'Grease interceptor, by the formula of one city',
  group: 'drain',
  unit: 'm3',
  derive: (scene) => (scene.appliances.length === 0 ? [] : [deriveReading(scene)]),
};

/** As if everything that washes ware in this room drained into it; by the units of an old municipal table, as far as it goes. */
function deriveReading(scene: Scene): FigureReading {
  const machines = scene.appliances.reduce((sum, placed) => sum + unitsOf('municipal-old', sizeOf(placed)), 0);
  const sinks = scene.things.filter(({ thing }) => thing.kind === 'three-compartment-sink').length;
  const preRinse = scene.plan.tables.flatMap(({ fittings }) => fittings).filter(({ kind }) => kind === 'sink').length;
  const fixtureUnits =
    machines + sinks * unitsOf('municipal-old', 'three-compartment-sink') + preRinse * unitsOf('upc', 'sink-with-food-waste');
  const answer = compute(greaseInterceptorRecord, greaseInterceptor, { fixtureUnits, machine: 'with-dish-machine' });
  const how = withSources(answer.how, fixtureSource('municipal-old'), fixtureSource('upc'));
  return { subjects: [], ...answer, how, note: NOTE };
}

const unitsOf = (code: FixtureCode, fixture: string) => findFixtureValue(code, fixture)?.units ?? Number.NaN;

/** Which row of that table a machine is, by what its tank holds. */
const sizeOf = ({ sheet: { tank } }: Appliance) =>
  (tank?.volume ?? 0) <= toSI(30, 'gal') ? 'dish-machine-to-30-gal' : 'dish-machine-to-100-gal';

const NOTE =
  'One city’s formula, with a dish machine: other places count otherwise, and some keep dish machines out of the interceptor. The local authority sizes it.';
