import { type Check, type FigureReading, fittingPlace, holdReading, type Measurement, readFigure, thingsPlace } from '../../../rules';
import type { Scene } from '../../../scene';
import { formatNumber } from '../../../units';
import { rule as liftingIndexFigure } from '../figures/lifting-index';
import { rule as liftingLimitFigure } from '../figures/lifting-limit';
import { BODIES } from '../formulas/support/bodies';

export const check: Check = {
  id: 'rack-lift',
  order: 770,
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
  measure: (scene) => readFigure(liftingLimitFigure, scene).map((reading) => measureEnd(scene, reading)),
};

/** The rack against its limit: the same as an index of 1, and it speaks also where the limit is 0. */
function measureEnd(scene: Scene, reading: FigureReading): Measurement {
  const { rackMass } = scene.plan.demand;
  const [, storage = ''] = reading.subjects;
  const shelf = reading.part === 'overshelf' ? findOvershelf(scene, reading) : null;
  const index = readFigure(liftingIndexFigure, scene).find(
    ({ part, subjects }) => part === reading.part && subjects.every((id, i) => id === reading.subjects[i]),
  );
  const held = holdReading(rackMass === null && index?.ask !== undefined ? index : reading, {
    subjects: reading.subjects,
    place:
      shelf === null ? thingsPlace(...scene.things.filter(({ thing }) => thing.id === storage)) : fittingPlace(shelf.table, shelf.fitting),
    name: 'whether a rack is too heavy to lift to the shelf',
    limit: reading.value,
    severity: 'watch',
    say: (limit, f) => {
      const end = ENDS[reading.part ?? 'shelf'] ?? ENDS.shelf;
      const weights = `A loaded rack of ${f.mass(rackMass ?? 0)} against ${f.mass(limit)} when ${end}`;
      const ratio = index?.value == null ? '' : `, lifting index ${formatNumber(index.value, 2)}`;
      const above =
        shelf === null || shelf.height <= SHOULDER ? '' : `; it is ${f.length(shelf.height - SHOULDER)} above a short person’s shoulder`;
      if ((rackMass ?? 0) <= limit + 1e-6) return `${weights}${ratio}${above}; in a hot, humid room less.`;
      return shelf !== null
        ? `${weights}${ratio}${above}. Keep empty or light racks there, hang the shelf lower, or lift by two.`
        : `${weights}${ratio}. Load racks less, raise the shelf, use a dolly of the deck’s height, or lift by two.`;
    },
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
  held.value = held.value === null ? null : rackMass;
  return held;
}

const ENDS: Record<string, string> = {
  deck: 'taking it off the clean table',
  shelf: 'setting it down on the lowest shelf',
  overshelf: 'lifting it to the overshelf',
};

/** Above it arms tire and a load is held worst. */
const SHOULDER = BODIES['small-woman'].shoulderM * 1000;

function findOvershelf({ tables }: Scene, { subjects: [, fittingId, tableId] }: FigureReading) {
  const found = tables.find(({ table }) => table.id === tableId);
  const fitting = found?.table.fittings.find(({ id }) => id === fittingId);
  return found !== undefined && fitting?.kind === 'overshelf' ? { table: found, fitting, height: fitting.height } : null;
}
