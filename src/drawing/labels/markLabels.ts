import { along, directionOf, distance, type Point, type Polygon, scale } from '../../geometry';
import type { PlacedTable, Scene } from '../../scene';
import type { Prim } from '../drawing';
import { flattenPath } from '../floorPlan/drawRun';
import { placeAcross } from '../floorPlan/drawTable';
import type { Box } from '../layout/box';
import type { IsWorth, Label, LabelChoice } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { middleOf } from '../support/vec';

/** Width of a lozenge, and its height as a part of that, paper mm. */
export const MARK_SIZE = 6.6;
const MARK_HEIGHT = MARK_SIZE * 0.62;

/** Item marks in lozenges, in the order of their marks; of all things, or of `ids`. `unit`: plan mm per paper mm. */
export function createMarkLabels(scene: Scene, unit: number, ids?: ReadonlySet<string>): Label[] {
  const marked = Object.keys(scene.marks).filter((id) => ids?.has(id) ?? true);
  return marked.flatMap((id) => {
    const places = findPlaces(scene, id, unit);
    return places === null ? [] : [createLabel(scene, id, places, unit)];
  });
}

/** What it costs to stand on a thing but not in the best place, and to stand beside it. */
const ELSEWHERE = 0.5;
const BESIDE = 8;

function createLabel(scene: Scene, id: string, { best, elsewhere, around }: Places, unit: number): Label {
  function* spare(isWorth: IsWorth) {
    for (const [i, point] of elsewhere().entries()) yield createChoice(scene, id, point, (i + 1) * ELSEWHERE, null, unit);
    if (!isWorth(BESIDE)) return;
    for (const [i, { point, target }] of around().entries()) yield createChoice(scene, id, point, BESIDE + i * 0.1, target, unit);
  }
  return {
    isRequired: true,
    choices: best === null ? [] : [createChoice(scene, id, best, 0, null, unit)],
    spare: { cost: best === null ? BESIDE : ELSEWHERE, choices: spare },
  };
}

/** Where the mark of a thing may stand, on the plan: in one place on it, elsewhere on it, or beside it with a leader. */
interface Places {
  best: Point | null;
  elsewhere: () => Point[];
  around: () => { point: Point; target: Point }[];
}

function findPlaces(scene: Scene, id: string, unit: number): Places | null {
  const machine = scene.machines.find((placed) => placed.machine.id === id);
  if (machine !== undefined) return placesOn(machine.footprint, unit);
  const table = scene.tables.find((placed) => placed.table.id === id);
  if (table !== undefined) return placesOnTable(table, scene.plan.settings.rackSize, unit);
  const thing = scene.things.find((placed) => placed.thing.id === id);
  if (thing !== undefined) return placesOn(thing.polygon, unit);
  const hood = scene.hoods.find((placed) => placed.hood.id === id);
  if (hood !== undefined) return placesOff(() => placesBeside(hood.polygon, unit));
  const run = scene.runs.find((placed) => placed.run.id === id);
  return run === undefined ? null : placesOff(() => placesBesidePath(flattenPath(run.points), run.run.diameter, unit));
}

function placesOn(polygon: Polygon, unit: number): Places {
  const best = middleOf(polygon);
  const elsewhere = () => [0.25, 0.4].flatMap((k) => polygon.map((corner) => along(best, minus(corner, best), k)));
  return { best, elsewhere, around: () => placesBeside(polygon, unit) };
}

/** What hangs above others bears no mark on it. */
const placesOff = (around: Places['around']): Places => ({ best: null, elsewhere: () => [], around });

const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** On the strip between the racks and the back edge; then anywhere on the rack line. */
function placesOnTable(table: PlacedTable, rackSize: number, unit: number): Places {
  const { depth, rackLineFromEdge } = table.table;
  const strip = (rackSize / 2 + depth - rackLineFromEdge) / 2;
  // Behind a bowl or at the far end, so that the fall finds room on the clear stretches.
  const bowls = table.fittings
    .filter(({ fitting }) => fitting.kind === 'sink' || fitting.kind === 'scrap')
    .map(({ from, to }) => (from + to) / 2);
  const places = [...bowls, ...[0.86, 0.5, 0.12, 0.7, 0.3].map((share) => share * table.length)];
  const [best = 0, ...others] = places;
  return {
    best: placeAcross(table, best, -strip),
    elsewhere: () => [...others.map((s) => placeAcross(table, s, -strip)), ...places.map((s) => placeAcross(table, s, 0))],
    around: () => placesBeside(table.outline, unit),
  };
}

/** Beside an outline, a leader's length away: at the middle of each edge, then at its corners. */
function placesBeside(polygon: Polygon, unit: number): ReturnType<Places['around']> {
  const centre = middleOf(polygon);
  const targets = polygon.flatMap((corner, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? corner;
    return [0.5, 0.2, 0.8].map((k) => along(corner, minus(next, corner), k));
  });
  return [7, 11, 16].flatMap((reach) =>
    targets.map((target) => {
      const away = minus(target, centre);
      const length = Math.hypot(away.x, away.y) || 1;
      return { point: along(target, scale(away, 1 / length), reach * unit), target };
    }),
  );
}

function placesBesidePath(path: readonly Point[], diameter: number, unit: number): ReturnType<Places['around']> {
  const besideLegs = path.slice(1).flatMap((b, i) => {
    const a = path[i] ?? b;
    const target = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    if (distance(a, b) / unit < 9) return [];
    return [0, 90, 180, 270, 45, 135, 225, 315].map((deg) => ({ point: along(target, directionOf(deg), diameter / 2 + 7 * unit), target }));
  });
  const only = path[0] ?? { x: 0, y: 0 };
  const spare = [0, 90, 180, 270].map((deg) => ({ point: along(only, directionOf(deg), diameter / 2 + 8 * unit), target: only }));
  return [...besideLegs, ...spare];
}

function createChoice(scene: Scene, id: string, point: Point, cost: number, target: Point | null, unit: number): LabelChoice {
  return { cost, boxes: [markBox(point, unit)], draw: () => drawMark(id, scene.marks[id] ?? '', point, target) };
}

function drawMark(id: string, mark: string, point: Point, target: Point | null): Prim[] {
  const pen = createPen('marks', id);
  const leader = (to: Point) => [
    pen.line([to, point], { stroke: 'ink', width: WIDTH.narrow }),
    pen.symbol(to, 'dot', 0.8, { fill: 'ink' }),
  ];
  return [
    ...(target === null ? [] : leader(target)),
    pen.symbol(point, 'lozenge', MARK_SIZE, { stroke: 'ink', width: WIDTH.medium, fill: 'paper' }),
    pen.text(point, mark, LETTER.text, { anchor: 'middle', baseline: 'middle', weight: 'semibold' }),
  ];
}

const markBox = (point: Point, unit: number): Box => ({
  centre: scale(point, 1 / unit),
  d: { x: 1, y: 0 },
  halfLength: MARK_SIZE / 2,
  halfHeight: MARK_HEIGHT / 2,
});
