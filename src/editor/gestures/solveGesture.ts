import type { Plan } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { findSubject } from '../subject/subject';
import type { Aim } from './aim';
import type { Gesture } from './gesture';
import { solveCornerMove } from './moveCorner';
import { solveFittingEdge, solveFittingMove } from './moveFitting';
import { solveOpeningEdge, solveOpeningMove } from './moveOpening';
import { solveFan, solveRunPoint } from './moveRun';
import { solveTableMove } from './moveTable';
import { solveMove } from './moveThings';
import { solveWallMove } from './moveWall';
import { EDGES, solveResize } from './resizeBox';
import { solveRotate } from './rotate';
import { solveLegEnd, solveTableStart } from './shapeTable';
import type { Pull, Solution } from './solution';

/** What a drag does, as far as it has come; null for what can't be dragged. */
export function solveGesture(gesture: Gesture, aim: Aim): Solution | null {
  const scene = deriveScene(gesture.start);
  const pull: Pull = { scene, from: gesture.from, to: gesture.to, aim, hold: gesture.held };
  return gesture.kind === 'handle' ? solveHandle(pull, gesture.id, gesture.handle) : solveBodies(pull, gesture.ids);
}

/** One thing that is bound to a wall, a table or a door moves in its own way; all others move over the floor. */
function solveBodies(pull: Pull, chosen: readonly string[]): Solution | null {
  const { plan } = pull.scene;
  const movable = chosen.filter((id) => !isStuck(plan, id, chosen));
  const ids = movable.length > 0 ? movable : chosen.slice(0, 1);
  const [id = ''] = ids;
  const kind = findSubject(plan, id)?.kind;
  if (ids.length > 1) return solveMove(pull, ids);
  if (kind === 'corner') return solveWallMove(pull, id);
  if (kind === 'opening') return withOpening(pull, id, (opening) => solveOpeningMove(pull, opening));
  if (kind === 'fitting') return withFitting(pull.scene, id, (table, fitting) => solveFittingMove(pull, table, fitting));
  if (kind === 'table') return withTable(pull, id, (table) => solveTableMove(pull, table));
  return kind === undefined ? null : solveMove(pull, ids);
}

/** A table whose machine is not moved along stays at its door while other things move. */
function isStuck({ tables }: Plan, id: string, chosen: readonly string[]): boolean {
  const place = tables.find((table) => table.id === id)?.place;
  return place?.kind === 'joined' && !chosen.includes(place.machine);
}

function solveHandle(pull: Pull, id: string, handle: string): Solution | null {
  const { plan } = pull.scene;
  if (handle === 'rotate') return solveRotate(pull, id);
  if (handle.startsWith('corner-')) return solveCornerMove(pull, handle.slice('corner-'.length));
  if (handle.startsWith('point-')) return withRun(pull, id, (run) => solveRunPoint(pull, run, Number(handle.slice('point-'.length))));
  if (handle === 'fan') return withRun(pull, id, (run) => solveFan(pull, run));
  if (handle === 'start') return withTable(pull, id, (table) => solveTableStart(pull, table));
  if (handle.startsWith('leg-')) return withTable(pull, id, (table) => solveLegEnd(pull, table, Number(handle.slice('leg-'.length))));
  if (handle === 'from' || handle === 'to') return solveSpan(pull, id, handle);
  return handle in EDGES && findSubject(plan, id) !== null ? solveResize(pull, id, handle) : null;
}

/** Ends of what lies along a wall or along a table. */
function solveSpan(pull: Pull, id: string, edge: 'from' | 'to'): Solution | null {
  const kind = findSubject(pull.scene.plan, id)?.kind;
  if (kind === 'opening') return withOpening(pull, id, (opening) => solveOpeningEdge(pull, opening, edge));
  return withFitting(pull.scene, id, (table, fitting) => solveFittingEdge(pull, table, fitting, edge));
}

type Named = { id: string };

function withItem<T extends Named>(items: readonly T[], id: string, solve: (item: T) => Solution): Solution | null {
  const item = items.find((each) => each.id === id);
  return item === undefined ? null : solve(item);
}

const withOpening = ({ scene }: Pull, id: string, solve: (item: Scene['plan']['room']['openings'][number]) => Solution) =>
  withItem(scene.plan.room.openings, id, solve);

const withTable = ({ scene }: Pull, id: string, solve: (item: Scene['plan']['tables'][number]) => Solution) =>
  withItem(scene.plan.tables, id, solve);

const withRun = ({ scene }: Pull, id: string, solve: (item: Scene['plan']['runs'][number]) => Solution) =>
  withItem(scene.plan.runs, id, solve);

function withFitting(
  scene: Scene,
  id: string,
  solve: (table: Scene['tables'][number], fitting: Scene['tables'][number]['table']['fittings'][number]) => Solution,
): Solution | null {
  for (const placed of scene.tables) {
    const fitting = placed.table.fittings.find((item) => item.id === id);
    if (fitting !== undefined) return solve(placed, fitting);
  }
  return null;
}
