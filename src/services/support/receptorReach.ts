import { type Measurement, machineName, pointPlace } from '../../checks';
import { floorLegs } from '../../engineering';
import { containsPoint, type Polygon } from '../../geometry';
import type { PlacedMachine, PlacedRoom, Scene } from '../../scene';

type Receptor = PlacedRoom['floorDrains'][number];

/** Something that stands over a receptor. */
interface Cover {
  id: string;
  /** What it is, in a sentence. */
  name: string;
  /** Free height under it; null while it is not known; 0 where nothing gets under. */
  clearBelow: number | null;
  path: (string | number)[];
  severity: 'stop' | 'watch';
}

/** Least height in millimetres under which a floor is cleaned: that of equipment on legs, FDA Food Code 4-402.12. */
const CLEANED = ((outcome) => (outcome.ok ? outcome.value * 1000 : Number.NaN))(floorLegs({ farthestM: 1 }));

/** Whether a hand and a brush get to the floor drain, from what stands over its middle. Carts and bins roll away. */
export function measureReach(scene: Scene, placed: PlacedMachine, { drain, centre }: Receptor): Measurement {
  const covers = coversOf(scene).filter((cover) => cover.polygons.some((piece) => containsPoint(piece, centre)));
  const low = covers.find(({ clearBelow }) => clearBelow !== null && clearBelow < CLEANED - 1e-6);
  const open = low === undefined ? covers.find(({ clearBelow }) => clearBelow === null) : undefined;
  const about = { part: 'reach', place: pointPlace(centre), unit: 'yes-no', relation: 'equals', limit: true } as const;
  const subjects = [placed.machine.id, drain.id, ...((low ?? open) ? [(low ?? open)?.id ?? ''] : [])];
  if (open !== undefined) {
    const ask = { input: `free height under ${open.name}`, path: open.path };
    return { ...about, subjects, value: null, ask, say: () => `The floor drain lies under ${open.name}: say the free height below it.` };
  }
  return {
    ...about,
    subjects,
    value: low === undefined,
    severity: low?.severity ?? 'stop',
    say: (f) =>
      low === undefined
        ? `The floor drain of ${machineName(scene, placed)} can be reached and cleaned.`
        : `The floor drain of ${machineName(scene, placed)} lies under ${low.name}, where nobody can empty its strainer; it needs ${f.length(CLEANED)} free above it. Move one of the two.`,
  };
}

function coversOf({ machines, tables, things, room, plan }: Scene): (Cover & { polygons: Polygon[] })[] {
  const at = (list: 'tables' | 'things', id: string, ...rest: string[]) => [list, plan[list].findIndex((item) => item.id === id), ...rest];
  return [
    ...room.columns.map(({ column, polygon }) => ({
      id: column.id,
      name: 'a column',
      clearBelow: 0,
      path: [],
      severity: 'stop' as const,
      polygons: [polygon],
    })),
    // On legs or not, a machine that stands over a drain hides it.
    ...machines.map(({ machine, footprint }) => ({
      id: machine.id,
      name: 'a machine',
      clearBelow: 0,
      path: [],
      severity: 'watch' as const,
      polygons: [footprint],
    })),
    ...things
      .filter(({ thing }) => thing.kind !== 'cart' && thing.kind !== 'bin')
      .map(({ thing, name, polygon }) => ({
        id: thing.id,
        name: `the ${name.toLowerCase()}`,
        clearBelow: thing.clearBelow,
        path: at('things', thing.id, 'clearBelow'),
        severity: 'stop' as const,
        polygons: [polygon],
      })),
    ...tables.map(({ table, deck }) => ({
      id: table.id,
      name: `the ${table.role} table`,
      clearBelow: table.make.clearBelow,
      path: at('tables', table.id, 'make', 'clearBelow'),
      severity: 'stop' as const,
      polygons: deck,
    })),
  ];
}
