import { compute, type FigureReading, type FigureRule, noteOf } from '../../../rules';
import type { Line, PlacedTable, Scene } from '../../../scene';
import { racksOnTable, racksOnTableRecord, type TableRacksInputs } from '../formulas/racksOnTable';

export const rule: FigureRule = {
  id: 'racks-on-landing',
  order: 40,
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
      ...noteOf(pitchNote(inputs), part === 'after' ? PLACES : null),
    },
  ];
}

/** Racks slide 20½ in square between guides 20 in apart (UFGS 11400A 2.4.2.2): the other count, where it is another. */
function pitchNote({ lengthM, pitchM }: TableRacksInputs): string | null {
  const [here, other] = [pitchM, SLIDE_PITCH].map((pitch) => racksOnTable({ lengthM, pitchM: pitch }));
  if (!here?.ok || !other?.ok || Math.abs(pitchM - SLIDE_PITCH) < 1e-4) return null;
  return here.value === other.value
    ? 'As many with 20½ in (521 mm) for each, the size of a rack slide.'
    : `${other.value} with 20½ in (521 mm) for each, the size of a rack slide.`;
}

/** In metres. */
const SLIDE_PITCH = 0.5207;

/** Its letter of plan review. */
const PLACES = 'One city (Orono MN, plan review of 6 April 2000) asks for 3 places to dry after hot water and 5 after chemicals.';
