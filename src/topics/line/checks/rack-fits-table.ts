import {
  type Check,
  createMessages,
  fittingPlace,
  isUnder,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  nameFitting,
  nameTable,
  type Source,
  tablePlace,
} from '../../../rules';
import type { LaidFitting, PlacedTable, Scene } from '../../../scene';
import { COVE_RADIUS, RACK_CLEARANCE, RIM_ROLL } from '../formulas/tableEdges';

/** Before a rack of 20 in that stands in the middle between two rims. */
const PLAY = (lengthOf(RACK_CLEARANCE) - 508) / 2;
const COVE = lengthOf(COVE_RADIUS);
const ROLL = lengthOf(RIM_ROLL);

const GEOMETRY: Source = {
  kind: 'geometry',
  text: 'The rack follows its centre line; what lies farther from it than half a rack is free, and the edge of the table ends it.',
};

export const check: Check = {
  id: 'rack-fits-table',
  order: 800,
  title: 'A rack finds room across the table',
  unit: 'mm',
  relation: 'at-least',
  source: GEOMETRY,
  why: 'A rack that meets the rim or rides up the cove can’t be slid. A table is drawn to where its edge stands up: a rim rolled over the deck takes 1¾ in more. Between rims 20¼ to 20½ in are usual; a guide for military kitchens has tables of 30 to 36 in in all, and a frame of 20½ in for a rack to slide in.',
  measure: (scene: Scene) => scene.tables.filter(({ machine }) => machine !== null).flatMap((table) => measureTable(scene, table)),
};

/** What is said of a rack and the edges of its table. `over`: how far it, or an opening, reaches over the edge. */
export interface RackFitsTableMessages {
  'rack-fits-table/over-front': { table: Name; over: number };
  'rack-fits-table/binds-at-front': { table: Name; room: number; wanted: number };
  /** What a rim takes that is rolled over the deck; null where no rim would meet the rack. */
  'rack-fits-table/front': { table: Name; room: number; rolledRim: number | null };
  'rack-fits-table/over-back': { table: Name; back: Back; over: number };
  'rack-fits-table/rides-up-cove': { table: Name; back: Back; room: number; cove: number };
  'rack-fits-table/back': { table: Name; back: Back; room: number };
  'rack-fits-table/opening-over-edge': { fitting: Name; over: number; widest: number };
  'rack-fits-table/opening': { fitting: Name; room: number };
}

/** What ends the table at its back. */
export type Back = 'backsplash' | 'edge';

const say = createMessages<RackFitsTableMessages>();

function measureTable(scene: Scene, placed: PlacedTable): Measurement[] {
  const half = scene.plan.settings.rackSize / 2;
  const { depth, rackLineFromEdge } = placed.table;
  const name = nameTable(scene, placed);
  return [
    measureFront(placed, name, rackLineFromEdge - half),
    measureBack(placed, name, depth - rackLineFromEdge - half),
    ...placed.fittings.flatMap((fitting) => measureOpening(placed, fitting)),
  ];
}

const USUAL: Source = { kind: 'published', document: 'Trade convention', section: '20¼ to 20½ in between rims', confidence: 'memory' };

function measureFront(placed: PlacedTable, name: Name, room: number): Measurement {
  const { table } = placed;
  return {
    part: 'front',
    subjects: [table.id],
    place: tablePlace(placed),
    value: room,
    limit: 0,
    watchLimit: PLAY,
    ...(isUnder(room, 0) ? {} : { source: USUAL }),
    message: describeFront(table.make.rim, name, room),
  };
}

function describeFront(rim: number | null, table: Name, room: number): Message {
  if (isUnder(room, 0)) return say('rack-fits-table/over-front', { table, over: -room });
  if (isUnder(room, PLAY)) return say('rack-fits-table/binds-at-front', { table, room, wanted: PLAY });
  // How a rim is rolled no field says.
  return say('rack-fits-table/front', { table, room, rolledRim: rim === 0 || !isUnder(room, ROLL) ? null : ROLL });
}

const COVED: Source = {
  kind: 'published',
  document: 'UFGS 11400N',
  section: '2.4.2.4: backsplash with a cove of ⅝ in (15 mm) radius',
  confidence: 'read',
};

function measureBack(placed: PlacedTable, name: Name, room: number): Measurement {
  const { table } = placed;
  const cove = table.backsplash > 0 ? COVE : 0;
  return {
    part: 'back',
    subjects: [table.id],
    place: tablePlace(placed),
    value: room,
    limit: 0,
    watchLimit: cove,
    ...(cove === 0 || isUnder(room, 0) ? {} : { source: COVED }),
    message: describeBack({ table: name, back: table.backsplash > 0 ? 'backsplash' : 'edge' }, room, cove),
  };
}

function describeBack(behind: { table: Name; back: Back }, room: number, cove: number): Message {
  if (isUnder(room, 0)) return say('rack-fits-table/over-back', { ...behind, over: -room });
  return isUnder(room, cove)
    ? say('rack-fits-table/rides-up-cove', { ...behind, room, cove })
    : say('rack-fits-table/back', { ...behind, room });
}

/** Bowls and openings lie about the rack’s line, and must leave an edge of the table on either side. */
function measureOpening(placed: PlacedTable, { fitting }: LaidFitting): Measurement[] {
  const { table } = placed;
  if (fitting.kind !== 'sink' && fitting.kind !== 'scrap') return [];
  const toEdge = Math.min(table.rackLineFromEdge, table.depth - table.rackLineFromEdge);
  const room = toEdge - fitting.width / 2;
  return [
    {
      part: fitting.kind === 'sink' ? 'bowl' : 'opening',
      subjects: [fitting.id, table.id],
      place: fittingPlace(placed, fitting),
      value: room,
      limit: 0,
      message: isUnder(room, 0)
        ? say('rack-fits-table/opening-over-edge', { fitting: nameFitting(fitting), over: -room, widest: 2 * toEdge })
        : say('rack-fits-table/opening', { fitting: nameFitting(fitting), room }),
    },
  ];
}
