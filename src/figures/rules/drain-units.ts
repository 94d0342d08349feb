import { fixtureUnitsOfFlow, fixtureUnitsOfFlowRecord } from '../../engineering';
import type { Codes } from '../../plan';
import type { Appliance, Scene } from '../../scene';
import { compute } from '../compute';
import { askSheet } from '../support/askSheet';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'drain-units',
  title: 'Fixture units of the machine’s drain',
  group: 'drain',
  unit: 'count',
  derive: (scene) => scene.appliances.flatMap((placed) => deriveReadings(scene, placed)),
};

/** Every code beside the others; the one that counts for this plan says so. */
function deriveReadings(scene: Scene, placed: Appliance): FigureReading[] {
  const flowM3S = placed.sheet.drainFlow;
  if (flowM3S === null) return [askSheet(scene, placed, 'flow of the drain while the machine empties', 'drainFlow')];
  const subjects = [placed.machine.id];
  const readings = PARTS.map(({ part, note }) => ({
    part,
    subjects,
    ...compute(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow, { flowM3S, rule: part }),
    note: `${note} ${AS_CONTINUOUS}`,
  }));
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits);
  return readings.map((reading) =>
    reading === governing ? { ...reading, note: `${reading.note} ${governs(scene.plan.codes)}` } : reading,
  );
}

/** The code of the plan; of several, the first of those that count most. */
export function findGoverningUnits<R extends FigureReading>(readings: readonly R[], code: Codes['drainUnits']): R | undefined {
  if (code !== 'strictest') return readings.find(({ part }) => part === code);
  return readings.reduce<R | undefined>(
    (most, row) => (most === undefined || (row.value ?? 0) > (most.value ?? 0) ? row : most),
    undefined,
  );
}

const governs = ({ drainUnits }: Codes) =>
  drainUnits === 'strictest' ? 'Governs: none counts more.' : 'Governs: the plan’s own choice of code.';

const PARTS = [
  { part: 'ipc', note: 'International code: 2 units a gallon a minute.' },
  { part: 'upc', note: 'Uniform code: 2 units a gallon a minute, from memory.' },
  { part: 'chicago', note: 'Chicago: 1 unit a gallon a minute.' },
] as const;

const AS_CONTINUOUS =
  'Counted as a continuous or semi-continuous flow; whether a machine that empties now and then is one, the local authority says.';
