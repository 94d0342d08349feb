import {
  type Check,
  createMessages,
  type FigureReading,
  fittingPlace,
  holdReading,
  type Measurement,
  type NoParams,
  readFigure,
  thingsPlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as liftingIndexFigure } from '../figures/lifting-index';
import { rule as liftingLimitFigure } from '../figures/lifting-limit';
import type { RackLift } from '../figures/support/rackLift';
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

/** What is said of the lift of a loaded rack. Masses in kg. */
export interface RackLiftMessages {
  'rack-lift/what': NoParams;
  'rack-lift/light': Lift & { aboveShoulder: number | null };
  'rack-lift/heavy': Lift;
  'rack-lift/heavy-overshelf': Lift & { aboveShoulder: number | null };
}

/** `index`: lifting index, null where it is not known; `aboveShoulder`: in mm, null where the shelf is not above a short person's. */
interface Lift {
  rackKg: number;
  limitKg: number;
  end: End;
  index: number | null;
}

type End = RackLift['ends'][number]['part'];

const say = createMessages<RackLiftMessages>();

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
    what: say('rack-lift/what'),
    limit: reading.value,
    severity: 'watch',
    message: (limitKg) => {
      const lift: Lift = { rackKg: rackMass ?? 0, limitKg, end: endOf(reading), index: index?.value ?? null };
      const aboveShoulder = shelf === null || shelf.height <= SHOULDER ? null : shelf.height - SHOULDER;
      if (lift.rackKg <= limitKg + 1e-6) return say('rack-lift/light', { ...lift, aboveShoulder });
      return shelf === null ? say('rack-lift/heavy', lift) : say('rack-lift/heavy-overshelf', { ...lift, aboveShoulder });
    },
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
  held.value = held.value === null ? null : rackMass;
  return held;
}

const endOf = ({ part }: FigureReading): End => (part === 'deck' || part === 'overshelf' ? part : 'shelf');

/** Above it arms tire and a load is held worst. */
const SHOULDER = BODIES['small-woman'].shoulderM * 1000;

function findOvershelf({ tables }: Scene, { subjects: [, fittingId, tableId] }: FigureReading) {
  const found = tables.find(({ table }) => table.id === tableId);
  const fitting = found?.table.fittings.find(({ id }) => id === fittingId);
  return found !== undefined && fitting?.kind === 'overshelf' ? { table: found, fitting, height: fitting.height } : null;
}
