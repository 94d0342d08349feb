import { along, type Point, scale } from '../../geometry';
import type { PlacedRoom, Scene } from '../../scene';
import type { Hue } from '../drawing';
import type { Label, LabelChoice } from '../layout/placeLabels';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';

type PlacedStub = PlacedRoom['stubs'][number];

/** Hue and letters of each kind of stub; the legend explains the letters. */
export const STUBS: Record<PlacedStub['stub']['kind'], { hue: Hue; letters: string; name: string }> = {
  'cold-water': { hue: 'water', letters: 'CW', name: 'cold water' },
  'hot-water': { hue: 'water', letters: 'HW', name: 'hot water' },
  power: { hue: 'power', letters: 'E', name: 'electricity' },
  'duct-exit': { hue: 'air', letters: 'DX', name: 'duct exit' },
};

/** Diameter of the ring and height of its letters, paper mm. */
const RING = 5.4;
const LETTERS = 2.2;

/** Stubs: a dot where each comes out, and its ring beside it, outside the wall where it comes out of one; all, or those of `ids`. */
export function createStubLabels(scene: Scene, unit: number, ids?: ReadonlySet<string>): Label[] {
  const stubs = scene.room.stubs.filter(({ stub }) => ids?.has(stub.id) ?? true);
  return stubs.map((placed) => ({ isRequired: true, choices: createChoices(scene, placed, unit) }));
}

function createChoices(scene: Scene, placed: PlacedStub, unit: number): LabelChoice[] {
  const out = outwardAt(scene, placed.point);
  const across = { x: -out.y, y: out.x };
  return [5.6, 8.5, 12].flatMap((reach, i) =>
    [0, 5.8, -5.8, 11.6, -11.6, 17.4, -17.4].map((shift, j) => {
      const centre = along(along(placed.point, out, reach * unit), across, shift * unit);
      return createChoice(placed, centre, i * 1.5 + Math.ceil(j / 2), unit);
    }),
  );
}

/** Out of the room through the nearest wall. */
function outwardAt({ room }: Scene, point: Point): Point {
  const depth = (wall: (typeof room.walls)[number]) =>
    Math.abs((point.x - wall.a.x) * wall.inward.x + (point.y - wall.a.y) * wall.inward.y);
  const near = room.walls.toSorted((a, b) => depth(a) - depth(b))[0];
  return near === undefined ? { x: 0, y: -1 } : scale(near.inward, -1);
}

function createChoice({ stub, point }: PlacedStub, centre: Point, cost: number, unit: number): LabelChoice {
  const { hue, letters } = STUBS[stub.kind];
  const pen = createPen('room', stub.id);
  return {
    cost,
    boxes: [{ centre: scale(centre, 1 / unit), d: { x: 1, y: 0 }, halfLength: RING / 2, halfHeight: RING / 2 }],
    draw: () => [
      pen.line([point, centre], { stroke: hue, width: WIDTH.narrow }),
      pen.symbol(point, 'dot', 1.3, { fill: hue }),
      pen.symbol(centre, 'ring', RING, { stroke: hue, width: WIDTH.medium, fill: 'paper' }),
      pen.text(centre, letters, LETTERS, { anchor: 'middle', baseline: 'middle', hue, weight: 'semibold' }),
    ],
  };
}
