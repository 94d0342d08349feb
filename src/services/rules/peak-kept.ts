import { type Check, type Measurement, machinesPlace } from '../../checks';
import { PRACTICAL_SHARE } from '../../engineering';
import { type FigureReading, readingsOf } from '../../figures';
import type { Scene } from '../../scene';
import { formatNumber } from '../../units';
import { holdReading } from '../support/holdReading';

export const check: Check = {
  id: 'peak-kept',
  title: 'The machines keep up with the peak',
  group: 'capacity',
  unit: '1/h',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFC 4-740-12AN',
    section: '3-4.10 B, just faster than the ware comes back; that 0.70 of the rate is kept in practice is from memory',
    confidence: 'read',
  },
  why: 'A machine that is slower than the ware that comes back fills the tables and then the floor. The wait for the booster counts.',
  measure: (scene) => (scene.appliances.length === 0 ? [] : [measurePeak(scene)]),
};

/** All machines together against the racks that come back; below the share that practice keeps it is a watch. */
function measurePeak(scene: Scene): Measurement {
  const needed = readingsOf(scene, 'racks-needed-in-peak').find(({ part, ask }) => part === 'ware' || ask !== undefined);
  const rate = sumRates(scene);
  const missing = needed?.value == null ? needed : undefined;
  const limit = needed?.value ?? null;
  return holdReading(missing ?? rate, {
    subjects: scene.appliances.map(({ machine }) => machine.id),
    place: machinesPlace(scene),
    name: 'whether the machines keep up with the peak',
    limit,
    ...(limit === null ? {} : { watchLimit: limit / PRACTICAL_SHARE }),
    say: (value) => sayRate(value, limit ?? 0),
  });
}

/** The rate of all machines, with the wait for their boosters where they have one to wait for. */
function sumRates(scene: Scene): FigureReading {
  const held = readingsOf(scene, 'real-racks-per-hour');
  const rated = readingsOf(scene, 'racks-per-hour');
  const rates = scene.appliances.map(({ machine }) => {
    const of = (readings: readonly FigureReading[]) => readings.find(({ subjects }) => subjects[0] === machine.id);
    return of(held) ?? of(rated);
  });
  const unknown = rates.find((rate) => rate?.value == null);
  if (unknown !== undefined) return unknown;
  return { subjects: [], value: rates.reduce((sum, rate) => sum + (rate?.value ?? 0), 0), how: null };
}

function sayRate(rate: number, needed: number): string {
  const [can, must] = [formatNumber(rate, 1), formatNumber(needed, 1)];
  if (rate < needed)
    return `In the peak ${must} racks an hour come back and the machine does ${can}: take a faster machine, a second one, or a longer peak.`;
  if (rate * PRACTICAL_SHARE < needed)
    return `In the peak ${must} racks an hour come back; the machine does ${can}, and in practice about 0.70 of that. Have room for racks that wait.`;
  return `In the peak ${must} racks an hour come back; the machine does ${can}, enough also at 0.70 of it.`;
}
