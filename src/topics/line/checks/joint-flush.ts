import type { DataSheet, Side } from '../../../catalog';
import { pathOf } from '../../../plan';
import {
  type Check,
  createMessages,
  editTable,
  holdsAtLeast as isAtLeast,
  holdsAtMost as isAtMost,
  type Measurement,
  type Name,
  nameMachine,
  nameTable,
  type Offer,
  type Repair,
  segmentPlace,
} from '../../../rules';
import type { Joint, PlacedMachine, PlacedTable, Scene } from '../../../scene';

export const check: Check = {
  id: 'joint-flush',
  order: 70,
  title: 'Tables meet the machine flush',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'data-sheet',
    text: 'Joint tolerances on the data sheet. Common practice: silicone at the front and rear corners of the joint.',
  },
  why: 'Racks catch and water runs to the floor where a table does not meet its door flush, square and in line.',
  measure: (scene) => scene.joints.flatMap((joint) => measureJoint(scene, joint)),
};

/** What is said of a joint. Lengths in mm. */
export interface JointFlushMessages {
  'joint-flush/no-door': Both & { side: Side };
  'joint-flush/overlaps': Both & { overlap: number };
  'joint-flush/closed': Both & { gap: number; most: number };
  'joint-flush/open': Both & { gap: number; most: number };
  'joint-flush/in-line': { table: Name; offset: number; most: number };
  'joint-flush/out-of-line': { table: Name; offset: number };
  'joint-flush/square': Both & { angleDeg: number; mostDeg: number };
  'joint-flush/off-square': { table: Name; angleDeg: number };
  'joint-flush/step-unknown': { table: Name };
  'joint-flush/ask-step': { table: Name };
  /** Positive: the deck of the table is higher than the track. */
  'joint-flush/level': { table: Name; step: number; most: number };
  'joint-flush/step': { table: Name; step: number };
  'joint-flush/repair-snap-flush': { table: Name };
  'joint-flush/repair-level-deck': { table: Name; step: number };
}

interface Both {
  table: Name;
  machine: Name;
}

const message = createMessages<JointFlushMessages>();

/** A joint with what it joins and what they are called. */
interface Met {
  scene: Scene;
  joint: Joint;
  table: PlacedTable;
  machine: PlacedMachine;
  tolerance: DataSheet['joint'];
  /** Of table and machine, in the middle of a sentence. */
  name: Name;
  other: Name;
}

function measureJoint(scene: Scene, joint: Joint): Measurement[] {
  const table = scene.tables.find((item) => item.table.id === joint.table);
  const machine = scene.machines.find((item) => item.machine.id === joint.machine);
  if (table === undefined || machine === undefined) return [];
  const names = { name: nameTable(scene, table), other: nameMachine(scene, machine) };
  const met: Met = { scene, joint, table, machine, tolerance: machine.sheet.joint, ...names };
  if (!joint.hasDoor) return [measureDoor(met)];
  // Off square one corner of the joint opens and the other overlaps: the angle says it, and closing the gap would not help.
  const gap = isAtMost(Math.abs(joint.angleDeg), met.tolerance.maxAngleDeg) ? [measureGap(met)] : [];
  return [...gap, measureOffset(met), measureAngle(met), measureStep(met)];
}

function measureDoor(met: Met): Measurement {
  const { joint, name, other } = met;
  return {
    unit: 'yes-no',
    relation: 'equals',
    value: false,
    limit: true,
    message: message('joint-flush/no-door', { table: name, machine: other, side: joint.side }),
    ...about(met, 'door'),
  };
}

function measureGap(met: Met): Measurement {
  const { joint, tolerance, name, other } = met;
  const common = { value: joint.gap, ...about(met, 'gap') };
  const both = { table: name, machine: other };
  if (!isAtLeast(joint.gap, 0)) {
    return {
      relation: 'at-least',
      limit: 0,
      message: message('joint-flush/overlaps', { ...both, overlap: -joint.gap }),
      repairs: offerSnap(met),
      ...common,
    };
  }
  const isFlush = isAtMost(joint.gap, tolerance.maxGap);
  return {
    limit: tolerance.maxGap,
    message: message(isFlush ? 'joint-flush/closed' : 'joint-flush/open', { ...both, gap: joint.gap, most: tolerance.maxGap }),
    ...(isFlush ? {} : { repairs: offerSnap(met) }),
    ...common,
  };
}

