import { type Polyline, pointAt, slicePath, strip } from '../../geometry';
import type { Fitting, Table } from '../../plan';
import type { LaidFitting, PlacedFitting } from '../types';

/** A fitting on its table. One that lies across a turn goes around it. */
export function placeFitting({ fitting, from, to }: LaidFitting, table: Table, path: Polyline): PlacedFitting {
  const [toLeft, toRight] = spanOf(fitting, table);
  return {
    fitting,
    from,
    to,
    polygon: strip(slicePath(path, from, to), toLeft, toRight).outline,
    centre: pointAt(path, fitting.at).point,
  };
}

/** How far a fitting reaches to the left and to the right of the rack line, walking outward. */
export function spanOf(
  fitting: Fitting,
  { depth, rackLineFromEdge, operatorSide }: Omit<Table, 'place'>,
): [toLeft: number, toRight: number] {
  const toBack = depth - rackLineFromEdge;
  const ofOperator = (toOperator: number, toBackEdge: number): [number, number] =>
    operatorSide === 'left' ? [toOperator, toBackEdge] : [toBackEdge, toOperator];
  switch (fitting.kind) {
    case 'sink':
    case 'scrap':
      return [fitting.width / 2, fitting.width / 2];
    case 'overshelf':
      return ofOperator(fitting.depth - toBack, toBack);
    case 'drop-off':
    case 'landing':
      return ofOperator(rackLineFromEdge, toBack);
  }
}
