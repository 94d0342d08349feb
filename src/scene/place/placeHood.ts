import type { Side } from '../../catalog';
import { centredRectangle, intersectionArea, type Polygon } from '../../geometry';
import type { Hood } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedHood, PlacedMachine } from '../types';
import { measureOverhang } from './measureOverhang';

/** A hood and the machines under it. */
export const placeHood = memoizeByIdentity((hood: Hood, machines: readonly PlacedMachine[]): PlacedHood => {
  const polygon = centredRectangle(hood, hood.rotationDeg, hood.width, hood.depth);
  return { hood, polygon, covers: machines.flatMap((machine) => measureCover(polygon, machine)) };
});

/** Less than this is an edge that only touches, mm². */
const LEAST_AREA = 1;

function measureCover(polygon: Polygon, { machine, footprint, sides }: PlacedMachine): PlacedHood['covers'] {
  if (intersectionArea(polygon, footprint) < LEAST_AREA) return [];
  const over = (side: Side) => measureOverhang(polygon, sides[side].edge, sides[side].normal);
  return [{ machine: machine.id, overhang: { left: over('left'), right: over('right'), front: over('front'), back: over('back') } }];
}
