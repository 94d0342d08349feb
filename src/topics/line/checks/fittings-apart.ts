import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Name,
  nameFitting,
  nameTable,
  type Place,
  tablePlace,
} from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';
import { DRAWING_TOLERANCE } from '../../room';
import { findSharedStretch, type SharedStretch, sharedArea } from './support/fittings';
import { moveFitting, moveFittingId } from './support/moveFitting';

export const check: Check = {
  id: 'fittings-apart',
  order: 130,
  title: 'Each fitting has its own stretch of the table',
  unit: 'mm',
  relation: 'at-most',
  source: { kind: 'geometry', text: 'Two fittings cannot take the same stretch of a table. 1 mm is left to drawing.' },
  why: 'A table is built to its openings: a sink cut through a scrap opening is no table, and racks cannot rest on a hole. A stretch that is given away twice is counted twice.',
  measure: (scene) => scene.tables.flatMap((table) => measureTable(scene, table)),
};

/** What is said of the fittings of a table; `length` is that of the stretch which two of them take. */
export interface FittingsApartMessages {
  'fittings-apart/shared': { one: Name; other: Name; table: Name; length: number };
  'fittings-apart/apart': { table: Name; fittings: number };
}

const say = createMessages<FittingsApartMessages>();

function measureTable(scene: Scene, table: PlacedTable): Measurement[] {
  if (table.fittings.length < 2) return [];
  const shared = listShared(table);
  return shared.length === 0 ? [measureGood(scene, table)] : shared.map((pair) => measureShared(scene, table, pair));
}

function listShared({ fittings }: PlacedTable): SharedStretch[] {
  return fittings.flatMap((one, i) =>
    fittings
      .slice(i + 1)
      .map((other) => findSharedStretch(one, other))
      .filter((found) => found !== null),
  );
}

function measureShared(scene: Scene, table: PlacedTable, pair: SharedStretch): Measurement {
  const { one, other, from, to } = pair;
  return {
    subjects: [one.fitting.id, other.fitting.id, table.table.id],
    place: sharedPlace(scene, table, pair),
    elevation: { table: table.table.id, from, to },
    value: to - from,
    limit: DRAWING_TOLERANCE,
    ...(isSetDown(pair) ? { severity: 'watch' } : {}),
    message: say('fittings-apart/shared', {
      one: nameFitting(one.fitting),
      other: nameFitting(other.fitting),
      table: nameTable(scene, table),
      length: to - from,
    }),
    repairs: {
      ids: [moveFittingId(one.fitting), moveFittingId(other.fitting)],
      find: () => [...moveFitting(scene, table, one), ...moveFitting(scene, table, other)],
    },
  };
}

function sharedPlace({ tables }: Scene, { table }: PlacedTable, pair: SharedStretch): Place {
  const placed = tables.find((item) => item.table.id === table.id);
  return areaPlace(...(placed === undefined ? [] : [sharedArea(placed, pair)]));
}

/** Where ware is set down on a place for ware or racks, people can take turns: a watch. Over a hole, or racks on racks, they cannot. */
function isSetDown({ one, other }: SharedStretch): boolean {
  const kinds = [one.fitting.kind, other.fitting.kind];
  return kinds.includes('drop-off') && kinds.every((kind) => kind === 'drop-off' || kind === 'landing');
}

const measureGood = (scene: Scene, table: PlacedTable): Measurement => ({
  subjects: [table.table.id],
  place: tablePlace(table),
  value: 0,
  limit: DRAWING_TOLERANCE,
  message: say('fittings-apart/apart', { table: nameTable(scene, table), fittings: table.fittings.length }),
});