function measureOffset(met: Met): Measurement {
  const { joint, tolerance, name } = met;
  const offset = Math.abs(joint.offset);
  const isInLine = isAtMost(offset, tolerance.maxOffset);
  return {
    value: offset,
    limit: tolerance.maxOffset,
    message: isInLine
      ? message('joint-flush/in-line', { table: name, offset, most: tolerance.maxOffset })
      : message('joint-flush/out-of-line', { table: name, offset }),
    ...(isInLine ? {} : { repairs: offerSnap(met) }),
    ...about(met, 'offset'),
  };
}

function measureAngle(met: Met): Measurement {
  const { joint, tolerance, name, other } = met;
  const angleDeg = Math.abs(joint.angleDeg);
  const isSquare = isAtMost(angleDeg, tolerance.maxAngleDeg);
  return {
    unit: 'deg',
    value: angleDeg,
    limit: tolerance.maxAngleDeg,
    message: isSquare
      ? message('joint-flush/square', { table: name, machine: other, angleDeg, mostDeg: tolerance.maxAngleDeg })
      : message('joint-flush/off-square', { table: name, angleDeg }),
    ...(isSquare ? {} : { repairs: offerSnap(met) }),
    ...about(met, 'angle'),
  };
}

function measureStep(met: Met): Measurement {
  const { joint, tolerance, name } = met;
  const common = { limit: tolerance.maxDeckStep, ...about(met, 'deck-step') };
  const step = joint.deckStep;
  if (step === null) {
    const ask = { input: message('joint-flush/ask-step', { table: name }), path: stepPath(met) };
    return { value: null, ask, message: message('joint-flush/step-unknown', { table: name }), ...common };
  }
  const isLevel = isAtMost(Math.abs(step), tolerance.maxDeckStep);
  return {
    elevation: { table: joint.table, from: 0, to: 0 },
    value: Math.abs(step),
    message: isLevel
      ? message('joint-flush/level', { table: name, step, most: tolerance.maxDeckStep })
      : message('joint-flush/step', { table: name, step }),
    ...(isLevel ? {} : { repairs: { ids: ['level-deck'], find: () => [levelDeck(met, step)] } }),
    ...common,
  };
}

function stepPath({ scene, table: { table } }: Met) {
  const rest = table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
  return pathOf(scene.plan, 'tables', table.id, 'deck', ...rest);
}

const offerSnap = (met: Met): Offer => ({ ids: ['snap-flush'], find: () => [snapFlush(met)] });

/** Closes the gap, brings the centre lines together and turns the table square: it moves as one. */
function snapFlush({ joint, name }: Met): Repair {
  return {
    id: 'snap-flush',
    label: message('joint-flush/repair-snap-flush', { table: name }),
    edit: (draft) =>
      editTable(draft, joint.table, ({ place }) => {
        if (place.kind === 'joined') Object.assign(place, { gap: 0, offset: 0, skewDeg: 0 });
      }),
  };
}

/** The whole table goes up or down at its feet, so that its fall stays as it is. */
function levelDeck({ joint, name }: Met, step: number): Repair {
  return {
    id: 'level-deck',
    label: message('joint-flush/repair-level-deck', { table: name, step }),
    edit: (draft) =>
      editTable(draft, joint.table, ({ deck }) => {
        if (deck.kind === 'heights') deck.heights = deck.heights.map((height) => (height === null ? null : height - step));
        else if (deck.jointHeight !== null) deck.jointHeight -= step;
      }),
  };
}

const about = ({ joint, machine }: Met, part: string) => ({
  part,
  subjects: [joint.table, joint.machine],
  place: segmentPlace(machine.sides[joint.side].edge),
});
