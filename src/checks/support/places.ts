import type { ConnectionKind } from '../../catalog';
import { gather, isNear, type Point, type Polygon, type Segment, strip } from '../../geometry';
import type { Appliance, Scene } from '../../scene';
import type { LatePlace, Place } from '../types';

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
  return flat.length === 0 ? pointPlace(first) : areaPlace(...gather(flat, (leg) => strip(leg, width / 2, width / 2).pieces));
}

/** Where a machine stands. */
export const machinePlace = ({ machine }: { machine: { id: string } }): LatePlace => ({ kind: 'machines', ids: [machine.id] });

/** Where all machines of the plan stand. */
export const machinesPlace = ({ appliances }: Pick<Scene, 'appliances'>): LatePlace => ({
  kind: 'machines',
  ids: appliances.map(({ machine }) => machine.id),
});

/** The place of a machine’s own connection; its footprint where it has none of that kind. */
export const connectionPlace = ({ machine }: Appliance, connection: ConnectionKind): LatePlace => ({
  kind: 'machines',
  ids: [machine.id],
  connection,
});

/** Where a table stands. */
export const tablePlace = ({ table }: { table: { id: string } }): LatePlace => ({ kind: 'tables', id: table.id });

/** Where a fitting of a table is. */
export const fittingPlace = ({ table }: { table: { id: string } }, fitting: { id: string }): LatePlace => ({
  kind: 'tables',
  id: table.id,
  fitting: fitting.id,
});

/** A spot of a table, so far from its joint along the rack centre line. */
export const spotPlace = ({ table }: { table: { id: string } }, at: number): LatePlace => ({ kind: 'tables', id: table.id, at });

/** Where things stand. */
export const thingsPlace = (...things: readonly { thing: { id: string } }[]): LatePlace => ({
  kind: 'things',
  ids: things.map(({ thing }) => thing.id),
});

/** The areas of several of these. */
export const severalPlaces = (...of: LatePlace[]): LatePlace => ({ kind: 'several', of });

/** The way of a run, as wide as it is. */
export const runPlace = ({ run }: { run: { id: string } }): LatePlace => ({ kind: 'runs', id: run.id });
