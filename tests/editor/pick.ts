import { type EditorState, type Hit, handlesShown, type ItemShape, shapesOf } from '../../src/editor';
import { containsPoint, distance, distanceToSegment, edgesOf, type Point } from '../../src/geometry';
import { deriveScene } from '../../src/scene';

/**
 * What a press meets, by plain geometry, for tests without a canvas: the shapes of the things in the order in which the paper
 * shows them, and the handles above. `tolerance`: how near counts as on it, mm.
 */
export function pick(state: EditorState, point: Point, tolerance: number): Hit[] {
  const scene = deriveScene(state.history.present);
  const handles = handlesShown(state, scene).filter((handle) => distance(handle.point, point) <= 1.3 * tolerance);
  const shapes = [...shapesOf(scene).values()].filter((shape) => isOn(shape, point, tolerance));
  return [
    ...handles.map(({ id, subject }) => ({ id: subject, handle: id })),
    ...shapes.toSorted((a, b) => LEVELS.indexOf(b.kind) - LEVELS.indexOf(a.kind)).map(({ id }) => ({ id, handle: null })),
  ];
}

/** From the floor up, as the paper shows them. */
const LEVELS: ItemShape['kind'][] = [
  'corner',
  'opening',
  'column',
  'floor-drain',
  'thing',
  'table',
  'fitting',
  'machine',
  'hood',
  'run',
  'stub',
];

function isOn({ areas, lines, reach, least }: ItemShape, point: Point, tolerance: number): boolean {
  const near = Math.max(reach * tolerance, least);
  const away = lines.flatMap(({ points, closed }) => segmentsOf(points, closed).map((segment) => distanceToSegment(point, segment)));
  return areas.some((area) => containsPoint(area, point)) || away.some((length) => length <= near);
}

function segmentsOf(points: readonly Point[], isClosed: boolean) {
  const [a] = points;
  if (a !== undefined && points.length === 1) return [{ a, b: a }];
  return isClosed ? edgesOf(points) : points.slice(1).map((b, i) => ({ a: points[i] ?? b, b }));
}
