import { type Point, type Polyline, pointAt, projectOnPath } from '../../geometry';
import type { Fitting, Plan, Table } from '../../plan';
import type { PlacedTable } from '../../scene';
import { nounOf } from '../lists/names';
import { roundTo } from '../snap/step';
import type { Guide, Readout } from '../types';
import type { Aim } from './aim';
import type { Pull, Solution } from './solution';

/** Slides a fitting along its table. It stops at the ends and catches beside its neighbours. */
export function solveFittingMove({ scene, from, to, aim }: Pull, placed: PlacedTable, fitting: Fitting): Solution {
  const by = projectOnPath(placed.path, to).s - projectOnPath(placed.path, from).s;
  const half = fitting.length / 2;
  const inside = (at: number) => Math.min(Math.max(at, half), placed.length - half);
  const caught = aim.isFree ? null : catchBeside(placed.table, fitting, fitting.at + by, placed.length, aim);
  const at = inside(caught ?? half + roundTo(fitting.at + by - half, aim.step));
  return {
    label: `Move ${nounOf(scene.plan, fitting.id)}`,
    recipe: editFitting(placed.table.id, fitting.id, { at }),
    guides: caught === null ? [] : acrossGuides(placed.path, [at - half, at + half]),
    readouts: spanReadouts(placed, at - half, at + half),
  };
}

/** Drags one end of a fitting; the other stays. */
export function solveFittingEdge({ scene, from, to, aim }: Pull, placed: PlacedTable, fitting: Fitting, edge: 'from' | 'to'): Solution {
  const by = projectOnPath(placed.path, to).s - projectOnPath(placed.path, from).s;
  const [start, end] = [fitting.at - fitting.length / 2, fitting.at + fitting.length / 2];
  const most = edge === 'to' ? placed.length - start : end;
  const length = Math.min(Math.max(roundTo(fitting.length + (edge === 'to' ? by : -by), aim.step), LEAST_LENGTH), most);
  const at = edge === 'to' ? start + length / 2 : end - length / 2;
  return {
    label: `Change length of ${nounOf(scene.plan, fitting.id)}`,
    recipe: editFitting(placed.table.id, fitting.id, { at, length }),
    readouts: spanReadouts(placed, at - length / 2, at + length / 2),
  };
}

/** As the plan has it, mm. */
const LEAST_LENGTH = 10;

/** Beside a neighbour on either side, at either end of the table. */
function catchBeside(table: Table, fitting: Fitting, at: number, whole: number, { reach }: Aim): number | null {
  const half = fitting.length / 2;
  const others = table.fittings.filter(({ id, kind }) => id !== fitting.id && kind !== 'overshelf');
  const spots = [
    half,
    whole - half,
    ...others.flatMap((other) => [other.at + other.length / 2 + half, other.at - other.length / 2 - half]),
  ];
  const best = spots.sort((a, b) => Math.abs(a - at) - Math.abs(b - at))[0];
  return best !== undefined && Math.abs(best - at) <= reach ? best : null;
}

function acrossGuides(path: Polyline, places: readonly number[]): Guide[] {
  return places.map((s) => {
    const { point } = pointAt(path, s);
    return { kind: 'flush', from: point, to: point };
  });
}

/** From the joint to the fitting, its own length, from it to the end. */
function spanReadouts({ path, length }: PlacedTable, from: number, to: number): Readout[] {
  const at = (s: number): Point => pointAt(path, s).point;
  const row = (kind: Readout['kind'], a: number, b: number): Readout[] =>
    b - a > 0.5 ? [{ kind, from: at(a), to: at(b), value: b - a }] : [];
  return [...row('distance', 0, from), ...row('length', from, to), ...row('distance', to, length)];
}

function editFitting(table: string, id: string, change: { at: number; length?: number }) {
  return (draft: Plan) => {
    const item = draft.tables.find((each) => each.id === table)?.fittings.find((each) => each.id === id);
    if (item !== undefined) Object.assign(item, change);
  };
}
