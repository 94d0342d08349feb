import { areaPlace, type Check, type Measurement } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import type { Scene } from '../../scene';
import { formatNumber } from '../../units';
import { holdReading } from '../support/holdReading';

export const check: Check = {
  id: 'rack-lift',
  title: 'A loaded rack may be lifted to the shelf',
  group: 'people',
  unit: 'kg',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'DHHS/NIOSH 94-110, Applications Manual for the Revised Lifting Equation',
    section: 'a lifting index above 1 puts some people at risk',
    confidence: 'read',
  },
  why: 'Backs are hurt by racks that are too heavy, too low or too many. The equation was not made for hot and humid rooms: there less can be lifted. Who is responsible for safety on the site decides.',
  measure: (scene) => readingsOf(scene, 'lifting-limit').map((reading) => measureEnd(scene, reading)),
};

/** The rack against its limit: the same as an index of 1, and it speaks also where the limit is 0. */
function measureEnd(scene: Scene, reading: FigureReading): Measurement {
  const { rackMass } = scene.plan.demand;
  const [, storage] = reading.subjects;
  const thing = scene.things.find((item) => item.thing.id === storage);
  const index = readingsOf(scene, 'lifting-index').find(
    ({ part, subjects }) => part === reading.part && subjects[0] === reading.subjects[0],
  );
  const held = holdReading(rackMass === null && index?.ask !== undefined ? index : reading, {
    ...(reading.part === undefined ? {} : { part: reading.part }),
    subjects: reading.subjects,
    place: areaPlace(...(thing === undefined ? [] : [thing.polygon])),
    name: 'whether a rack is too heavy to lift to the shelf',
    limit: reading.value,
    severity: 'watch',
    say: (limit, f) => {
      const end = reading.part === 'deck' ? 'taking it off the clean table' : 'setting it down on the lowest shelf';
      const weights = `A loaded rack of ${f.mass(rackMass ?? 0)} against ${f.mass(limit)} when ${end}`;
      const ratio = index?.value == null ? '' : `, lifting index ${formatNumber(index.value, 2)}`;
      return (rackMass ?? 0) <= limit + 1e-6
        ? `${weights}${ratio}; in a hot, humid room less.`
        : `${weights}${ratio}. Load racks less, raise the shelf, use a dolly of the deck’s height, or lift by two.`;
    },
  });
  return { ...held, value: held.value === null ? null : rackMass };
}
