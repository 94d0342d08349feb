import {
  boundOf,
  type Check,
  createMessages,
  type Measurement,
  type Name,
  nameTable,
  readFigure,
  severalPlaces,
  tablePlace,
  thingsPlace,
} from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { racksOnLandingFigure } from '../../capacity';
import { DRYING_PLACES_CHEMICAL, DRYING_PLACES_HOT } from '../formulas/cleanlinessLimits';

export const check: Check = {
  id: 'drying-places',
  order: 790,
  title: 'Clean racks find room to dry',
  group: 'sanitary',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'City of Orono MN, plan review of 6 April 2000',
    section: '3 places to dry after hot water, 5 after chemicals; the Food Code, 4-301.13, gives no number',
    confidence: 'read',
  },
  why: 'Ware dries in the air after it is sanitised, as 15A NCAC 18A .3313(f) has it: never with a towel. At a rack a minute three places give it about three minutes to dry, five places about five; until it is dry it must stand. Tables, drainboards and racks all count.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

/** What is said of the places to dry. */
export interface DryingPlacesMessages {
  'drying-places/enough': Places;
  'drying-places/too-few': Places;
}

interface Places {
  table: Name;
  onTable: number;
  onShelf: number;
  wanted: number;
  after: 'hot-water' | 'chemicals';
}

const say = createMessages<DryingPlacesMessages>();

/** On the clean table, and side by side on one shelf of the clean storage. One city asks so: falling short is a watch. */
function measureLine(scene: Scene, line: Line): Measurement[] {
  const { clean, machine } = line;
  const onTable = readFigure(racksOnLandingFigure, scene).find(({ part, subjects }) => part === 'after' && subjects[0] === clean?.table.id);
  if (clean === null || onTable?.value == null) return [];
  const storage = scene.things.find(({ thing }) => thing.id === line.stations.find(({ kind }) => kind === 'storage')?.subject);
  const onShelf = storage === undefined ? 0 : Math.floor(storage.thing.width / scene.plan.settings.rackPitch + 1e-9);
  const isChemical = machine.sheet.sanitizing === 'chemical';
  const limit = boundOf(isChemical ? DRYING_PLACES_CHEMICAL : DRYING_PLACES_HOT);
  const places = onTable.value + onShelf;
  const after = isChemical ? 'chemicals' : 'hot-water';
  const said = { table: nameTable(scene, clean), onTable: onTable.value, onShelf, wanted: limit, after } as const;
  return [
    {
      subjects: [clean.table.id, ...(storage === undefined ? [] : [storage.thing.id])],
      place: severalPlaces(tablePlace(clean), ...(storage === undefined ? [] : [thingsPlace(storage)])),
      value: places,
      limit,
      severity: 'watch',
      message: say(places >= limit ? 'drying-places/enough' : 'drying-places/too-few', said),
    },
  ];
}
