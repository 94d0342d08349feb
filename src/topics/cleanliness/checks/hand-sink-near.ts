import { boundsOf, distanceBetweenConvex, type Polygon } from '../../../geometry';
import {
  boundOf,
  type Check,
  type FigureReading,
  holdReading,
  lengthOf,
  type Measurement,
  machinesPlace,
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
    say: () =>
      sinks.length === 0
        ? 'No hand sink is drawn. Give the room one that is convenient to whoever handles clean ware; a sink for ware does not count.'
        : 'Hands are washed at a sink of their own.',
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
  const isFar = value > DISTANCE + 1e-6;
  const held = holdReading(reading, {
    part: 'distance',
    subjects: reading.subjects,
    place: segmentPlace({ a: way[0] ?? { x: 0, y: 0 }, b: way[1] ?? { x: 0, y: 0 } }),
    name: 'how far the hand sink is',
    unit: 'mm',
    relation: 'at-most',
    source: LAW,
    limit: DISTANCE,
    ...(isBarred ? { watchLimit: DISTANCE / DETOUR } : {}),
    say: (_, f) => {
      const far = `The hand sink is ${f.length(value)} from the operator, straight`;
      if (isFar) return `${far}; ${f.length(DISTANCE)} is the most where law sets a distance. Bring it nearer.`;
      return isBarred && value > DISTANCE / DETOUR + 1e-6
        ? `${far}, and something stands between: on foot it may be more than ${f.length(DISTANCE)}. Measure the way.`
        : `${far}; ${f.length(DISTANCE)} is the most where law sets a distance.`;
    },
  });
  held.value = held.value === null ? null : value;
  return held;
}

const isAcross = (polygon: Polygon, way: Polygon) => distanceBetweenConvex(polygon, way) <= 0;
