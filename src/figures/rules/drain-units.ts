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

/** Every code beside the others, a steady flow and one that comes and goes; the one that counts for this plan says so. */
function deriveReadings(scene: Scene, placed: Appliance): FigureReading[] {
  const flowM3S = placed.sheet.drainFlow;
  if (flowM3S === null) return [askSheet(scene, placed, 'flow of the drain while the machine empties', 'drainFlow')];
  const subjects = [placed.machine.id];
  const readings = PARTS.map(({ part, note }) => ({
    part,
    subjects,
    ...compute(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow, { flowM3S, rule: part }),
    note,
  }));
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits);
  return readings.map((reading) =>
    reading === governing ? { ...reading, note: `${reading.note} ${governs(scene.plan.codes)}` } : reading,
  );
}

/** The code of the plan; of several, the first of those that count most. */
export function findGoverningUnits<R extends FigureReading>(readings: readonly R[], code: Codes['drainUnits']): R | undefined {
  if (code !== 'strictest') return readings.find(({ part }) => part === code);
  const codes = readings.filter(({ part }) => part !== 'upc-intermittent' && part !== 'cubic-foot');
  return codes.reduce<R | undefined>((most, row) => (most === undefined || (row.value ?? 0) > (most.value ?? 0) ? row : most), undefined);
}

const governs = ({ drainUnits }: Codes) =>
  drainUnits === 'strictest' ? 'Governs: none counts more.' : 'Governs: the plan’s own choice of code.';

const AS_CONTINUOUS =
  'Counted as a continuous or semi-continuous flow; whether a machine that empties now and then is one, the local authority says.';

/** The first three are the codes that a plan may choose; the others are shown beside them and never count. */
const PARTS = [
  { part: 'ipc', note: `International code: 2 units a gallon a minute. ${AS_CONTINUOUS}` },
  { part: 'upc', note: `Uniform code: 2 units a gallon a minute, from memory. ${AS_CONTINUOUS}` },
  { part: 'chicago', note: `Chicago: 1 unit a gallon a minute. ${AS_CONTINUOUS}` },
  {
    part: 'upc-intermittent',
    note: 'Beside it, from memory: as a flow that only comes and goes the Uniform code counts 1 unit to 7.5 gpm and 2 units to 15 gpm.',
  },
  {
    part: 'cubic-foot',
    note: 'Beside it: by the first definition a unit is a cubic foot a minute, 7.5 gpm, as the code of Redwood City still has it.',
  },
] as const;
