import {
  type Check,
  createMessages,
  type Measurement,
  type Message,
  machinePlace,
  type Name,
  nameLine,
  nameMachine,
  type Source,
} from '../../../rules';
import type { Line, Scene } from '../../../scene';

export const check: Check = {
  id: 'configuration-possible',
  order: 10,
  title: 'The tables make a configuration',
  unit: 'word',
  relation: 'equals',
  source: {
    kind: 'geometry',
    text: 'A rack goes in at one door and out at another: left and right is straight through, one of them and the front is a corner.',
  },
  why: 'A door-type machine works straight through or around a corner. Any other arrangement of tables cannot pass a rack. California wants a drainboard where soiled ware goes in and one where clean ware comes out.',
  measure: (scene) => scene.lines.map((line) => measureLine(scene, line)),
};

/** What the tables make, or why they make nothing. */
export interface ConfigurationPossibleMessages {
  'configuration-possible/possible': { line: Name; configuration: 'straight' | 'corner' };
  'configuration-possible/no-table': { machine: Name };
  'configuration-possible/one-table': { machine: Name; only: 'soiled' | 'clean' };
  'configuration-possible/back': { machine: Name };
  'configuration-possible/same-side': { machine: Name };
  'configuration-possible/three-sides': { machine: Name };
  'configuration-possible/no-door': { machine: Name };
  'configuration-possible/two-roles': { machine: Name };
}

const say = createMessages<ConfigurationPossibleMessages>();

/** A machine that stands alone, or has one table, lacks a board. */
const BOARDS: Source = {
  kind: 'published',
  document: 'California Health and Safety Code',
  section: '§114103(a): two integral drainboards, one at the soiled entry and one at the clean exit',
  confidence: 'read',
};

function measureLine(scene: Scene, line: Line): Measurement {
  const { configuration } = line;
  const { kind } = configuration;
  const lacksBoard = configuration.kind === 'none' && (configuration.reason === 'no-table' || configuration.reason === 'one-table');
  return {
    subjects: [line.machine.machine.id],
    place: machinePlace(line.machine),
    value: kind,
    limit: kind === 'none' ? 'straight or corner' : kind,
    ...(lacksBoard ? { source: BOARDS } : {}),
    message: describe(scene, line),
  };
}

function describe(scene: Scene, { configuration, soiled, machine: placed }: Line): Message {
  const { kind } = configuration;
  if (kind !== 'none') return say('configuration-possible/possible', { line: nameLine(scene, placed), configuration: kind });
  const machine = nameMachine(scene, placed);
  return configuration.reason === 'one-table'
    ? say('configuration-possible/one-table', { machine, only: soiled === null ? 'clean' : 'soiled' })
    : say(`configuration-possible/${configuration.reason}`, { machine });
}
