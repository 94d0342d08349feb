import {
  type Check,
  fittingPlace,
  isUnder,
  lengthOf,
  type Measurement,
  type Source,
  sentence,
  tableName,
  tablePlace,
} from '../../../rules';
import type { LaidFitting, PlacedTable, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { COVE_RADIUS, RACK_CLEARANCE, RIM_ROLL } from '../formulas/tableEdges';
import { fittingName } from './support/fittings';

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

function measureTable(scene: Scene, placed: PlacedTable): Measurement[] {
  const half = scene.plan.settings.rackSize / 2;
  const { depth, rackLineFromEdge } = placed.table;
  const name = tableName(scene, placed);
  return [
    measureFront(placed, name, rackLineFromEdge - half),
    measureBack(placed, name, depth - rackLineFromEdge - half),
    ...placed.fittings.flatMap((fitting) => measureOpening(placed, fitting)),
  ];
}

const USUAL: Source = { kind: 'published', document: 'Trade convention', section: '20¼ to 20½ in between rims', confidence: 'memory' };

function measureFront(placed: PlacedTable, name: string, room: number): Measurement {
  const { table } = placed;
  return {
    part: 'front',
    subjects: [table.id],
    place: tablePlace(placed),
    value: room,
    limit: 0,
    watchLimit: PLAY,
    ...(isUnder(room, 0) ? {} : { source: USUAL }),
    say: (f) => {
      if (isUnder(room, 0))
        return `A rack on ${name} reaches ${f.length(-room)} over its front edge. Set that edge farther from the rack’s line.`;
      const left = `${name} leaves ${f.length(room)} before a rack`;
      if (isUnder(room, PLAY)) return sentence(`${left}; with less than ${f.length(PLAY)} it binds on the rim. Set the edge farther out.`);
      return sentence(`${left}.${rollWords(table.make.rim, room, f)}`);
    },
  };
}

/** How a rim is rolled no field says. */
const rollWords = (rim: number | null, room: number, f: Formatter) =>
  rim === 0 || !isUnder(room, ROLL) ? '' : ` Have its rim rolled outward: over the deck it would take ${f.length(ROLL)}.`;

const COVED: Source = {
  kind: 'published',
  document: 'UFGS 11400N',
  section: '2.4.2.4: backsplash with a cove of ⅝ in (15 mm) radius',
  confidence: 'read',
};

function measureBack(placed: PlacedTable, name: string, room: number): Measurement {
  const { table } = placed;
  const [what, cove] = table.backsplash > 0 ? ['backsplash', COVE] : ['back edge', 0];
  return {
    part: 'back',
    subjects: [table.id],
    place: tablePlace(placed),
    value: room,
    limit: 0,
    watchLimit: cove,
    ...(cove === 0 || isUnder(room, 0) ? {} : { source: COVED }),
    say: (f) => {
      if (isUnder(room, 0)) return `A rack on ${name} reaches ${f.length(-room)} beyond its ${what}. Make the table deeper.`;
      const left = `${name} leaves ${f.length(room)} between a rack and its ${what}`;
      return sentence(
        isUnder(room, cove) ? `${left}; the cove takes ${f.length(cove)}, and the rack rides up it. Make the table deeper.` : `${left}.`,
      );
    },
  };
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
      say: (f) =>
        sentence(
          isUnder(room, 0)
            ? `${fittingName(fitting)} reaches ${f.length(-room)} over the edge of its table. Take one of ${f.length(2 * toEdge)} across at most.`
            : `${fittingName(fitting)} lies ${f.length(room)} within the edge of its table.`,
        ),
    },
  ];
}
