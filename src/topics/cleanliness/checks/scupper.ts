import { pathOf } from '../../../plan';
import { type Check, type Measurement, sentence, tableName, tablePlace } from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';

export const check: Check = {
  id: 'scupper',
  order: 830,
  title: 'Soil water is kept out of the wash tank',
  group: 'sanitary',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'A university’s design standard, Division 13',
    section: 'the soiled table does not drain into the wash compartment; its flat part has a scupper',
    confidence: 'secondary',
  },
  why: 'Both tables fall toward the machine. What is sprayed off soiled ware then runs there too, and fouls the wash water; a scupper, a drain of its own across the deck before the machine, takes it. It is one institution’s rule and good practice elsewhere.',
  measure: (scene) =>
    scene.tables.filter(({ table, machine }) => machine !== null && table.role === 'soiled').map((table) => measureTable(scene, table)),
};

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { table } = placed;
  const name = tableName(scene, placed);
  const about: Pick<Measurement, 'subjects' | 'place' | 'limit' | 'severity'> = {
    subjects: [table.id],
    place: tablePlace(placed),
    limit: true,
    severity: 'watch',
  };
  if (isDryBefore(placed)) {
    return { value: true, say: () => sentence(`the water of ${name} runs into its sink, none to the machine.`), ...about };
  }
  const { scupper } = table.make;
  return {
    value: scupper,
    say: () => {
      if (scupper === null) return `Say whether ${name} has a scupper before the machine.`;
      return sentence(
        scupper
          ? `${name} has a scupper before the machine, which takes its soil water.`
          : `${name} drains its soil water into the machine. Have a scupper made across the deck before it, with a drain of its own.`,
      );
    },
    ...about,
    ...(scupper === null
      ? { ask: { input: 'scupper before the machine, or none', path: pathOf(scene.plan, 'tables', table.id, 'make', 'scupper') } }
      : {}),
  };
}

/** All its water is known to end in a sink, none at the joint, and none stands. */
const isDryBefore = ({ water }: PlacedTable) => water !== null && water.stretches.every(({ runsTo }) => runsTo === 'sink');
