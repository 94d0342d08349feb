import { distance } from '../../../geometry';
import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  pointPlace,
  type Source,
  segmentPlace,
} from '../../../rules';
import { findSharedFloor, type Line, type Scene } from '../../../scene';
import { findCrossings } from '../../room';

export const check: Check = {
  id: 'one-way-flow',
  order: 90,
  title: 'Soiled and clean ware do not cross',
  unit: 'count',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Codex Alimentarius CXC 1-1969, General Principles of Food Hygiene',
    section: '9.1.2',
    confidence: 'secondary',
  },
  why: 'Where soiled ware crosses the way of clean ware, or goes over the same floor, hands, splashes and carts carry the soil over.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

/** What is said of the ways of ware; `length` is that of the floor which they share. */
export interface OneWayFlowMessages {
  'one-way-flow/no-crossing': { machine: Name };
  'one-way-flow/crosses': { places: number };
  'one-way-flow/no-shared-floor': NoParams;
  'one-way-flow/shares-floor': { length: number; places: number };
}

const say = createMessages<OneWayFlowMessages>();

const APART: Source = {
  kind: 'published',
  document: 'UFC 4-722-01 (27 Jan 2003, later cancelled)',
  section: '5-10.1: soiled ware is held in other places than clean ware',
  confidence: 'read',
};

/** Ways that cross also share the floor there: one finding says it. */
function measureLine(scene: Scene, line: Line): Measurement[] {
  const crossing = measureCrossing(scene, line);
  return crossing.value === 0 ? [crossing, ...measureShared(scene, line)] : [crossing];
}

/** The soiled way of one line against the clean ways of all lines in the room. */
function measureCrossing(scene: Scene, line: Line): Measurement {
  const crossings = scene.lines.flatMap((other) => findCrossings(line.ways.soiled, other.ways.clean));
  const first = crossings[0];
  return {
    subjects: [line.machine.machine.id],
    place: first === undefined ? areaPlace(line.machine.footprint) : pointPlace(first),
    value: crossings.length,
    limit: 0,
    message:
      first === undefined
        ? say('one-way-flow/no-crossing', { machine: nameMachine(scene, line.machine) })
        : say('one-way-flow/crosses', { places: crossings.length }),
  };
}

/** Where one of the ways is missing there is nothing to share. */
function measureShared({ lines, plan }: Scene, line: Line): Measurement[] {
  const { machine, ways } = line;
  if (ways.soiled.length < 2 || lines.every((other) => other.ways.clean.length < 2)) return [];
  const { rackSize, personWidth } = plan.settings;
  const shared = findSharedFloor(line, lines, Math.max(rackSize, personWidth));
  const lengths = shared.map(({ a, b }) => distance(a, b));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const longest = shared[lengths.indexOf(Math.max(...lengths))];
  return [
    {
      part: 'shared',
      subjects: [machine.machine.id],
      place: longest === undefined ? areaPlace(machine.footprint) : segmentPlace(longest),
      unit: 'mm',
      value: total,
      limit: 0,
      severity: 'watch',
      source: APART,
      message:
        longest === undefined
          ? say('one-way-flow/no-shared-floor')
          : say('one-way-flow/shares-floor', { length: total, places: shared.length }),
    },
  ];
}
