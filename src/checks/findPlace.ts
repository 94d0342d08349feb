import { gather, isNear, isSameList, pointAt } from '../geometry';
import type { PlacedMachine, PlacedRun, PlacedTable, PlacedThing, Scene } from '../scene';
import { areaPlace, pointPlace, wayPlace } from './support/places';
import type { LatePlace, Place } from './types';

/** The lists that late places are looked up in. */
export type Standing = Pick<Scene, 'machines' | 'tables' | 'things' | 'runs'>;

/** Where the parts that a measurement names stand. */
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
      return areaPlace(...gather(late.of, (part) => polygonsOf(findPlace(part, standing))));
  }
}

/** Whether two places are of the same polygons; points and ways are told apart by where they are. */
export function isSamePlace(one: Place, other: Place): boolean {
  if (one.kind === 'area' && other.kind === 'area') return isSameList(one.polygons, other.polygons);
  if (one.kind === 'point' && other.kind === 'point') return isNear(one.point, other.point, 0);
  return one === other;
}

const polygonsOf = (place: Place) => (place.kind === 'area' ? place.polygons : []);

/** The lists that a place is looked up in. */
export const listsOf = (late: LatePlace): readonly (keyof Standing)[] =>
  late.kind === 'several' ? gather(late.of, listsOf) : ALONE[late.kind];

const ALONE: { readonly [K in keyof Standing]: readonly [K] } = {
  machines: ['machines'],
  tables: ['tables'],
  things: ['things'],
  runs: ['runs'],
};

function findMachines({ ids, connection }: LateOf<'machines'>, machines: readonly PlacedMachine[]): Place {
  const found = machines.filter(({ machine }) => ids.includes(machine.id));
  const point = connection === undefined ? undefined : found[0]?.connections.find((one) => one.connection.kind === connection)?.point;
  return point === undefined ? areaPlace(...found.map(({ footprint }) => footprint)) : pointPlace(point);
}

/** Of what is gone no area is left. */
function findTable({ id, fitting, at }: LateOf<'tables'>, tables: readonly PlacedTable[]): Place {
  const found = tables.find(({ table }) => table.id === id);
  if (found === undefined) return areaPlace();
  if (at !== undefined) return pointPlace(pointAt(found.path, at).point);
  return areaPlace(found.fittings.find((item) => item.fitting.id === fitting)?.polygon ?? found.outline);
}

const findThings = ({ ids }: LateOf<'things'>, things: readonly PlacedThing[]): Place =>
  areaPlace(...things.filter(({ thing }) => ids.includes(thing.id)).map(({ polygon }) => polygon));

function findRun({ id }: LateOf<'runs'>, runs: readonly PlacedRun[]): Place {
  const found = runs.find(({ run }) => run.id === id);
  return found === undefined ? areaPlace() : wayPlace(found.points, found.run.diameter);
}

type LateOf<K extends LatePlace['kind']> = Extract<LatePlace, { kind: K }>;
