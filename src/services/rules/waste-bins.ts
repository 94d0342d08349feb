import { areaPlace, type Check, count, type Measurement, ownerName, type Source, sentence } from '../../checks';
import { REFUSE_BINS } from '../../engineering';
import { distanceBetweenConvex } from '../../geometry';
import type { PlacedThing, Scene } from '../../scene';
import { boundOf } from '../support/limitOf';

/** 5 ft, two steps: from there a towel is thrown into the bin and not into the sink. */
const NEAR = 1524;

export const check: Check = {
  id: 'waste-bins',
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
  measure: (scene) => (scene.appliances.length === 0 ? [] : [measureRoom(scene), ...measureSinks(scene)]),
};

const binsOf = ({ things }: Scene) => things.filter(({ thing }) => thing.kind === 'bin');

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

function measureSinks(scene: Scene): Measurement[] {
  const bins = binsOf(scene);
  if (bins.length === 0) return [];
  return scene.things.filter(({ thing }) => thing.kind === 'hand-sink').map((sink) => measureSink(scene, sink, bins));
}

function measureSink(scene: Scene, sink: PlacedThing, bins: readonly PlacedThing[]): Measurement {
  const away = Math.min(...bins.map(({ polygon }) => distanceBetweenConvex(sink.polygon, polygon)));
  const name = ownerName(scene, sink.thing.id);
  return {
    part: 'hand-sink',
    subjects: [sink.thing.id],
    place: areaPlace(sink.polygon),
    unit: 'mm',
    relation: 'at-most',
    value: away,
    limit: NEAR,
    severity: 'watch',
    source: AT_SINK,
    say: (f) =>
      sentence(
        away <= NEAR + 1e-6
          ? `a bin stands ${f.length(away)} from ${name}.`
          : `the nearest bin is ${f.length(away)} from ${name}. Stand one beside it, within ${f.length(NEAR)}.`,
      ),
  };
}
