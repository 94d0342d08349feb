import { createBody } from '../../../geometry';
import { areaPlace, type Check, createMessages, lengthOf, type Measurement, type Name, nameHood } from '../../../rules';
import { findStationWays, findWidestWay, mustPassUnder, type PlacedHood, type Scene } from '../../../scene';
import { isOverStand } from '../../hood';
import { EXIT_PROJECTION, wayWidths } from '../../room';

const LEAST = lengthOf(EXIT_PROJECTION);

export const check: Check = {
  id: 'headroom',
  order: 710,
  title: 'Heads pass under what hangs over the ways',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: '29 CFR',
    section: '1910.36(g)(1): what projects into an exit route leaves 6 ft 8 in',
    confidence: 'secondary',
  },
  why: 'Who carries a rack looks at the rack. Ducts, shelves and boxes that hang lower count as standing in the way; under a hood people step, so it is looked at here. Where the operator stands under the hood its own check speaks, and the ceiling has one too.',
  measure: (scene) => (scene.machines.length === 0 ? [] : scene.hoods.flatMap((hood) => measureHood(scene, hood))),
};

/** What is said of the lip of a hood. Lengths in mm. */
export interface HeadroomMessages {
  'headroom/aside': Lip;
  'headroom/high': Lip & { needed: number };
  'headroom/low': Lip & { missing: number };
}

interface Lip {
  hood: Name;
  lip: number;
}

const say = createMessages<HeadroomMessages>();

/** A hood of no known height is asked for by its own check. */
function measureHood(scene: Scene, placed: PlacedHood): Measurement[] {
  const lip = placed.hood.lipHeight;
  if (lip === null || scene.machines.some((machine) => isOverStand(scene, machine, placed))) return [];
  const hood = nameHood(scene, placed);
  const common = { subjects: [placed.hood.id], place: areaPlace(placed.polygon) };
  if (lip < LEAST - 1e-6 && !isInTheWay(scene, placed)) {
    const message = say('headroom/aside', { hood, lip });
    return [{ unit: 'yes-no', relation: 'equals', value: true, limit: true, message, ...common }];
  }
  return [
    {
      value: lip,
      limit: LEAST,
      severity: 'watch',
      message:
        lip >= LEAST - 1e-6 ? say('headroom/high', { hood, lip, needed: LEAST }) : say('headroom/low', { hood, lip, missing: LEAST - lip }),
      ...common,
    },
  ];
}

/** The places are those of the ways to the operator and to the stations. */
function isInTheWay(scene: Scene, { polygon }: PlacedHood): boolean {
  const { pass, enough } = wayWidths(scene.plan.settings);
  const operators = scene.lines.map((line) => findWidestWay(scene, line, enough)?.to).filter((to) => to !== undefined);
  const stations = (findStationWays(scene, { pass, enough }) ?? []).map(({ stand }) => stand);
  return mustPassUnder(scene, createBody(polygon), [...operators, ...stations], pass);
}
