import { type DrainFlowInputs, drainFlow, type Outcome } from '../../engineering';
import { distance, type Point, type Point3 } from '../../geometry';
import type { PlacedMachine, PlacedRoom } from '../../scene';

type PlacedFloorDrain = PlacedRoom['floorDrains'][number];

/** Manning’s n of old pipe, on which the appendix bases its tables: of the usual values the one that carries least. */
const OLD_PIPE = 0.015;

export const ROUGHNESS_NOTE = 'Manning’s n of old pipe, 0.015, as NSPC Appendix K takes it; smooth pipe carries up to two thirds more.';

/** Inputs of the capacity of a drain; the bore in millimetres, as plans hold it. */
export const capacityInputs = (bore: number, slope: number, depth: number): DrainFlowInputs => ({
  boreM: bore / 1000,
  slope,
  roughness: OLD_PIPE,
  depth,
});

/** Flow of a pipe that runs full without pressure. */
export const fullFlow = (bore: number, slope: number): Outcome => drainFlow(capacityInputs(bore, slope, 1));

/** Where the machine’s waste leaves it; of several drains the first. Undefined where the data sheet has none. */
export const outletOf = ({ connections }: PlacedMachine): Point3 | undefined =>
  connections.find(({ connection }) => connection.kind === 'drain')?.point;

/** The drawn floor drain or floor sink nearest to a place, and how far its middle is, in metres on the floor. */
export function nearestDrain(
  { floorDrains }: PlacedRoom,
  outlet: Point,
): { placed: PlacedFloorDrain; index: number; distanceM: number } | null {
  const [nearest] = floorDrains
    .map((placed, index) => ({ placed, index, distanceM: distance(placed.centre, outlet) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  return nearest ?? null;
}
