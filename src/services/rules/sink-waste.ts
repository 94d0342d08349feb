import { areaPlace, type Check, type Measurement, ownerName, sentence } from '../../checks';
import { INDIRECT_WASTE_LENGTH, judge, UNTRAPPED_WASTE_LEVEL, WARE_SINK_DRAIN_DISTANCE } from '../../engineering';
import { isWareSink, nearestDrain, outletOf } from '../../figures';
import { distanceBetweenPointAndConvex, isSameList } from '../../geometry';
import { furnishingPath, type PlacedThing, readDerived, type Scene } from '../../scene';
import { boundOf, lengthOf } from '../support/limitOf';
import { measureReach } from '../support/receptorReach';

export const check: Check = {
  id: 'sink-waste',
  title: 'The bowls of a ware sink empty over an air gap',
  group: 'drain',
  unit: 'm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code',
    section:
      '0-0-0-2692350: each compartment of a ware sink separately through an air gap, unless a floor drain is within 4 ft in the same room; indirect waste at most 15 ft in all; no receptor in an inaccessible space',
    confidence: 'read',
  },
  why: 'Sewage that backs up must come out on the floor, where it is seen, and never in the bowl that ware is rinsed in. Local code decides whether a sink may be connected directly at all.',
  measure: (scene) => wareSinksOf(scene).flatMap((placed) => measureSink(scene, placed)),
};

const wareSinksOf = (scene: Scene): readonly PlacedThing[] =>
  readDerived(scene, ({ things }) => things.filter(({ thing }) => isWareSink(thing)), isSameList);

type Receptor = NonNullable<ReturnType<typeof nearestDrain>>;

/** Over an air gap: the drain that takes it. Connected directly: how near a floor drain is. */
function measureSink(scene: Scene, placed: PlacedThing): Measurement[] {
  const waste = placed.thing.basins?.waste ?? null;
  if (waste === null) return [askWaste(scene, placed)];
  if (waste === 'direct') return [measureDirect(scene, placed)];
  const receptor = nearestDrain(scene.room, placed.thing);
  return [
    measureWay(scene, placed, receptor),
    ...(receptor === null || takesMachine(scene, receptor) ? [] : [measureReach(scene, ownerOf(scene, placed), receptor.placed)]),
  ];
}

const ownerOf = (scene: Scene, { thing }: PlacedThing) => ({ id: thing.id, name: () => ownerName(scene, thing.id) });

/** Whether the drain is that of a machine as well: it must be in reach for that one already. */
const takesMachine = ({ machines, room }: Scene, { placed }: Receptor): boolean =>
  machines.map(outletOf).some((outlet) => outlet !== undefined && nearestDrain(room, outlet)?.placed === placed);

const about = ({ thing, polygon }: PlacedThing) => ({ subjects: [thing.id], place: areaPlace(polygon) });

function askWaste(scene: Scene, placed: PlacedThing): Measurement {
  const { id, basins } = placed.thing;
  const path = furnishingPath(placed, 'basins', ...(basins === null ? [] : ['waste']));
  const input = basins === null ? 'bowls and boards of the sink, and how they empty' : 'way in which its bowls empty';
  const say = () => `Say whether the bowls of ${ownerName(scene, id)} empty over an air gap or are connected directly.`;
  return { ...about(placed), value: null, limit: null, ask: { input, path }, say };
}

function askDrain(scene: Scene, placed: PlacedThing): Measurement {
  const ask = { input: 'floor drain or floor sink', path: ['room', 'floorDrains'] };
  const say = () => `No floor drain is drawn: draw the one that ${ownerName(scene, placed.thing.id)} empties into, or that is beside it.`;
  return { ...about(placed), value: null, limit: null, ask, say };
}

/** From the nearest edge of the sink to the middle of the floor drain. */
function measureDirect(scene: Scene, placed: PlacedThing): Measurement {
  const [nearest] = scene.room.floorDrains
    .map(({ drain, centre }) => ({ drain, distanceM: distanceBetweenPointAndConvex(centre, placed.polygon) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (nearest === undefined) return askDrain(scene, placed);
  const { drain, distanceM } = nearest;
  const most = boundOf(WARE_SINK_DRAIN_DISTANCE);
  return {
    ...about(placed),
    part: 'direct',
    subjects: [placed.thing.id, drain.id],
    value: distanceM,
    limit: most,
    say: (f) => {
      const stands = `the bowls of ${ownerName(scene, placed.thing.id)} are connected directly, ${f.length(distanceM * 1000)} from a floor drain in the same room`;
      return sentence(
        judge(WARE_SINK_DRAIN_DISTANCE, distanceM) === 'pass'
          ? `${stands}; up to ${f.length(most * 1000)} they may be, where local code allows it.`
          : `${stands}, and may be ${f.length(most * 1000)} at most. Let each bowl empty over an air gap of its own, or have a floor drain set nearer.`,
      );
    },
  };
}

/** From the middle of the sink to the middle of the receptor, on the floor: at least so long is the pipe of its middle bowl. */
function measureWay(scene: Scene, placed: PlacedThing, receptor: Receptor | null): Measurement {
  if (receptor === null) return askDrain(scene, placed);
  const { distanceM } = receptor;
  const most = boundOf(INDIRECT_WASTE_LENGTH);
  return {
    ...about(placed),
    part: 'way',
    subjects: [placed.thing.id, receptor.placed.drain.id],
    value: distanceM,
    limit: most,
    say: (f) => {
      const empty = `the bowls of ${ownerName(scene, placed.thing.id)} empty over an air gap, ${f.length(distanceM * 1000)} from the floor drain`;
      const bound = `a waste pipe may run ${f.length(most * 1000)} in all, its drop counted`;
      return sentence(
        judge(INDIRECT_WASTE_LENGTH, distanceM) === 'pass'
          ? `${empty}; ${bound}. Each bowl has a pipe and a gap of its own, and a trap where the pipe runs more than ${f.length(lengthOf(UNTRAPPED_WASTE_LEVEL))} on the level.`
          : `${empty}; ${bound}. Set a floor drain nearer.`,
      );
    },
  };
}
