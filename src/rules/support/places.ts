import type { ConnectionKind } from '../../catalog';
import { isNear, type Point, type Polygon, pointAt, type Segment, strip } from '../../geometry';
import type { PlacedMachine, PlacedRun, PlacedTable, PlacedThing, Scene } from '../../scene';
import type { Place } from '../check';

/** A spot on the plan; a height that comes with it is left out. */
export const pointPlace = ({ x, y }: Point): Place => ({ kind: 'point', point: { x, y } });

/** A stretch on the plan. */
export const segmentPlace = ({ a, b }: Segment): Place => ({ kind: 'segment', segment: { a, b } });

/** One or more areas on the plan. */
export const areaPlace = (...polygons: Polygon[]): Place => ({ kind: 'area', polygons });

/** The way of a duct or pipe as seen from above, as wide as it is; a point where it only rises. */
export function wayPlace(points: readonly Point[], width: number): Place {
  const legs = points.slice(1).map((b, i) => [points[i] ?? b, b] as const);
  const flat = legs.filter(([a, b]) => !isNear(a, b));
  const first = points[0] ?? { x: 0, y: 0 };
  return flat.length === 0 ? pointPlace(first) : areaPlace(...flat.flatMap((leg) => strip(leg, width / 2, width / 2).pieces));
}

/** Where a machine stands. */
export const machinePlace = ({ footprint }: Pick<PlacedMachine, 'footprint'>): Place => areaPlace(footprint);

/** Where all machines of the plan stand. */
export const machinesPlace = ({ machines }: Pick<Scene, 'machines'>): Place => areaPlace(...machines.map(({ footprint }) => footprint));

/** The place of a machine’s own connection; its footprint where it has none of that kind. */
export function connectionPlace({ connections, footprint }: PlacedMachine, kind: ConnectionKind): Place {
  const found = connections.find(({ connection }) => connection.kind === kind);
  return found === undefined ? areaPlace(footprint) : pointPlace(found.point);
}

/** Where a table stands. */
export const tablePlace = ({ outline }: Pick<PlacedTable, 'outline'>): Place => areaPlace(outline);

/** Where a fitting of a table is. */
export const fittingPlace = ({ fittings, outline }: PlacedTable, { id }: { id: string }): Place =>
  areaPlace(fittings.find(({ fitting }) => fitting.id === id)?.polygon ?? outline);

/** A spot of a table, so far from its joint along the rack centre line. */
export const spotPlace = ({ path }: Pick<PlacedTable, 'path'>, at: number): Place => pointPlace(pointAt(path, at).point);

/** Where things stand. */
export const thingsPlace = (...things: readonly PlacedThing[]): Place => areaPlace(...things.map(({ polygon }) => polygon));

/** The areas of several of these. */
export const severalPlaces = (...places: Place[]): Place =>
  areaPlace(...places.flatMap((place) => (place.kind === 'area' ? place.polygons : [])));

/** The way of a run, as wide as it is. */
export const runPlace = ({ run, points }: PlacedRun): Place => wayPlace(points, run.diameter);
