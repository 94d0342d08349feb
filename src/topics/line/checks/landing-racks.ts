import { type Check, createMessages, type Measurement, type Name, nameTable, type Source, tablePlace } from '../../../rules';
import type { Line, PlacedTable, Scene, Station } from '../../../scene';
import { lengthenTable } from './support/lengthen';

export const check: Check = {
  id: 'landing-racks',
  order: 120,
  title: 'Racks find room before and after the machine',
  group: 'capacity',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-301.13, the same text as California Health and Safety Code §114103(d)',
    confidence: 'read',
  },
  why: 'Tables must be large enough for all the ware that gathers. The code gives no number; how many racks are wanted is a setting of the plan. Texts differ: 36 to 48 in at each side, or 60 in before the machine and 48 in after it, or six parts soiled to four parts clean; no agency stands behind any of them.',
  measure: (scene) =>
    scene.lines.flatMap((line) => [
      ...measureLanding(scene, line, line.soiled, 'soiled-landing', scene.plan.settings.racksBefore),
      ...measureLanding(scene, line, line.clean, 'clean-landing', scene.plan.settings.racksAfter),
    ]),
};

/** What is said of the room for racks on a table; `length` is that of the stretch on which they wait. */
export interface LandingRacksMessages {
  'landing-racks/room': Landing;
  'landing-racks/too-little-room': Landing;
}

interface Landing {
  table: Name;
  racks: number;
  length: number;
  wanted: number;
}

const say = createMessages<LandingRacksMessages>();

/** How many racks are wanted has no agency's figure behind it. */
const WANTED: Source = {
  kind: 'common-practice',
  text: 'Room for three racks before the machine and three after it; a setting of the plan.',
};

function measureLanding(scene: Scene, line: Line, table: PlacedTable | null, kind: Station['kind'], wanted: number): Measurement[] {
  const station = line.stations.find((item) => item.kind === kind);
  if (table === null || station === undefined) return [];
  const racks = station.racks ?? 0;
  const landing = { table: nameTable(scene, table), racks, length: station.length ?? 0, wanted };
  const isEnough = racks >= wanted;
  const side = kind === 'soiled-landing' ? 'before' : 'after';
  return [
    {
      part: side,
      subjects: [table.table.id],
      place: tablePlace(table),
      value: racks,
      limit: wanted,
      // The number wanted is common practice: falling short of it is only a watch, no room at all is a stop.
      ...(racks === 0 ? {} : { severity: 'watch', source: WANTED }),
      message: say(isEnough ? 'landing-racks/room' : 'landing-racks/too-little-room', landing),
      ...(isEnough ? {} : { repairs: { ids: ['lengthen-table'], find: () => lengthenTable(scene, table, station, wanted) } }),
    },
  ];
}
