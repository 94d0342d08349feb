import {
  boundOf,
  type Check,
  createMessages,
  isUnder,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameThing,
  printedLeast,
  readFigure,
  thingsPlace,
} from '../../../rules';
import { type PlacedThing, type Scene, thingPath } from '../../../scene';
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

/** What is said of the water in the bowl that sanitises. */
export interface ManualSanitizingMessages {
  'manual-sanitizing/way-unknown': { sink: Name; ask: Message };
  'manual-sanitizing/ask-bowls': NoParams;
  'manual-sanitizing/ask-way': NoParams;
  'manual-sanitizing/own-heater': Stay & Heater;
  'manual-sanitizing/water-unknown': { sink: Name; ask: Message };
  'manual-sanitizing/ask-hot-water': NoParams;
  'manual-sanitizing/hot-enough': Stay & { waterC: number };
  'manual-sanitizing/too-cold': Stay & Heater & { waterC: number };
  'manual-sanitizing/heater-unknown': Stay & Heater & { waterC: number };
  'manual-sanitizing/ask-heater': NoParams;
}

interface Stay {
  sink: Name;
  stayS: number;
  leastC: number;
}

interface Heater {
  /** Power of a heater for one filling an hour; null where it is not known. */
  heaterW: number | null;
}

const say = createMessages<ManualSanitizingMessages>();

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
  const { basins } = placed.thing;
  const path = thingPath(placed, 'basins', ...(basins === null ? [] : ['sanitizing']));
  const input = say(basins === null ? 'manual-sanitizing/ask-bowls' : 'manual-sanitizing/ask-way');
  const message = say('manual-sanitizing/way-unknown', { sink: nameThing(scene, placed), ask: input });
  return { value: null, ask: { input, path }, message };
}

/** However warm the water comes. */
const ownHeater = (scene: Scene, placed: PlacedThing, leastC: number): Found => ({
  part: 'heater',
  unit: 'yes-no',
  relation: 'equals',
  value: true,
  limit: true,
  message: say('manual-sanitizing/own-heater', { ...stayIn(scene, placed, leastC), ...heaterOf(scene, placed) }),
});

const STAY = boundOf(MANUAL_SANITIZING_TIME);

const stayIn = (scene: Scene, placed: PlacedThing, leastC: number): Stay => ({ sink: nameThing(scene, placed), stayS: STAY, leastC });

function measureWater(scene: Scene, placed: PlacedThing, limit: number): Found {
  const { hotWaterC } = scene.plan.supply;
  if (hotWaterC === null) return askWater(nameThing(scene, placed));
  const comes = { ...stayIn(scene, placed, limit), waterC: hotWaterC };
  if (!isUnder(hotWaterC, limit)) return { value: hotWaterC, message: say('manual-sanitizing/hot-enough', comes) };
  const heated = { ...comes, ...heaterOf(scene, placed) };
  if (placed.thing.basins?.heater === false) return { value: hotWaterC, message: say('manual-sanitizing/too-cold', heated) };
  const ask = { input: say('manual-sanitizing/ask-heater'), path: thingPath(placed, 'basins', 'heater') };
  return { value: null, ask, message: say('manual-sanitizing/heater-unknown', heated) };
}

function askWater(sink: Name): Found {
  const input = say('manual-sanitizing/ask-hot-water');
  return {
    value: null,
    ask: { input, path: ['supply', 'hotWaterC'] },
    message: say('manual-sanitizing/water-unknown', { sink, ask: input }),
  };
}

const heaterOf = (scene: Scene, { thing }: PlacedThing): Heater => ({
  heaterW: readFigure(sanitizingHeaterFigure, scene).find(({ subjects }) => subjects[0] === thing.id)?.value ?? null,
});
