import { boundOf, type Check, isUnder, type Measurement, printedLeast, thingsPlace } from '../../../rules';
import type { PlacedThing, Scene } from '../../../scene';
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

/** The hot water of the room must be as warm as the tap has to be. */
function measureSink({ plan }: Scene, placed: PlacedThing): Measurement {
  const value = plan.supply.hotWaterC;
  const isLater = plan.codes.handSinkWater === 'food-code-2022';
  const limit = printedLeast(boundOf(isLater ? HAND_SINK_2022 : HAND_SINK_2017), plan.settings.units);
  const code = isLater ? 'the food code of 2022' : 'the food code of 2017';
  return {
    subjects: [placed.thing.id],
    place: thingsPlace(placed),
    value,
    limit,
    ...(value === null ? { ask: { input: 'temperature of the hot water', path: ['supply', 'hotWaterC'] } } : {}),
    ...(isLater ? { source: LATER } : {}),
    say: (f) => {
      if (value === null) return 'To know whether the hand sink has warm water, say the temperature of the hot water.';
      const asked = `${code} asks for ${f.temperature(limit)} at the hand sink`;
      return isUnder(value, limit)
        ? `Hot water comes at ${f.temperature(value)} and ${asked}: have it made hotter.`
        : `Hot water comes at ${f.temperature(value)}; ${asked}. A mixing valve keeps it from scalding hands.`;
    },
  };
}

const LATER = {
  kind: 'published',
  document: 'FDA Food Code 2022',
  section: '5-202.12, in a public copy',
  confidence: 'secondary',
} as const;
