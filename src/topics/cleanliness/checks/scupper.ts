import { pathOf } from '../../../plan';
import { type Check, createMessages, type Measurement, type Name, type NoParams, nameTable, tablePlace } from '../../../rules';
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

/** What is said of where the water of a table goes. */
export interface ScupperMessages {
  'scupper/not-needed': { table: Name };
  'scupper/unknown': { table: Name };
  'scupper/ask-scupper': NoParams;
  'scupper/drawn-off': { table: Name };
  'scupper/into-machine': { table: Name };
}

const say = createMessages<ScupperMessages>();

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { table } = placed;
  const said = { table: nameTable(scene, placed) };
  const about: Pick<Measurement, 'subjects' | 'place' | 'limit' | 'severity'> = {
    subjects: [table.id],
    place: tablePlace(placed),
    limit: true,
    severity: 'watch',
  };
  if (isDryBefore(placed)) {
    return { value: true, message: say('scupper/not-needed', said), ...about };
  }
  const { scupper } = table.make;
  return {
    value: scupper,
    message: scupper === null ? say('scupper/unknown', said) : say(scupper ? 'scupper/drawn-off' : 'scupper/into-machine', said),
    ...about,
    ...(scupper === null
      ? { ask: { input: say('scupper/ask-scupper'), path: pathOf(scene.plan, 'tables', table.id, 'make', 'scupper') } }
      : {}),
  };
}

/** All its water is known to end in a sink, none at the joint, and none stands. */
const isDryBefore = ({ water }: PlacedTable) => water !== null && water.stretches.every(({ runsTo }) => runsTo === 'sink');
