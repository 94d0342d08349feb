import { distanceBetweenPointAndConvex } from '../../../geometry';
import { boundOf, type Check, createMessages, judge, lengthOf, type Measurement, type Name, nameFitting, nameOwner } from '../../../rules';
import type { Scene } from '../../../scene';
import { listWareSinks, type WareSink } from '../../line';
import { DRAIN_INPUT, nearestDrain, outletOf } from '../figures/support/drains';
import { INDIRECT_WASTE_LENGTH, UNTRAPPED_WASTE_LEVEL, WARE_SINK_DRAIN_DISTANCE } from '../formulas/indirectWaste';
import { measureReach } from './support/receptorReach';

export const check: Check = {
  id: 'sink-waste',
  order: 630,
  title: 'The bowls of a ware sink empty over an air gap',
  group: 'drain',
  unit: 'm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code',
    section:
      'each compartment of a ware sink separately through an air gap, unless a floor drain is within 4 ft in the same room; indirect waste at most 15 ft in all; no receptor in an inaccessible space',
    confidence: 'read',
  },
  why: 'Sewage that backs up must come out on the floor, where it is seen, and never in the bowl that ware is rinsed in. Local code decides whether a sink may be connected directly at all.',
  measure: (scene) => listWareSinks(scene).flatMap((sink) => measureSink(scene, sink)),
};

/** What is said of the bowls of a sink; lengths in mm. */
export interface SinkWasteMessages {
  'sink-waste/not-known': Bowls;
  'sink-waste/no-drain': { sink: Name };
  'sink-waste/direct': Bowls & { distance: number; most: number };
  'sink-waste/direct-too-far': Bowls & { distance: number; most: number };
  'sink-waste/way': Bowls & { distance: number; most: number; mostLevel: number };
  'sink-waste/way-too-long': Bowls & { distance: number; most: number };
}

interface Bowls {
  sink: Name;
  bowls: 'one' | 'several';
}

const message = createMessages<SinkWasteMessages>();

type Receptor = NonNullable<ReturnType<typeof nearestDrain>>;

/** Over an air gap: the drain that takes it. Connected directly: how near a floor drain is. */
function measureSink(scene: Scene, sink: WareSink): Measurement[] {
  if (sink.waste === null) return [askWaste(scene, sink)];
  if (sink.waste === 'direct') return [measureDirect(scene, sink)];
  const receptor = nearestDrain(scene.room, sink.centre);
  return [
    measureWay(scene, sink, receptor),
    ...(receptor === null || takesMachine(scene, receptor)
      ? []
      : [measureReach(scene, { id: sink.id, name: nameSink(scene, sink) }, receptor.placed)]),
  ];
}

/** Whether the drain is that of a machine as well: it must be in reach for that one already. */
const takesMachine = ({ machines, room }: Scene, { placed }: Receptor): boolean =>
  machines.map(outletOf).some((outlet) => outlet !== undefined && nearestDrain(room, outlet)?.placed === placed);

/** By itself in the room, or a fitting of a table. */
function nameSink(scene: Scene, { id }: WareSink): Name {
  const fitted = scene.tables.flatMap(({ fittings }) => fittings).find(({ fitting }) => fitting.id === id);
  return fitted === undefined ? nameOwner(scene, id) : nameFitting(fitted.fitting);
}

const bowlsOf = (scene: Scene, sink: WareSink): Bowls => ({ sink: nameSink(scene, sink), bowls: sink.bowls });

function askWaste(scene: Scene, sink: WareSink): Measurement {
  const { subjects, place, ask } = sink;
  return { subjects, place, value: null, limit: null, ask, message: message('sink-waste/not-known', bowlsOf(scene, sink)) };
}

function askDrain(scene: Scene, sink: WareSink): Measurement {
  const { subjects, place } = sink;
  const ask = { input: DRAIN_INPUT, path: ['room', 'floorDrains'] };
  return { subjects, place, value: null, limit: null, ask, message: message('sink-waste/no-drain', { sink: nameSink(scene, sink) }) };
}

/** From the nearest edge of the sink to the middle of the floor drain. */
function measureDirect(scene: Scene, sink: WareSink): Measurement {
  const [nearest] = scene.room.floorDrains
    .map(({ drain, centre }) => ({ drain, distanceM: distanceBetweenPointAndConvex(centre, sink.polygon) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (nearest === undefined) return askDrain(scene, sink);
  const { drain, distanceM } = nearest;
  const most = boundOf(WARE_SINK_DRAIN_DISTANCE);
  return {
    subjects: [...sink.subjects, drain.id],
    place: sink.place,
    part: 'direct',
    value: distanceM,
    limit: most,
    message: message(judge(WARE_SINK_DRAIN_DISTANCE, distanceM) === 'pass' ? 'sink-waste/direct' : 'sink-waste/direct-too-far', {
      ...bowlsOf(scene, sink),
      distance: distanceM * 1000,
      most: most * 1000,
    }),
  };
}

/** From the middle of the sink to the middle of the receptor, on the floor: at least so long is the pipe of its middle bowl. */
function measureWay(scene: Scene, sink: WareSink, receptor: Receptor | null): Measurement {
  if (receptor === null) return askDrain(scene, sink);
  const { distanceM } = receptor;
  const most = boundOf(INDIRECT_WASTE_LENGTH);
  const said = { ...bowlsOf(scene, sink), distance: distanceM * 1000, most: most * 1000 };
  return {
    subjects: [...sink.subjects, receptor.placed.drain.id],
    place: sink.place,
    part: 'way',
    value: distanceM,
    limit: most,
    message:
      judge(INDIRECT_WASTE_LENGTH, distanceM) === 'pass'
        ? message('sink-waste/way', { ...said, mostLevel: lengthOf(UNTRAPPED_WASTE_LEVEL) })
        : message('sink-waste/way-too-long', said),
  };
}
