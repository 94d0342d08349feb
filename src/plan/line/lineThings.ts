import type { Thing } from '../planSchema';
import { DOOR_INSET, DOOR_WIDTH, type LineBox } from './lineRoom';
import type { LineSide } from './lineSides';
import { LINE_THING } from './lineSite';

const SINK = { width: 430, depth: 380 };
const BIN = 350;
/** From the door's jamb to the middle of the sink, and from there to the middle of its bin. */
const DOOR_TO_SINK = 800;
const SINK_TO_BIN = 500;
const OFF_WALL = 20;

/** A hand sink on the wall of the door with a bin beside it, and a bin in the corner beyond the drop-off, in the machine's frame. */
export function createCleanliness(box: LineBox, soiled: LineSide, clean: LineSide): Thing[] {
  const [from, away] = besideDoor(box, soiled, clean);
  const sink = from + away * DOOR_TO_SINK;
  return [
    thing('hand-sink', 'hand-sink', { x: sink, y: box.front - SINK.depth / 2, rotationDeg: 180, ...SINK, height: 900 }),
    bin('hand-sink-bin', { x: sink + away * SINK_TO_BIN, y: box.front - BIN / 2 - OFF_WALL }),
    bin('waste-bin', dropOffCorner(box, soiled)),
  ];
}

/** The jamb that the sink is measured from, and which way it lies: along the wall where that is long, toward the clean side. */
function besideDoor(box: LineBox, soiled: LineSide, clean: LineSide): [from: number, away: 1 | -1] {
  if (soiled.side === 'left') return [box.left + DOOR_INSET + DOOR_WIDTH, 1];
  if (soiled.side === 'right') return [box.right - DOOR_INSET - DOOR_WIDTH, -1];
  const middle = (box.left + box.right) / 2;
  return clean.side === 'left' ? [middle - DOOR_WIDTH / 2, -1] : [middle + DOOR_WIDTH / 2, 1];
}

/** Where the wall behind the soiled table meets the wall beyond its end. */
function dropOffCorner(box: LineBox, { side, operatorSide }: LineSide): { x: number; y: number } {
  const off = BIN / 2 + OFF_WALL;
  if (side === 'left') return { x: box.left + off, y: box.back + off };
  if (side === 'right') return { x: box.right - off, y: box.back + off };
  return { x: operatorSide === 'right' ? box.right - off : box.left + off, y: box.front - off };
}

type Place = Pick<Thing, 'x' | 'y' | 'rotationDeg' | 'width' | 'depth' | 'height'>;

const thing = (id: string, kind: Thing['kind'], place: Place): Thing => ({ id, kind, name: '', ...place, ware: 'none', ...LINE_THING });

const bin = (id: string, at: { x: number; y: number }): Thing =>
  thing(id, 'bin', { ...at, rotationDeg: 0, width: BIN, depth: BIN, height: 700 });
