import { type Check, type Measurement, ownerName, sentence, thingsPlace } from '../../checks';
import { MANUAL_SANITIZING, MANUAL_SANITIZING_TIME } from '../../engineering';
import { readingsOf } from '../../figures';
import { type Furnishing, furnishingPath, type Scene } from '../../scene';
import { isUnder } from '../support/compare';
import { boundOf } from '../support/limitOf';
import { printedLeast } from '../support/printedLimit';

export const check: Check = {
  id: 'manual-sanitizing',
  title: 'Hot water that sanitises by hand',
  group: 'sanitary',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.111, 171 °F, as WAC 246-215-04550; 30 s as Minnesota Rules 4626.0905',
    confidence: 'read',
  },
  why: 'Ware that is sanitised by hot water by hand stays under it for 30 s at 171 °F. Hardly a building has water so hot, nor should it at any tap: the bowl has a heater of its own. It burns at once; baskets with long handles keep hands out, and licensed trades fit it.',
  measure: (scene) =>
    scene.furnishings.filter(({ thing }) => thing.kind === 'three-compartment-sink').flatMap((placed) => measureSink(scene, placed)),
};

/** A sink that sanitises by chemicals has no such water. Whether the bowl has a heater the plan does not know: never more than a watch. */
function measureSink(scene: Scene, placed: Furnishing): Measurement[] {
  const { thing } = placed;
  const sanitizing = thing.basins?.sanitizing ?? null;
  if (sanitizing === 'chemical') return [];
  const { hotWaterC } = scene.plan.supply;
  const name = ownerName(scene, thing.id);
  const limit = printedLeast(boundOf(MANUAL_SANITIZING), scene.plan.settings.units);
  const about = { subjects: [thing.id], place: thingsPlace(placed), limit, severity: 'watch' as const };
  if (sanitizing === null) {
    const path = furnishingPath(placed, 'basins', ...(thing.basins === null ? [] : ['sanitizing']));
    const input = thing.basins === null ? 'bowls and boards of the sink, and how it sanitises' : 'way in which it sanitises';
    return [
      { ...about, value: null, ask: { input, path }, say: () => `To know whether ${name} needs water of its own heat, say the ${input}.` },
    ];
  }
  if (hotWaterC === null) {
    const ask = { input: 'temperature of the hot water', path: ['supply', 'hotWaterC'] };
    return [{ ...about, value: null, ask, say: () => `To know whether the hot water sanitises in ${name}, say the ${ask.input}.` }];
  }
  const heater = readingsOf(scene, 'sanitizing-heater').find(({ subjects }) => subjects[0] === thing.id)?.value ?? null;
  return [
    {
      ...about,
      value: hotWaterC,
      say: (f) => {
        const comes = `hot water comes at ${f.temperature(hotWaterC)}; ware in the last bowl of ${name} stays ${boundOf(MANUAL_SANITIZING_TIME)} s at ${f.temperature(limit)}`;
        if (!isUnder(hotWaterC, limit)) return sentence(`${comes}. Water so hot burns: mix it down at every other tap.`);
        const own = heater === null ? 'a heater of its own' : `a heater of its own, ${f.power(heater)} for one filling an hour`;
        return sentence(`${comes}. See that the bowl has ${own}, or sanitise with chemicals.`);
      },
    },
  ];
}
