import { boundOf, type Check, isUnder, type Measurement, ownerName, printedLeast, readFigure, sentence, thingsPlace } from '../../../rules';
import { type PlacedThing, type Scene, thingPath } from '../../../scene';
import type { Formatter } from '../../../units';
import { MANUAL_SANITIZING, MANUAL_SANITIZING_TIME, sanitizingHeaterFigure } from '../../heat';

export const check: Check = {
  id: 'manual-sanitizing',
  order: 850,
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
  why: 'Ware that is sanitised by hot water by hand stays under it for 30 s at 171 °F. Hardly a building has water so hot, nor should it at any tap: the bowl has a heater of its own. It burns at once; baskets with long handles keep hands out, and licensed trades fit it. By chemicals it is done cooler: Maryland has chlorine of 50 ppm at 75 °F for 7 s, or iodine of 12.5 to 25 ppm for 30 s (COMAR 10.15.03.16); gloves and goggles, and never two chemicals together.',
  measure: (scene) =>
    scene.things.filter(({ thing }) => thing.kind === 'three-compartment-sink').flatMap((placed) => measureSink(scene, placed)),
};

/** A sink that sanitises by chemicals has no such water. Whether the bowl has a heater matters where the water comes too cold. */
function measureSink(scene: Scene, placed: PlacedThing): Measurement[] {
  const { thing } = placed;
  const sanitizing = thing.basins?.sanitizing ?? null;
  if (sanitizing === 'chemical') return [];
  const limit = printedLeast(boundOf(MANUAL_SANITIZING), scene.plan.settings.units);
  const common = { subjects: [thing.id], place: thingsPlace(placed), limit };
  return [
    {
      ...common,
      ...(sanitizing === null
        ? askSanitizing(scene, placed)
        : thing.basins?.heater === true
          ? ownHeater(scene, placed, limit)
          : measureWater(scene, placed, limit)),
    },
  ];
}

type Found = Omit<Measurement, 'subjects' | 'place' | 'limit'> & Partial<Pick<Measurement, 'limit'>>;

function askSanitizing(scene: Scene, placed: PlacedThing): Found {
  const { id, basins } = placed.thing;
  const path = thingPath(placed, 'basins', ...(basins === null ? [] : ['sanitizing']));
  const input = basins === null ? 'bowls and boards of the sink, and how it sanitises' : 'way in which it sanitises';
  return {
    value: null,
    ask: { input, path },
    say: () => `To know whether ${ownerName(scene, id)} needs water of its own heat, say the ${input}.`,
  };
}

/** However warm the water comes. */
const ownHeater = (scene: Scene, placed: PlacedThing, limit: number): Found => ({
  part: 'heater',
  unit: 'yes-no',
  relation: 'equals',
  value: true,
  limit: true,
  say: (f) =>
    sentence(
      `the last bowl of ${ownerName(scene, placed.thing.id)} has ${heaterWords(scene, placed, f)}; ware stays ${STAY} s in it at ${f.temperature(limit)}. Water so hot burns: baskets with long handles.`,
    ),
});

const STAY = boundOf(MANUAL_SANITIZING_TIME);

function measureWater(scene: Scene, placed: PlacedThing, limit: number): Found {
  const { id, basins } = placed.thing;
  const { hotWaterC } = scene.plan.supply;
  const name = ownerName(scene, id);
  if (hotWaterC === null) {
    const ask = { input: 'temperature of the hot water', path: ['supply', 'hotWaterC'] };
    return { value: null, ask, say: () => `To know whether the hot water sanitises in ${name}, say the ${ask.input}.` };
  }
  const comes = (f: Formatter) =>
    `hot water comes at ${f.temperature(hotWaterC)}; ware in the last bowl of ${name} stays ${STAY} s at ${f.temperature(limit)}`;
  if (!isUnder(hotWaterC, limit))
    return { value: hotWaterC, say: (f) => sentence(`${comes(f)}. Water so hot burns: mix it down at every other tap.`) };
  if (basins?.heater === false) {
    const say = (f: Formatter) =>
      sentence(`${comes(f)}. Have the bowl fitted with ${heaterWords(scene, placed, f)}, or sanitise with chemicals.`);
    return { value: hotWaterC, say };
  }
  const ask = { input: 'heater in the bowl that sanitises', path: thingPath(placed, 'basins', 'heater') };
  return { value: null, ask, say: (f) => sentence(`${comes(f)}. Say whether the bowl has ${heaterWords(scene, placed, f)}.`) };
}

function heaterWords(scene: Scene, { thing }: PlacedThing, f: Formatter): string {
  const heater = readFigure(sanitizingHeaterFigure, scene).find(({ subjects }) => subjects[0] === thing.id)?.value ?? null;
  return heater === null ? 'a heater of its own' : `a heater of its own, ${f.power(heater)} for one filling an hour`;
}
