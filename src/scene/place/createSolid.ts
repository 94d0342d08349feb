import { boundsOf, type Polygon, unionBounds } from '../../geometry';
import type { Solid } from '../types';
import { standOnFloor } from '../ways/floorObstacles';

/** A body of one or more convex pieces, with the box around them. Throws a RangeError when it has none. */
export const createSolid = ({ owner, kind, pieces, zFrom, zTo }: Omit<Solid, 'bounds' | 'floor'>): Solid => ({
  owner,
  kind,
  pieces,
  bounds: boundsOfPieces(pieces),
  zFrom,
  zTo,
  floor: standOnFloor({ owner, kind, pieces, zFrom }),
});

function boundsOfPieces(pieces: readonly Polygon[]) {
  let box = boundsOf(pieces[0] ?? []);
  for (let i = 1; i < pieces.length; i++) box = unionBounds(box, boundsOf(pieces[i] as Polygon));
  return box;
}
