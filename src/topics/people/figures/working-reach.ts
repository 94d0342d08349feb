import { type FigureReading, type FigureRule, measured } from '../../../rules';
import { type LaidFitting, type PlacedTable, type Scene, spanOf } from '../../../scene';
import { BODIES_SOURCE } from '../formulas/support/bodies';

export const rule: FigureRule = {
  id: 'working-reach',
  order: 860,
  title: 'Farthest that hands reach over the table',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.tables.map((table) => deriveTable(scene, table)),
};

/** From the operator's edge to the far edge of a rack on its line, of a bowl and of a scrap opening, and to the near edge of an overshelf. */
function deriveTable({ plan }: Scene, placed: PlacedTable): FigureReading {
  const { table, fittings } = placed;
  const rack = table.rackLineFromEdge + plan.settings.rackSize / 2;
  const reaches = [{ reach: rack, to: 'the far edge of a rack' }, ...fittings.flatMap((fitting) => reachTo(fitting, placed))];
  const farthest = reaches.reduce((most, item) => (item.reach > most.reach ? item : most));
  return { subjects: [table.id], value: farthest.reach / 1000, how: HOW, note: `To ${farthest.to}.` };
}

function reachTo({ fitting }: LaidFitting, { table }: PlacedTable): { reach: number; to: string }[] {
  const [toLeft, toRight] = spanOf(fitting, table);
  const toBack = table.operatorSide === 'left' ? toRight : toLeft;
  switch (fitting.kind) {
    case 'sink':
      return [{ reach: table.rackLineFromEdge + toBack, to: 'the far edge of the bowl' }];
    case 'scrap':
      return [{ reach: table.rackLineFromEdge + toBack, to: 'the far edge of the scrap opening' }];
    case 'overshelf':
      return [{ reach: Math.max(0, table.depth - fitting.depth), to: 'the near edge of the overshelf' }];
    case 'drop-off':
    case 'landing':
      return [];
  }
}

const HOW = measured('r = from the operator’s edge to the farthest that hands must come', BODIES_SOURCE);
