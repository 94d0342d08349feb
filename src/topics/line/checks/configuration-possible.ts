import {
  type Check,
  configurationWords,
  lineName,
  type Measurement,
  machineName,
  machinePlace,
  type Source,
  sentence,
} from '../../../rules';
import type { Configuration, Line, Scene } from '../../../scene';

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
    say: () => sentence(describe(scene, line)),
  };
}

function describe(scene: Scene, { configuration, soiled, machine }: Line): string {
  if (configuration.kind !== 'none') return `${lineName(scene, machine)} is ${configurationWords(configuration.kind)}.`;
  return describeReason(configuration.reason, machineName(scene, machine), soiled === null ? 'clean' : 'soiled');
}

function describeReason(reason: Extract<Configuration, { kind: 'none' }>['reason'], name: string, only: string): string {
  switch (reason) {
    case 'no-table':
      return `no table meets ${name}. Join a soiled table to one door and a clean table to another.`;
    case 'one-table':
      return `only the ${only} table meets ${name}. Join a ${only === 'soiled' ? 'clean' : 'soiled'} table to another door.`;
    case 'back':
      return `a table meets the back of ${name}, where no rack passes. Move it to the left, the right or the front.`;
    case 'same-side':
      return `two tables meet the same side of ${name}. Move one of them to another door.`;
    case 'three-sides':
      return `tables meet three sides of ${name}. Take one away: a rack goes in at one door and out at another.`;
    case 'no-door':
      return `a table meets a side of ${name} that has no door. Move it to a side with a door.`;
    case 'two-roles':
      return `the tables at ${name} are not one soiled and one clean. Give one of them the other role.`;
  }
}
