import { boundOf, type Check, createMessages, isUnder, type Measurement, type NoParams, printedLeast, thingsPlace } from '../../../rules';
import type { PlacedThing, Scene } from '../../../scene';
import { waterTemperatureInput } from '../figures/support/heatAsks';
import { HAND_SINK_2017, HAND_SINK_2022 } from '../formulas/temperatures';

export const check: Check = {
  id: 'hand-sink-water',
  order: 430,
  title: 'Warm water at the hand sink',
  group: 'heat',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '5-202.12: 100 °F in the older edition, as WAC 246-215-05210; 85 °F in that of 2022, as restated',
    confidence: 'read',
  },
  why: 'Nobody washes hands long enough in cold water. Water hotter than the tap needs scalds: a mixing valve keeps it from hands.',
  measure: (scene) => scene.things.filter(({ thing }) => thing.kind === 'hand-sink').map((placed) => measureSink(scene, placed)),
};

/** What is said of the water at the sink. °C; the edition of the food code by its year. */
export interface HandSinkWaterMessages {
  'hand-sink-water/unknown': NoParams;
  'hand-sink-water/warm': Compared;
  'hand-sink-water/cool': Compared;
}

interface Compared {
  hotC: number;
  leastC: number;
  edition: 2017 | 2022;
}

const say = createMessages<HandSinkWaterMessages>();

/** The hot water of the room must be as warm as the tap has to be. */
function measureSink({ plan }: Scene, placed: PlacedThing): Measurement {
  const value = plan.supply.hotWaterC;
  const isLater = plan.codes.handSinkWater === 'food-code-2022';
  const limit = printedLeast(boundOf(isLater ? HAND_SINK_2022 : HAND_SINK_2017), plan.settings.units);
  return {
    subjects: [placed.thing.id],
    place: thingsPlace(placed),
    value,
    limit,
    ...(value === null ? { ask: { input: waterTemperatureInput('hot'), path: ['supply', 'hotWaterC'] } } : {}),
    ...(isLater ? { source: LATER } : {}),
    message:
      value === null ? say('hand-sink-water/unknown') : describeWater({ hotC: value, leastC: limit, edition: isLater ? 2022 : 2017 }),
  };
}

const describeWater = (compared: Compared) =>
  say(isUnder(compared.hotC, compared.leastC) ? 'hand-sink-water/cool' : 'hand-sink-water/warm', compared);

const LATER = {
  kind: 'published',
  document: 'FDA Food Code 2022',
  section: '5-202.12, in a public copy',
  confidence: 'secondary',
} as const;
