import { distanceBetweenPointAndConvex } from '../../../geometry';
import { boundOf, type Check, judge, lengthOf, type Measurement, sentence } from '../../../rules';
import type { Scene } from '../../../scene';
import { listWareSinks, type WareSink } from '../../line';
import { nearestDrain, outletOf } from '../figures/support/drains';
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

type Receptor = NonNullable<ReturnType<typeof nearestDrain>>;

/** Over an air gap: the drain that takes it. Connected directly: how near a floor drain is. */
function measureSink(scene: Scene, sink: WareSink): Measurement[] {
  if (sink.waste === null) return [askWaste(sink)];
  if (sink.waste === 'direct') return [measureDirect(scene, sink)];
  const receptor = nearestDrain(scene.room, sink.centre);
  return [
    measureWay(sink, receptor),
    ...(receptor === null || takesMachine(scene, receptor)
      ? []
      : [measureReach(scene, { id: sink.id, name: () => sink.name }, receptor.placed)]),
  ];
}

/** Whether the drain is that of a machine as well: it must be in reach for that one already. */
const takesMachine = ({ machines, room }: Scene, { placed }: Receptor): boolean =>
  machines.map(outletOf).some((outlet) => outlet !== undefined && nearestDrain(room, outlet)?.placed === placed);

/** How a sink with one bowl, or with several, is spoken of. */
const WORDS = {
  one: { bowls: 'the bowl', empty: 'empties', are: 'is', has: 'It has', let: 'Let it empty over an air gap' },
  several: { bowls: 'the bowls', empty: 'empty', are: 'are', has: 'Each bowl has', let: 'Let each bowl empty over an air gap of its own' },
};

function askWaste({ subjects, place, name, bowls, ask }: WareSink): Measurement {
  const words = WORDS[bowls];
  const say = () => `Say whether ${words.bowls} of ${name} ${words.empty} over an air gap or ${words.are} connected directly.`;
  return { subjects, place, value: null, limit: null, ask, say };
}

function askDrain({ subjects, place, name }: WareSink): Measurement {
  const ask = { input: 'floor drain or floor sink', path: ['room', 'floorDrains'] };
  const say = () => `No floor drain is drawn: draw the one that ${name} empties into, or that is beside it.`;
  return { subjects, place, value: null, limit: null, ask, say };
}

/** From the nearest edge of the sink to the middle of the floor drain. */
function measureDirect(scene: Scene, sink: WareSink): Measurement {
  const [nearest] = scene.room.floorDrains
    .map(({ drain, centre }) => ({ drain, distanceM: distanceBetweenPointAndConvex(centre, sink.polygon) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (nearest === undefined) return askDrain(sink);
  const { drain, distanceM } = nearest;
  const most = boundOf(WARE_SINK_DRAIN_DISTANCE);
  const words = WORDS[sink.bowls];
  return {
    subjects: [...sink.subjects, drain.id],
    place: sink.place,
    part: 'direct',
    value: distanceM,
    limit: most,
    say: (f) => {
      const stands = `${words.bowls} of ${sink.name} ${words.are} connected directly, ${f.length(distanceM * 1000)} from a floor drain in the same room`;
      return sentence(
        judge(WARE_SINK_DRAIN_DISTANCE, distanceM) === 'pass'
          ? `${stands}; up to ${f.length(most * 1000)} ${sink.bowls === 'one' ? 'it' : 'they'} may be, where local code allows it.`
          : `${stands}, and may be ${f.length(most * 1000)} at most. ${words.let}, or have a floor drain set nearer.`,
      );
    },
  };
}

/** From the middle of the sink to the middle of the receptor, on the floor: at least so long is the pipe of its middle bowl. */
function measureWay(sink: WareSink, receptor: Receptor | null): Measurement {
  if (receptor === null) return askDrain(sink);
  const { distanceM } = receptor;
  const most = boundOf(INDIRECT_WASTE_LENGTH);
  const words = WORDS[sink.bowls];
  return {
    subjects: [...sink.subjects, receptor.placed.drain.id],
    place: sink.place,
    part: 'way',
    value: distanceM,
    limit: most,
    say: (f) => {
      const empty = `${words.bowls} of ${sink.name} ${words.empty} over an air gap, ${f.length(distanceM * 1000)} from the floor drain`;
      const bound = `a waste pipe may run ${f.length(most * 1000)} in all, its drop counted`;
      return sentence(
        judge(INDIRECT_WASTE_LENGTH, distanceM) === 'pass'
          ? `${empty}; ${bound}. ${words.has} a pipe and a gap of its own, and a trap where the pipe runs more than ${f.length(lengthOf(UNTRAPPED_WASTE_LEVEL))} on the level.`
          : `${empty}; ${bound}. Set a floor drain nearer.`,
      );
    },
  };
}
