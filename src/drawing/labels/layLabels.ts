import { along, type Point, scale } from '../../geometry';
import type { Scene } from '../../scene';
import { formatterFor } from '../../units';
import { DIMENSION } from '../dimensions/types';
import { drawOpening } from '../floorPlan/drawOpening';
import { flattenPath } from '../floorPlan/drawRun';
import type { PlanOptions } from '../floorPlan/planOptions';
import { type Box, boxAround, scaleBox } from '../layout/box';
import { inkBoxes } from '../layout/inkBoxes';
import { type PlacedLabels, placeLabels } from '../layout/placeLabels';
import { WALL_THICKNESS } from '../support/ink';
import { memoizeLast } from '../support/memoizeLast';
import { createMarkLabels } from './markLabels';
import { createNoteLabels } from './noteLabels';
import { createStubLabels } from './stubLabels';

/** The plan's marks and notes, placed once: the drawing shows them and the dimensions keep clear of them. Boxes in paper mm. */
export const layLabels: (scene: Scene, options: PlanOptions) => PlacedLabels = memoizeLast(
  (scene: Scene, units: PlanOptions['units'], unit: number): PlacedLabels => {
    const marks = placeLabels([...createMarkLabels(scene, unit), ...createStubLabels(scene, unit)], [], controlsOf(scene, unit));
    const notes = placeLabels(createNoteLabels(scene, formatterFor(units), unit), marks.taken, bodiesOf(scene, unit));
    return { prims: [...notes.prims, ...marks.prims], taken: notes.taken };
  },
  (scene, { units, scaleDenominator }): [Scene, PlanOptions['units'], number] => [scene, units, scaleDenominator],
);

/** The controls must stay to be seen. */
function controlsOf(scene: Scene, unit: number): Box[] {
  return scene.machines.flatMap(({ controls }) =>
    controls === null ? [] : [boxAround(scale(controls.face.a, 1 / unit), scale(controls.face.b, 1 / unit), 2)],
  );
}

/** Dimension lines beside a wall that notes leave room for, and how far their figures may stand past its ends, paper mm. */
const CHAINS = 3;
const PAST = 12;

/** What a note had better not run over: walls and the paper outside them where dimensions run, doors and shelves of windows, the operator, ducts, edges of bodies, backsplashes. */
function bodiesOf(scene: Scene, unit: number): Box[] {
  const around = (a: Point, b: Point, height: number) => boxAround(scale(a, 1 / unit), scale(b, 1 / unit), height);
  const walls = scene.room.walls.map(({ a, b, inward }) => {
    const [from, to] = [along(a, inward, -WALL_THICKNESS / 2), along(b, inward, -WALL_THICKNESS / 2)];
    return around(from, to, WALL_THICKNESS / unit);
  });
  const chains = scene.room.walls.flatMap(({ a, b, direction, inward }) =>
    Array.from({ length: CHAINS }, (_, i) => {
      const out = -(WALL_THICKNESS + (DIMENSION.first + i * DIMENSION.step) * unit);
      const end = (p: Point, past: number) => along(along(p, inward, out), direction, past * unit);
      return around(end(a, -PAST), end(b, PAST), DIMENSION.step);
    }),
  );
  const openings = scene.room.openings.flatMap((placed) => inkBoxes(drawOpening(placed), 0).map((box) => scaleBox(box, 1 / unit)));
  const people = scene.lines.flatMap(({ stand }) =>
    stand === null ? [] : [around(along(stand.centre, LEVEL, -250), along(stand.centre, LEVEL, 250), 500 / unit)],
  );
  const ducts = scene.runs.flatMap(({ run, points }) =>
    edgesOfPath(flattenPath(points)).map(([a, b]) => around(a, b, Math.max(0.2, run.diameter / unit - 1))),
  );
  const rings = [
    ...scene.machines.map(({ footprint }) => footprint),
    ...scene.tables.map(({ outline }) => outline),
    ...scene.things.map(({ polygon }) => polygon),
  ];
  const edges = rings.flatMap((ring) => edgesOfPath([...ring, ...ring.slice(0, 1)]).map(([a, b]) => around(a, b, 0.1)));
  const splashes = scene.tables.flatMap(({ backEdge }) => edgesOfPath(backEdge).map(([a, b]) => around(a, b, 1)));
  return [...walls, ...chains, ...openings, ...people, ...ducts, ...edges, ...splashes];
}

const LEVEL: Point = { x: 1, y: 0 };

const edgesOfPath = (path: readonly Point[]): [Point, Point][] => path.slice(1).map((b, i) => [path[i] ?? b, b]);
