import type { MachineSheet } from '../../../catalog';
import { pathOf } from '../../../plan';
import {
  type Check,
  editTable,
  holdsAtLeast as isAtLeast,
  holdsAtMost as isAtMost,
  type Measurement,
  machineName,
  type Repair,
  segmentPlace,
  sentence,
  sideWords,
  tableName,
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

/** A joint with what it joins and what they are called. */
interface Met {
  scene: Scene;
  joint: Joint;
  table: PlacedTable;
  machine: PlacedMachine;
  tolerance: MachineSheet['joint'];
  /** Of table and machine, in the middle of a sentence. */
  name: string;
  other: string;
}

function measureJoint(scene: Scene, joint: Joint): Measurement[] {
  const table = scene.tables.find((item) => item.table.id === joint.table);
  const machine = scene.machines.find((item) => item.machine.id === joint.machine);
  if (table === undefined || machine === undefined) return [];
  const names = { name: tableName(scene, table), other: machineName(scene, machine) };
  const met: Met = { scene, joint, table, machine, tolerance: machine.sheet.joint, ...names };
  if (!joint.hasDoor) return [measureDoor(met)];
  // Off square one corner of the joint opens and the other overlaps: the angle says it, and closing the gap would not help.
  const gap = isAtMost(Math.abs(joint.angleDeg), met.tolerance.maxAngleDeg) ? [measureGap(met)] : [];
  return [...gap, measureOffset(met), measureAngle(met), measureStep(met)];
}

function measureDoor(met: Met): Measurement {
  const { joint, name, other } = met;
  const say = () => sentence(`${name} meets ${other} at ${sideWords(joint.side)}, which has no door. Move it to a side with a door.`);
  return { unit: 'yes-no', relation: 'equals', value: false, limit: true, say, ...about(met, 'door') };
}

function measureGap(met: Met): Measurement {
  const { joint, tolerance, name, other } = met;
  const common = { value: joint.gap, ...about(met, 'gap') };
  if (!isAtLeast(joint.gap, 0)) {
    const say: Measurement['say'] = (f) => sentence(`${name} runs ${f.length(-joint.gap)} into ${other}. Move it out until they touch.`);
    return { relation: 'at-least', limit: 0, say, repairs: () => [snapFlush(met)], ...common };
  }
  const isFlush = isAtMost(joint.gap, tolerance.maxGap);
  return {
    limit: tolerance.maxGap,
    say: (f) =>
      isFlush
        ? sentence(
            `${name} meets ${other} ${isNone(joint.gap) ? 'flush' : `with a gap of ${f.length(joint.gap)}`}; silicone seals ${f.length(tolerance.maxGap)}.`,
          )
        : sentence(
            `a gap of ${f.length(joint.gap)} is left between ${name} and ${other}; silicone seals ${f.length(tolerance.maxGap)}. Close it up.`,
          ),
    repairs: () => (isFlush ? [] : [snapFlush(met)]),
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
    say: (f) =>
      isInLine
        ? sentence(
            `${name} is ${isNone(offset) ? 'in line' : `${f.length(offset)} out of line`} with the door; ${f.length(tolerance.maxOffset)} is allowed.`,
          )
        : sentence(`${name} stands ${f.length(offset)} out of line with the door; racks would catch. Move it sideways.`),
    repairs: () => (isInLine ? [] : [snapFlush(met)]),
    ...about(met, 'offset'),
  };
}

function measureAngle(met: Met): Measurement {
  const { joint, tolerance, name, other } = met;
  const angle = Math.abs(joint.angleDeg);
  const isSquare = isAtMost(angle, tolerance.maxAngleDeg);
  return {
    unit: 'deg',
    value: angle,
    limit: tolerance.maxAngleDeg,
    say: (f) =>
      isSquare
        ? sentence(
            `${name} is ${angle < 0.05 ? 'square' : `${f.angle(angle)} off square`} to ${other}; ${f.angle(tolerance.maxAngleDeg)} is allowed.`,
          )
        : sentence(`${name} stands ${f.angle(angle)} off square; the joint opens at one corner. Turn it square.`),
    repairs: () => (isSquare ? [] : [snapFlush(met)]),
    ...about(met, 'angle'),
  };
}

function measureStep(met: Met): Measurement {
  const { joint, tolerance, name } = met;
  const common = { limit: tolerance.maxDeckStep, ...about(met, 'deck-step') };
  const step = joint.deckStep;
  if (step === null) {
    const ask = { input: `deck height of ${name} at the joint`, path: stepPath(met) };
    return {
      value: null,
      ask,
      say: () => sentence(`the deck height of ${name} at the joint is not known. Measure it at the machine.`),
      ...common,
    };
  }
  const isLevel = isAtMost(Math.abs(step), tolerance.maxDeckStep);
  return {
    elevation: { table: joint.table, from: 0, to: 0 },
    value: Math.abs(step),
    say: (f) =>
      isLevel
        ? sentence(
            `${name} is ${isNone(step) ? 'level with' : `${f.length(Math.abs(step))} ${stepWord(step)} than`} the track; ${f.length(tolerance.maxDeckStep)} is allowed.`,
          )
        : sentence(
            `${name} is ${f.length(Math.abs(step))} ${stepWord(step)} than the track; racks would catch. ${step > 0 ? 'Lower' : 'Raise'} it at its feet.`,
          ),
    repairs: () => (isLevel ? [] : [levelDeck(met, step)]),
    ...common,
  };
}

const stepWord = (step: number) => (step > 0 ? 'higher' : 'lower');

/** Nothing that a tape shows. */
const isNone = (length: number) => Math.abs(length) < 0.5;

function stepPath({ scene, table: { table } }: Met) {
  const rest = table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
  return pathOf(scene.plan, 'tables', table.id, 'deck', ...rest);
}

/** Closes the gap, brings the centre lines together and turns the table square: it moves as one. */
function snapFlush({ joint, name }: Met): Repair {
  return {
    id: 'snap-flush',
    label: () => `Snap ${name} flush`,
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
    label: (f) => `${step > 0 ? 'Lower' : 'Raise'} ${name} ${f.length(Math.abs(step))}`,
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
