import { along, directionOf, dot, type Point, rightOf, sub } from '../../geometry';
import { type Plan, setLegLength, type Table } from '../../plan';
import { nounOf } from '../lists/names';
import { type Box, nodesOf, startOf, type TableNode } from '../snap/box';
import { snapBoxes } from '../snap/snapBoxes';
import { roundTo } from '../snap/step';
import type { Guide, Readout } from '../types';
import { targetsBeside } from './moveThings';
import type { Pull, Solution } from './solution';

/** Least length of a leg that can be dragged, mm; the plan allows less when it is typed. */
const LEAST_LEG = 100;

/** Drags the end of a leg along its direction: the far end of the table, or one of its turns (what lies beyond goes along). */
export function solveLegEnd(pull: Pull, table: Table, leg: number): Solution {
  const { scene } = pull;
  const node = nodesOf(table, startOf(scene.plan, table))[leg + 1];
  if (node === undefined) return { label: 'Change length', recipe: () => {} };
  const direction = directionOf(node.headingDeg);
  const wanted = node.length + dot(sub(pull.to, pull.from), direction);
  const { length, guides } = catchLength(pull, table, node, wanted);
  return {
    label: `Change length of ${nounOf(scene.plan, table.id)}`,
    recipe: setLegLength(table.id, leg, length),
    guides,
    readouts: [lengthReadout(node.from, along(node.from, direction, length))],
  };
}

/** The length at which the end meets a wall or a thing; else by steps. */
function catchLength({ scene, aim }: Pull, table: Table, node: TableNode, wanted: number): { length: number; guides: readonly Guide[] } {
  if (aim.isFree) return { length: Math.max(wanted, LEAST_LEG), guides: [] };
  const snapped = snapBoxes([endEdge(table, node, wanted)], targetsBeside(scene, [table.id]), { reach: aim.reach, step: 0, axes: 'u' });
  const by = dot(snapped.by, directionOf(node.headingDeg));
  const isCaught = snapped.guides.length > 0 && wanted + by >= LEAST_LEG;
  return isCaught
    ? { length: wanted + by, guides: snapped.guides }
    : { length: Math.max(roundTo(wanted, aim.step), LEAST_LEG), guides: [] };
}

/** The end edge of a leg, as a box without thickness. */
function endEdge(table: Table, node: TableNode, length: number): Box {
  const u = directionOf(node.headingDeg);
  const aside = (table.operatorSide === 'right' ? 1 : -1) * (table.rackLineFromEdge - table.depth / 2);
  return { id: table.id, centre: along(along(node.from, u, length), rightOf(u), aside), u, hu: 0, hv: table.depth / 2 };
}

/** Drags the start of a free table along its first leg; everything beyond stays. */
export function solveTableStart(pull: Pull, table: Table): Solution {
  const { scene, from, to, aim } = pull;
  const { place } = table;
  const first = table.legs[0];
  if (place.kind === 'joined' || first === undefined) return { label: 'Change length', recipe: () => {} };
  const direction = directionOf(place.headingDeg);
  const length = Math.max(roundTo(first.length - dot(sub(to, from), direction), aim.step), LEAST_LEG);
  const end = along(place, direction, first.length);
  const start = along(end, direction, -length);
  return {
    label: `Change length of ${nounOf(scene.plan, table.id)}`,
    recipe: (draft) => {
      shiftFittings(draft, table.id, length - first.length);
      setLegLength(table.id, 0, length)(draft);
      const item = draft.tables.find(({ id }) => id === table.id);
      if (item?.place.kind === 'free') Object.assign(item.place, start);
    },
    readouts: [lengthReadout(start, end)],
  };
}

/** Fittings keep their place in the room when the start of their table moves, as far as the table will reach. */
function shiftFittings(draft: Plan, id: string, by: number): void {
  const table = draft.tables.find((item) => item.id === id);
  const whole = (table?.legs.reduce((sum, leg) => sum + leg.length, 0) ?? 0) + by;
  for (const fitting of table?.fittings ?? []) {
    const half = fitting.length / 2;
    fitting.at = Math.min(Math.max(fitting.at + by, half), whole - half);
  }
}

const lengthReadout = (from: Point, to: Point): Readout => ({ kind: 'length', from, to, value: Math.hypot(to.x - from.x, to.y - from.y) });
