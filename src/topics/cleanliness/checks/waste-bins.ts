import { distanceBetweenConvex, type Polygon } from '../../../geometry';
import {
  areaPlace,
  boundOf,
  type Check,
  createMessages,
  isOver,
  type Measurement,
  type Name,
  type NoParams,
  nameFitting,
  nameThing,
  type Source,
} from '../../../rules';
import { type PlacedThing, type Scene, thingsOf } from '../../../scene';
import { REFUSE_BINS } from '../formulas/cleanlinessLimits';

/** 5 ft, two steps: from there a towel is thrown into the bin and not into the sink, and what is scraped off not onto the floor. */
const NEAR = 1524;

export const check: Check = {
  id: 'waste-bins',
  order: 940,
  title: 'Refuse has a bin where it arises',
  group: 'sanitary',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '5-501.16, as WAC 246-215-05530: a receptacle in each area where refuse arises, and one at each hand sink',
    confidence: 'read',
  },
  why: 'Scraps without a bin go down the drain, and towels onto the floor. A bin can be set later: it is looked at, and stops nothing.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureRoom(scene), ...measureNear(scene)]),
};

/** What is said of the bins. Distances in mm. */
export interface WasteBinsMessages {
  'waste-bins/none': NoParams;
  'waste-bins/drawn': { bins: number };
  'waste-bins/near': { from: Name; distance: number };
  'waste-bins/too-far': { from: Name; distance: number; most: number };
}

const say = createMessages<WasteBinsMessages>();

const binsOf = (scene: Scene) => thingsOf(scene, 'bin');

function measureRoom(scene: Scene): Measurement {
  const bins = binsOf(scene);
  return {
    part: 'room',
    subjects: [],
    place: areaPlace(...(bins.length === 0 ? scene.tables.map(({ outline }) => outline) : bins.map(({ polygon }) => polygon))),
    value: bins.length,
    limit: boundOf(REFUSE_BINS),
    severity: 'watch',
    message: bins.length === 0 ? say('waste-bins/none') : say('waste-bins/drawn', { bins: bins.length }),
  };
}

const AT_SINK: Source = {
  kind: 'common-practice',
  text: 'A bin within two steps stands at the sink; the Food Code, 5-501.16, wants one at each hand sink and gives no distance.',
};
const AT_SCRAP: Source = {
  kind: 'common-practice',
  text: 'A bin within two steps stands where ware is scraped; the Food Code, 5-501.16, wants one where refuse arises and gives no distance.',
};

/** Where there is no bin at all, that is said once. */
function measureNear(scene: Scene): Measurement[] {
  const bins = binsOf(scene);
  if (bins.length === 0) return [];
  const sinks = thingsOf(scene, 'hand-sink');
  const scraps = scene.tables
    .filter(({ table }) => table.role === 'soiled')
    .flatMap(({ table, fittings }) =>
      fittings.filter(({ fitting }) => fitting.kind === 'scrap').map((placed) => ({ table: table.id, ...placed })),
    );
  return [
    ...sinks.map((sink) =>
      measurePlace('hand-sink', [sink.thing.id], nameThing(scene, sink), sink.polygon, awayFrom(sink.polygon, bins), AT_SINK),
    ),
    ...scraps.map(({ fitting, polygon, table }) =>
      measurePlace('scrap', [fitting.id, table], nameFitting(fitting), polygon, awayFrom(polygon, bins), AT_SCRAP),
    ),
  ];
}

/** An opening that lies around a turn of its table is not convex; its edges are. */
function awayFrom(polygon: Polygon, bins: readonly PlacedThing[]): number {
  const pieces = polygon.length <= 4 ? [polygon] : polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length] ?? a]);
  return Math.min(...pieces.flatMap((piece) => bins.map((bin) => distanceBetweenConvex(piece, bin.polygon))));
}

function measurePlace(part: string, subjects: string[], from: Name, polygon: Polygon, distance: number, source: Source): Measurement {
  return {
    part,
    subjects,
    place: areaPlace(polygon),
    unit: 'mm',
    relation: 'at-most',
    value: distance,
    limit: NEAR,
    severity: 'watch',
    source,
    message: isOver(distance, NEAR)
      ? say('waste-bins/too-far', { from, distance, most: NEAR })
      : say('waste-bins/near', { from, distance }),
  };
}
