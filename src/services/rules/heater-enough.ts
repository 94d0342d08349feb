import { areaPlace, type Check, type Measurement } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import type { Scene } from '../../scene';
import { isOver } from '../support/compare';
import { holdReading } from '../support/holdReading';

export const check: Check = {
  id: 'heater-enough',
  title: 'The water heater is large enough',
  group: 'heat',
  unit: 'W',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Monterey County CA, form PC-HWH; San Joaquin County CA, form EHD 16-01',
    section: 'demand of the fixtures by the county directors’ table, less 0.7 of the store over a peak of 2 h',
    confidence: 'read',
  },
  why: 'When machine, sinks and spray draw at once, a heater that is too small lets the water cool just when the most racks come. Other rooms on the same heater come on top. Licensed trades size and fit it by local code.',
  measure: (scene) => readingsOf(scene, 'heater-needed').map((reading) => measureHeater(scene, reading)),
};

function measureHeater({ plan, machines, things }: Scene, reading: FigureReading): Measurement {
  const power = plan.pipes.heaterPower;
  const ask = { input: 'power of the water heater', path: ['pipes', 'heaterPower'] };
  const isAsked = power === null && reading.ask === undefined && reading.value !== null;
  return holdReading(isAsked ? { ...reading, value: null, ask } : reading, {
    place: areaPlace(
      ...machines.map(({ footprint }) => footprint),
      ...things.filter(({ thing }) => thing.kind.endsWith('sink')).map(({ polygon }) => polygon),
    ),
    name: 'whether the water heater is large enough',
    limit: power,
    say: (value, f) =>
      isOver(value, power ?? 0)
        ? `In the peak this room needs a water heater of ${f.power(value)} and has ${f.power(power ?? 0)}: have a larger heater or more hot water in store.`
        : `In the peak this room needs a water heater of ${f.power(value)} and has ${f.power(power ?? 0)}.`,
  });
}
