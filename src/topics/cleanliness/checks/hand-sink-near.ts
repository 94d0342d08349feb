import { boundsOf, distanceBetweenConvex, type Polygon } from '../../../geometry';
import {
  boundOf,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  lengthOf,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  readFigure,
  type Source,
  segmentPlace,
  thingsPlace,
} from '../../../rules';
import { floorObstacles, type Line, type Scene, solidsIn, thingsOf } from '../../../scene';
import { HAND_SINK_DISTANCE, handSinkDistanceFigure } from '../../people';
import { HAND_SINKS } from '../formulas/cleanlinessLimits';

const DISTANCE = lengthOf(HAND_SINK_DISTANCE);
/** A way in right angles is longer than the straight one by this factor at most. */
const DETOUR = Math.SQRT2;

export const check: Check = {
  id: 'hand-sink-near',
  order: 880,
  title: 'A hand sink is near',
  group: 'sanitary',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '5-203.11 and 5-204.11, as WAC 246-215-05230: convenient to use where ware is washed',
    confidence: 'read',
  },
  why: 'Whoever has handled soiled ware washes hands before touching clean ware. The Food Code wants the sink convenient; Washington, New York City and Nevada say within 25 ft.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureCount(scene), ...measureDistances(scene)]),
};

/** What is said of the hand sink. Straight distances in mm. */
export interface HandSinkNearMessages {
  'hand-sink-near/none': NoParams;
  'hand-sink-near/drawn': NoParams;
  'hand-sink-near/what': NoParams;
  'hand-sink-near/near': Away;
  'hand-sink-near/too-far': Away;
  /** Something stands between: the way may be too long. */
  'hand-sink-near/barred': Away;
}

interface Away {
  distance: number;
  most: number;
}

const say = createMessages<HandSinkNearMessages>();

const LAW: Source = {
  kind: 'published',
  document: 'WAC 246-215-05255, NYC Health Code §81.21, NAC 446.581',
  section: 'a hand sink within 25 ft; law in these places, no rule of the Food Code',
  confidence: 'secondary',
};

const sinksOf = (scene: Scene) => thingsOf(scene, 'hand-sink');

function measureCount(scene: Scene): Measurement {
  const sinks = sinksOf(scene);
  return {
    part: 'count',
    subjects: [],
    place: sinks.length === 0 ? machinesPlace(scene) : thingsPlace(...sinks),
    value: sinks.length,
    limit: boundOf(HAND_SINKS),
    message: say(sinks.length === 0 ? 'hand-sink-near/none' : 'hand-sink-near/drawn'),
  };
}

/** The straight way is the figure; on foot it is longer, so past something in the way it is looked at earlier. */
function measureDistances(scene: Scene): Measurement[] {
  if (scene.plan.codes.handSink === 'food-code' || sinksOf(scene).length === 0) return [];
  return readFigure(handSinkDistanceFigure, scene).flatMap((reading) => {
    const line = scene.lines.find(({ machine }) => machine.machine.id === reading.subjects[0]);
    return line === undefined || line.stand === null ? [] : [measureDistance(scene, line, reading)];
  });
}

function measureDistance(scene: Scene, { stand, machine }: Line, reading: FigureReading): Measurement {
  const sink = sinksOf(scene).find(({ thing }) => thing.id === reading.subjects[1]);
  const way = [stand?.centre ?? machine.machine, sink?.thing ?? machine.machine].map(({ x, y }) => ({ x, y }));
  const isBarred = floorObstacles({ solids: solidsIn(scene, boundsOf(way)) }).some(
    ({ owner, polygon }) => owner !== sink?.thing.id && isAcross(polygon, way),
  );
  const value = (reading.value ?? 0) * 1000;
  const held = holdReading(reading, {
    part: 'distance',
    subjects: reading.subjects,
    place: segmentPlace({ a: way[0] ?? { x: 0, y: 0 }, b: way[1] ?? { x: 0, y: 0 } }),
    what: say('hand-sink-near/what'),
    unit: 'mm',
    relation: 'at-most',
    source: LAW,
    limit: DISTANCE,
    ...(isBarred ? { watchLimit: DISTANCE / DETOUR } : {}),
    message: () => sayDistance({ distance: value, most: DISTANCE }, isBarred),
  });
  held.value = held.value === null ? null : value;
  return held;
}

function sayDistance(away: Away, isBarred: boolean): Message {
  if (away.distance > away.most + 1e-6) return say('hand-sink-near/too-far', away);
  return say(isBarred && away.distance > away.most / DETOUR + 1e-6 ? 'hand-sink-near/barred' : 'hand-sink-near/near', away);
}

const isAcross = (polygon: Polygon, way: Polygon) => distanceBetweenConvex(polygon, way) <= 0;
