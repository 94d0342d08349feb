import { compute, createMessages, type FigureReading, type FigureRule, type Message, type NoParams, notesOf } from '../../../rules';
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

/** What is said beside the racks. */
export interface RacksOnLandingMessages {
  'racks-on-landing/as-many-on-slide': NoParams;
  'racks-on-landing/on-slide': { racks: number };
  'racks-on-landing/places-to-dry': NoParams;
}

const say = createMessages<RacksOnLandingMessages>();

function deriveLanding({ plan }: Scene, line: Line, table: PlacedTable | null, part: 'before' | 'after'): FigureReading[] {
  const length = line.stations.find(({ kind }) => kind === (part === 'before' ? 'soiled-landing' : 'clean-landing'))?.length ?? null;
  if (table === null || length === null) return [];
  const inputs = { lengthM: length / 1000, pitchM: plan.settings.rackPitch / 1000 };
  return [
    {
      part,
      subjects: [table.table.id],
      ...compute(racksOnTableRecord, racksOnTable, inputs),
      ...notesOf(pitchNote(inputs), part === 'after' ? say('racks-on-landing/places-to-dry') : null),
    },
  ];
}

/** Racks slide 20½ in square between guides 20 in apart (UFGS 11400A 2.4.2.2): the other count, where it is another. */
function pitchNote({ lengthM, pitchM }: TableRacksInputs): Message | null {
  const [here, other] = [pitchM, SLIDE_PITCH].map((pitch) => racksOnTable({ lengthM, pitchM: pitch }));
  if (!here?.ok || !other?.ok || Math.abs(pitchM - SLIDE_PITCH) < 1e-4) return null;
  return here.value === other.value ? say('racks-on-landing/as-many-on-slide') : say('racks-on-landing/on-slide', { racks: other.value });
}

/** In metres. */
const SLIDE_PITCH = 0.5207;
