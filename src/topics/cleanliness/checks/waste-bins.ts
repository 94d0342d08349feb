import { distanceBetweenConvex, type Polygon } from '../../../geometry';
import { areaPlace, boundOf, type Check, count, isOver, type Measurement, ownerName, type Source, sentence } from '../../../rules';
import { type PlacedThing, type Scene, thingsOf } from '../../../scene';
import { fittingName } from '../../line';
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
    say: () => (bins.length === 0 ? 'No bin is drawn. Give the soiled side one.' : `The room has ${count(bins.length, 'bin')}.`),
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
    ...sinks.map(({ thing, polygon }) =>
      measurePlace('hand-sink', [thing.id], ownerName(scene, thing.id), polygon, awayFrom(polygon, bins), AT_SINK),
    ),
    ...scraps.map(({ fitting, polygon, table }) =>
      measurePlace('scrap', [fitting.id, table], fittingName(fitting), polygon, awayFrom(polygon, bins), AT_SCRAP),
    ),
  ];
}

/** An opening that lies around a turn of its table is not convex; its edges are. */
function awayFrom(polygon: Polygon, bins: readonly PlacedThing[]): number {
  const pieces = polygon.length <= 4 ? [polygon] : polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length] ?? a]);
  return Math.min(...pieces.flatMap((piece) => bins.map((bin) => distanceBetweenConvex(piece, bin.polygon))));
}

function measurePlace(part: string, subjects: string[], name: string, polygon: Polygon, away: number, source: Source): Measurement {
  return {
    part,
    subjects,
    place: areaPlace(polygon),
    unit: 'mm',
    relation: 'at-most',
    value: away,
    limit: NEAR,
    severity: 'watch',
    source,
    say: (f) =>
      sentence(
        isOver(away, NEAR)
          ? `the nearest bin is ${f.length(away)} from ${name}. Stand one beside it, within ${f.length(NEAR)}.`
          : `a bin stands ${f.length(away)} from ${name}.`,
      ),
  };
}
