import type { ConnectionKind } from '../catalog';
import { type Polygon, pointAt } from '../geometry';
import { memoizeByIdentity, type PlacedMachine, type PlacedRun, type PlacedTable, type PlacedThing, type Scene } from '../scene';
import { areaPlace, pointPlace, wayPlace } from './support/places';
import type { LatePlace, Place } from './types';

/** The lists that late places are looked up in. */
export type Standing = Pick<Scene, 'machines' | 'tables' | 'things' | 'runs'>;

/** Where the parts that a measurement names stand; the same place while they do. */
export function findPlace(late: LatePlace, standing: Standing): Place {
  switch (late.kind) {
    case 'machines':
      return findMachines(late, standing.machines);
    case 'tables':
      return findTable(late, standing.tables);
    case 'things':
      return findThings(late, standing.things);
    case 'runs':
      return findRun(late, standing.runs);
    case 'several':
      return areaPlace(...late.of.flatMap((part) => polygonsOf(findPlace(part, standing))));
  }
}

const polygonsOf = (place: Place) => (place.kind === 'area' ? place.polygons : []);

/** The lists that a place is looked up in. */
export const listsOf = (late: LatePlace): readonly (keyof Standing)[] => (late.kind === 'several' ? late.of.flatMap(listsOf) : [late.kind]);

function findMachines({ ids, connection }: LateOf<'machines'>, machines: readonly PlacedMachine[]): Place {
  const [first, ...others] = ids.flatMap((id) => machines.find(({ machine }) => machine.id === id) ?? []);
  if (first === undefined) return NOWHERE;
  if (connection !== undefined) return connectionPlace(first, connection);
  return others.length === 0 ? ownPlace(first.footprint) : areaPlace(...[first, ...others].map(({ footprint }) => footprint));
}

function findTable({ id, fitting, at }: LateOf<'tables'>, tables: readonly PlacedTable[]): Place {
  const found = tables.find(({ table }) => table.id === id);
  if (found === undefined) return NOWHERE;
  if (at !== undefined) return pointPlace(pointAt(found.path, at).point);
  return ownPlace(
    (fitting === undefined ? undefined : found.fittings.find((item) => item.fitting.id === fitting)?.polygon) ?? found.outline,
  );
}

function findThings({ ids }: LateOf<'things'>, things: readonly PlacedThing[]): Place {
  const [first, ...others] = ids.flatMap((id) => things.find(({ thing }) => thing.id === id) ?? []);
  if (first === undefined) return NOWHERE;
  return others.length === 0 ? ownPlace(first.polygon) : areaPlace(...[first, ...others].map(({ polygon }) => polygon));
}

const findRun = ({ id }: LateOf<'runs'>, runs: readonly PlacedRun[]): Place => {
  const found = runs.find(({ run }) => run.id === id);
  return found === undefined ? NOWHERE : ductPlace(found);
};

type LateOf<K extends LatePlace['kind']> = Extract<LatePlace, { kind: K }>;

/** Of what is gone. */
const NOWHERE = areaPlace();

const ductPlace = memoizeByIdentity(({ run, points }: PlacedRun) => wayPlace(points, run.diameter));

const ownPlace = memoizeByIdentity((polygon: Polygon) => areaPlace(polygon));

const connectionPlace = memoizeByIdentity((placed: PlacedMachine, kind: ConnectionKind) => {
  const found = placed.connections.find(({ connection }) => connection.kind === kind);
  return found === undefined ? ownPlace(placed.footprint) : pointPlace(found.point);
});
