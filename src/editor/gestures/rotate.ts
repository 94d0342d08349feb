import { along, angleOf, differenceDeg, directionOf, type Point, sub } from '../../geometry';
import type { Plan } from '../../plan';
import { nounOf } from '../lists/names';
import { rotateThings } from '../moves/moveThings';
import { startOf } from '../snap/box';
import { snapRotation } from '../snap/rotation';
import { findSubject } from '../subject/subject';
import type { Pull, Solution } from './solution';

/** Where a thing is turned about and how far it is turned now; null for what can't be turned by itself. */
export function pivotOf(plan: Plan, id: string): { centre: Point; rotationDeg: number } | null {
  const subject = findSubject(plan, id);
  if (subject === null) return null;
  const body = [...plan.machines, ...plan.things, ...plan.hoods, ...plan.room.columns].find((item) => item.id === id);
  if (body !== undefined) return { centre: { x: body.x, y: body.y }, rotationDeg: body.rotationDeg };
  const table = plan.tables.find((item) => item.id === id);
  if (table === undefined || table.place.kind === 'joined') return null;
  const { x, y, headingDeg } = startOf(plan, table);
  return { centre: { x, y }, rotationDeg: headingDeg };
}

/** Turns a thing about its centre as the pointer goes round it: held to 15° and square to walls, free with alt. */
export function solveRotate({ scene, from, to, aim }: Pull, id: string): Solution {
  const { plan } = scene;
  const pivot = pivotOf(plan, id);
  const label = `Turn ${nounOf(plan, id)}`;
  if (pivot === null) return { label, recipe: () => {} };
  const { centre, rotationDeg } = pivot;
  const swept = differenceDeg(angleOf(sub(from, centre)), angleOf(sub(to, centre)));
  const target = snapRotation(rotationDeg + swept, scene.room.walls, aim.isFree);
  const radius = Math.hypot(to.x - centre.x, to.y - centre.y);
  const arm = along(centre, directionOf(angleOf(sub(from, centre)) + differenceDeg(rotationDeg, target)), radius);
  return {
    label,
    recipe: rotateThings(scene, [id], differenceDeg(rotationDeg, target), centre),
    guides: [{ kind: 'step', from: centre, to: arm }],
    readouts: [{ kind: 'angle', from: centre, to: arm, value: target }],
  };
}
