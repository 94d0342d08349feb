import { type LaidFitting, type PlacedTable, type Scene, spanOf } from '../../../../scene';

/** What hands reach for over a table: the far edge of a rack, of a bowl or of a scrap opening, the near edge of an overshelf. */
export type Reached = 'rack' | 'bowl' | 'scrap' | 'overshelf';

interface Reach {
  reach: number;
  to: Reached;
}

/** The farthest of all, from the operator's edge. */
export function findFarthestReach({ plan }: Pick<Scene, 'plan'>, placed: PlacedTable): Reach {
  const { table, fittings } = placed;
  const rack: Reach = { reach: table.rackLineFromEdge + plan.settings.rackSize / 2, to: 'rack' };
  const reaches = [rack, ...fittings.flatMap((fitting) => reachTo(fitting, placed))];
  return reaches.reduce((most, item) => (item.reach > most.reach ? item : most));
}

function reachTo({ fitting }: LaidFitting, { table }: PlacedTable): Reach[] {
  const [toLeft, toRight] = spanOf(fitting, table);
  const toBack = table.operatorSide === 'left' ? toRight : toLeft;
  switch (fitting.kind) {
    case 'sink':
      return [{ reach: table.rackLineFromEdge + toBack, to: 'bowl' }];
    case 'scrap':
      return [{ reach: table.rackLineFromEdge + toBack, to: 'scrap' }];
    case 'overshelf':
      return [{ reach: Math.max(0, table.depth - fitting.depth), to: 'overshelf' }];
    case 'drop-off':
    case 'landing':
      return [];
  }
}
