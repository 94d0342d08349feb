import { racksOnTable, racksOnTableRecord } from '../../engineering';
import type { Line, PlacedTable, Scene } from '../../scene';
import { compute } from '../compute';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'racks-on-landing',
  title: 'Racks that find room',
  group: 'capacity',
  unit: 'count',
  derive: (scene) =>
    scene.lines.flatMap((line) => [
      ...deriveLanding(scene, line, line.soiled, 'before'),
      ...deriveLanding(scene, line, line.clean, 'after'),
    ]),
};

function deriveLanding({ plan }: Scene, line: Line, table: PlacedTable | null, part: 'before' | 'after'): FigureReading[] {
  const length = line.stations.find(({ kind }) => kind === (part === 'before' ? 'soiled-landing' : 'clean-landing'))?.length ?? null;
  if (table === null || length === null) return [];
  const inputs = { lengthM: length / 1000, pitchM: plan.settings.rackPitch / 1000 };
  return [
    {
      part,
      subjects: [table.table.id],
      ...compute(racksOnTableRecord, racksOnTable, inputs),
      ...(part === 'after' ? { note: PLACES } : {}),
    },
  ];
}

/** W-F17. */
const PLACES = 'One city (Orono MN, plan review of 6 April 2000) asks for 3 places to dry after hot water and 5 after chemicals.';
