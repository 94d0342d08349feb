import { scale } from '../../geometry';
import type { Scene } from '../../scene';
import { formatterFor } from '../../units';
import { type Box, boxAround } from '../layout/box';
import { type PlacedLabels, placeLabels } from '../layout/placeLabels';
import { flattenPath } from '../plan/drawRun';
import type { PlanOptions } from '../plan/planOptions';
import { memoizeLast } from '../support/memoizeLast';
import { createMarkLabels } from './markLabels';
import { createNoteLabels } from './noteLabels';
import { createStubLabels } from './stubLabels';

/** The plan's marks and notes, placed once: the drawing shows them and the dimensions keep clear of them. Boxes in paper mm. */
export const layLabels: (scene: Scene, options: PlanOptions) => PlacedLabels = memoizeLast(
  (scene: Scene, units: PlanOptions['units'], unit: number): PlacedLabels => {
    const marks = placeLabels([...createMarkLabels(scene, unit), ...createStubLabels(scene, unit)], [], controlsOf(scene, unit));
    return placeNotes(scene, marks, units, unit);
  },
  (scene, { units, scaleDenominator }): [Scene, PlanOptions['units'], number] => [scene, units, scaleDenominator],
);

function placeNotes(scene: Scene, marks: PlacedLabels, units: PlanOptions['units'], unit: number): PlacedLabels {
  const notes = placeLabels(createNoteLabels(scene, formatterFor(units), unit), marks.taken, bodiesOf(scene, unit));
  return { prims: [...notes.prims, ...marks.prims], taken: notes.taken };
}

/** The controls must stay to be seen. */
function controlsOf(scene: Scene, unit: number): Box[] {
  return scene.machines.flatMap(({ controls }) =>
    controls === null ? [] : [boxAround(scale(controls.face.a, 1 / unit), scale(controls.face.b, 1 / unit), 2)],
  );
}

/** What a note had better not run over: the operator, and the edges of bodies. */
function bodiesOf(scene: Scene, unit: number): Box[] {
  const stands = scene.lines.flatMap(({ stand }) => (stand === null ? [] : [stand.centre]));
  const people = stands.map(
    (centre): Box => ({ centre: scale(centre, 1 / unit), d: { x: 1, y: 0 }, halfLength: 250 / unit, halfHeight: 250 / unit }),
  );
  const edges = [...scene.machines.map(({ footprint }) => footprint), ...scene.things.map(({ polygon }) => polygon)].flatMap((ring) =>
    ring.map((a, i) => boxAround(scale(a, 1 / unit), scale(ring[(i + 1) % ring.length] ?? a, 1 / unit), 0.1)),
  );
  const lines = [
    ...scene.room.walls.map(({ a, b }) => [a, b] as const),
    ...scene.tables.flatMap(({ backEdge }) => backEdge.slice(1).map((b, i) => [backEdge[i] ?? b, b] as const)),
  ];
  const ducts = scene.runs.flatMap(({ run, points }) => {
    const path = flattenPath(points);
    return path
      .slice(1)
      .map((b, i) => boxAround(scale(path[i] ?? b, 1 / unit), scale(b, 1 / unit), Math.max(0.2, run.diameter / unit - 1)));
  });
  return [...ducts, ...people, ...edges, ...lines.map(([a, b]) => boxAround(scale(a, 1 / unit), scale(b, 1 / unit), 1))];
}
