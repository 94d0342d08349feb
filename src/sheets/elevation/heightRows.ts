import type { Scene } from '../../scene';
import { DIMENSION, type DimensionRequest, type DimensionRow, type Span } from '../dimensions/types';
import { unrollHood } from './drawAir';
import { at, type ElevationFrame } from './elevationFrame';
import type { UnrolledLine } from './unrollLine';

/** A height above the floor that is dimensioned. */
interface Height {
  x: number;
  z: number;
  edit?: Span['edit'];
  subject?: string;
}

/** Heights above the floor, each on a line of its own to the right of the drawing, the lowest nearest. */
export function createHeightRows(scene: Scene, unrolled: UnrolledLine, to: number, frame: ElevationFrame): DimensionRequest[] {
  return findHeights(scene, unrolled, to)
    .toSorted((a, b) => a.z - b.z)
    .map((height) => ({ rows: rowsAt(height, to, frame) }));
}

function findHeights(scene: Scene, unrolled: UnrolledLine, to: number): Height[] {
  const { machine, right } = unrolled;
  const { ceilingHeight } = scene.room;
  const own = machine.machine.id;
  const hoods = scene.hoods.flatMap((hood, i): Height[] => {
    const extent = unrollHood(hood, unrolled);
    return extent === null ? [] : [{ x: extent.to, z: extent.lip, edit: ['hoods', i, 'lipHeight'], subject: hood.hood.id }];
  });
  return [
    { x: right, z: machine.sheet.deckHeight, subject: own },
    { x: right, z: machine.sheet.doorLiftHeight, subject: own },
    ...hoods,
    ...(ceilingHeight === null ? [] : [{ x: to, z: ceilingHeight, edit: ['room', 'ceilingHeight'] }]),
  ];
}

/** Measured upward: its axis points up the paper, so the right hand of the axis is the right of the paper. */
function rowsAt({ x, z, edit, subject }: Height, to: number, { f, unit }: ElevationFrame): DimensionRow[] {
  const axis = { x: 0, y: -1 };
  const span: Span = {
    from: { point: at(to, 0), lift: 0 },
    to: { point: at(x, z), lift: 0 },
    text: f.length(z),
    ...(edit === undefined ? {} : { edit }),
    ...(subject === undefined ? {} : { subject }),
  };
  return Array.from({ length: 8 }, (_, i) => ({ axis, spans: [span], across: to / unit + 5 + i * DIMENSION.step, cost: i * 1.5 }));
}
