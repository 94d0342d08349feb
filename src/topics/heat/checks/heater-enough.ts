import type { Plan } from '../../../plan';
import {
  boundOf,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  isOver,
  isUnder,
  type Measurement,
  machinesPlace,
  type NoParams,
  printedLeast,
  readFigure,
  type Source,
  severalPlaces,
  thingsPlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { INSTANT_HEATER_WATER } from '../../water';
import { rule as heaterNeededFigure } from '../figures/heater-needed';

export const check: Check = {
  id: 'heater-enough',
  order: 400,
  title: 'The water heater is large enough',
  group: 'heat',
  unit: 'W',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Monterey County CA, form PC-HWH; San Joaquin County CA, form EHD 16-01',
    section:
      'demand of the fixtures by the county directors’ table, less 0.7 of the store over a peak of 2 h; without a store 2 gpm to each sink at once',
    confidence: 'read',
  },
  why: 'When machine, sinks and spray draw at once, a heater that is too small lets the water cool just when the most racks come. Other rooms on the same heater come on top. Licensed trades size and fit it by local code.',
  measure: (scene) => readFigure(heaterNeededFigure, scene).flatMap((reading) => [measureHeater(scene, reading), ...measureWater(scene)]),
};

/** What is said of the heater. Powers in W. */
export interface HeaterEnoughMessages {
  'heater-enough/large-enough': NoParams;
  'heater-enough/ask-power': NoParams;
  'heater-enough/enough': Compared;
  'heater-enough/too-small': Compared;
  'heater-enough/hot': Water;
  'heater-enough/cool': Water;
}

interface Compared {
  needed: number;
  has: number;
  /** Nothing is in store: it warms the water as it flows. */
  isInstant: boolean;
}

interface Water {
  hotC: number;
  leastC: number;
}

const say = createMessages<HeaterEnoughMessages>();

const TABLE: Source = {
  kind: 'published',
  document: 'California Conference of Directors of Environmental Health, hot-water demand table',
  section: 'instantaneous heaters: 2 gpm to each sink, 120 °F',
  confidence: 'read',
};

const isInstant = ({ pipes }: Plan) => pipes.storage === 0;

function measureHeater(scene: Scene, reading: FigureReading): Measurement {
  const { plan } = scene;
  const power = plan.pipes.heaterPower;
  const ask = { input: say('heater-enough/ask-power'), path: ['pipes', 'heaterPower'] };
  const isAsked = power === null && reading.ask === undefined && reading.value !== null;
  return holdReading(
    isAsked
      ? {
          ...reading,
          value: null,
          ask,
        }
      : reading,
    {
      place: placeOf(scene),
      what: say('heater-enough/large-enough'),
      limit: power,
      message: (needed) => describeHeater({ needed, has: power ?? 0, isInstant: isInstant(plan) }),
      ...(isInstant(plan) ? { source: TABLE } : {}),
    },
  );
}

const describeHeater = (compared: Compared) =>
  say(isOver(compared.needed, compared.has) ? 'heater-enough/too-small' : 'heater-enough/enough', compared);

/** Without a store the water must still be warm enough; how warm it is the figure has asked for already. */
function measureWater(scene: Scene): Measurement[] {
  const { supply, settings } = scene.plan;
  const { hotWaterC } = supply;
  if (!isInstant(scene.plan) || hotWaterC === null) return [];
  const least = printedLeast(boundOf(INSTANT_HEATER_WATER), settings.units);
  return [
    {
      part: 'temperature',
      subjects: [],
      place: placeOf(scene),
      value: hotWaterC,
      limit: least,
      relation: 'at-least',
      unit: 'C',
      source: TABLE,
      message: say(isUnder(hotWaterC, least) ? 'heater-enough/cool' : 'heater-enough/hot', { hotC: hotWaterC, leastC: least }),
    },
  ];
}

const placeOf = (scene: Scene) =>
  severalPlaces(machinesPlace(scene), thingsPlace(...scene.things.filter(({ thing }) => thing.kind.endsWith('sink'))));
