import { findFamily } from '../../src/catalog';
import { add, directionOf, dot, leftOf, type Point, rightOf, scale, sub } from '../../src/geometry';
import { FLUSH, jointFrame, type Plan, type Table } from '../../src/plan';
import { tableOf } from './linePlan';

/** Where a table of the line begins, the way it runs, and the side where people stand. */
interface Front {
  joint: Point;
  way: Point;
  people: Point;
  headingDeg: number;
  operatorSide: Table['operatorSide'];
}

function frontOf(plan: Plan, role: Table['role']): Front {
  const { place, operatorSide } = tableOf(plan, role);
  const [machine] = plan.machines;
  const sheet = machine && findFamily(machine.sheet);
  if (machine === undefined || sheet === undefined || place.kind !== 'joined')
    throw new Error(`the ${role} table is joined to no machine of the catalogue`);
  const { x, y, headingDeg } = jointFrame(machine, sheet, place.side, FLUSH);
  const way = directionOf(headingDeg);
  return { joint: { x, y }, way, people: operatorSide === 'left' ? leftOf(way) : rightOf(way), headingDeg, operatorSide };
}

/** A place before the soiled table, so far along its rack line and away from it, for what turns its back to the table. */
export function beforeSoiled(plan: Plan, along: number, away: number): { x: number; y: number; rotationDeg: number } {
  const { joint, way, people, headingDeg, operatorSide } = frontOf(plan, 'soiled');
  const at = add(joint, add(scale(way, along), scale(people, away)));
  return { ...at, rotationDeg: operatorSide === 'left' ? headingDeg - 180 : headingDeg };
}

/** The place inside the turn of a corner line that lies so far from both rack lines. */
export function insideTurn(plan: Plan, away: number): Point {
  const [soiled, clean] = [frontOf(plan, 'soiled'), frontOf(plan, 'clean')];
  const toClean = dot(sub(soiled.joint, clean.joint), clean.people);
  return add(soiled.joint, add(scale(soiled.people, away), scale(clean.people, away - toClean)));
}
