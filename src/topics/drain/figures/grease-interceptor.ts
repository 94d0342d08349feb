import {
  compute,
  createMessages,
  createRefusal,
  type FigureReading,
  type FigureRule,
  type NoParams,
  refuse,
  withSources,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { isWareSink } from '../../line';
import { greaseInterceptor, greaseInterceptorRecord } from '../formulas/greaseInterceptor';
import { dishMachineUnits, fixtureSource } from '../formulas/support/fixtureTable';
import { fixtureUnits as unitsOf } from './support/fixtureUnits';

export const rule: FigureRule = {
  id: 'grease-interceptor',
  order: 800,
  title: 'Grease interceptor, by the formula of one city',
  group: 'drain',
  unit: 'm3',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveReading(scene)]),
};

/** How far the figure goes. */
export interface GreaseInterceptorMessages {
  'grease-interceptor/one-city': NoParams;
}

const message = createMessages<GreaseInterceptorMessages>();

/** As if everything that washes ware in this room drained into it; by the units of an old municipal table, as far as it goes. */
function deriveReading(scene: Scene): FigureReading {
  const rows = scene.machines.map(({ sheet }) => dishMachineUnits(sheet.tank?.volume ?? 0));
  const machines = rows.reduce<number | null>((sum, row) => (sum === null || row === null ? null : sum + row), 0);
  if (machines === null) return refuse([], createRefusal(rule, 'fixture-table-ends', { mostGallons: 100 }));
  const sinks = scene.things.filter(({ thing }) => isWareSink(thing)).length;
  const preRinse = scene.plan.tables.flatMap(({ fittings }) => fittings).filter(({ kind }) => kind === 'sink').length;
  const fixtureUnits =
    machines + sinks * unitsOf('municipal-old', 'three-compartment-sink') + preRinse * unitsOf('upc', 'sink-with-food-waste');
  const answer = compute(greaseInterceptorRecord, greaseInterceptor, { fixtureUnits, machine: 'with-dish-machine' });
  const how = withSources(answer.how, fixtureSource('municipal-old'), fixtureSource('upc'));
  return { subjects: [], ...answer, how, notes: [message('grease-interceptor/one-city')] };
}
