import { distance, type Point, type Point3 } from '../../../../geometry';
import type { FloorDrain } from '../../../../plan';
import type { FigureReading, FormulaResult } from '../../../../rules';
import { machinePath, type PlacedMachine, type PlacedRoom, type Scene } from '../../../../scene';
import { type DrainFlowInputs, drainFlow } from '../../formulas/drainFlow';

type PlacedFloorDrain = PlacedRoom['floorDrains'][number];
type Ask = NonNullable<FigureReading['ask']>;

/** What a plan says of a pipe, and where it would be said. */
interface Said extends Ask {
  value: number | null;
}

/** The pipe that carries on what a machine lets out, once it has left the machine's own waste pipe. */
export interface CarryingPipe {
  subjects: string[];
  /** The floor drain or floor sink that it leaves; null for the pipe of a machine that is connected directly. */
  drain: FloorDrain | null;
  /** Inside diameter in millimetres. */
  bore: Said;
  /** Fall over length. */
  slope: Said;
}

/**
 * The pipe that carries on: over an air gap that of the nearest drawn floor drain, connected directly the machine's own. While
 * it is not known how the waste is connected, or no drain is drawn, what is to be said first.
 */
export function carryingPipe(scene: Scene, placed: PlacedMachine): CarryingPipe | Ask {
  const { hookUp, id } = placed.machine;
  if (hookUp.waste === null) return { input: 'way in which the waste is connected', path: machinePath(placed, 'hookUp', 'waste') };
  if (hookUp.waste === 'direct') return ownPipe(placed);
  const index = takingDrain(scene, placed);
  const drain = index === null ? undefined : scene.room.floorDrains[index]?.drain;
  if (index === null || drain === undefined) return { input: 'floor drain or floor sink', path: ['room', 'floorDrains'] };
  return { subjects: [id, drain.id], drain, ...floorDrainPipe(drain, index) };
}

/** Which drawn floor drain takes the waste of a machine, by its number in the plan: the nearest. */
const takingDrain = ({ room }: Scene, placed: PlacedMachine): number | null =>
  nearestDrain(room, outletOf(placed) ?? placed.machine)?.index ?? null;

/** The pipe below a floor drain, by the drain’s number in the plan. */
export function floorDrainPipe({ waste }: FloorDrain, index: number): Pick<CarryingPipe, 'bore' | 'slope'> {
  const at = (field: 'bore' | 'slope', input: string): Said => ({
    value: waste[field],
    input,
    path: ['room', 'floorDrains', index, 'waste', field],
  });
  return {
    bore: at('bore', 'inside diameter of the floor drain’s pipe'),
    slope: at('slope', 'fall of the floor drain’s pipe'),
  };
}

/** Whether it is a pipe, and not what must be said before there is one. */
export const isPipe = (pipe: CarryingPipe | Ask): pipe is CarryingPipe => 'bore' in pipe;

function ownPipe(placed: PlacedMachine): CarryingPipe {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  return {
    subjects: [placed.machine.id],
    drain: null,
    bore: {
      value: drainBore,
      input: 'inside diameter of the drain that takes the machine’s waste',
      path: machinePath(placed, 'hookUp', 'drainBore'),
    },
    slope: { value: drainSlope, input: 'fall of that drain', path: machinePath(placed, 'hookUp', 'drainSlope') },
  };
}

type DrainMaterial = NonNullable<PlacedMachine['machine']['hookUp']['drainMaterial']>;

/** Manning’s n by what drains are made of. Of each material’s usual values the one that carries least. */
const ROUGHNESS: Readonly<Record<DrainMaterial, { n: number; note: string }>> = {
  plastic: { n: 0.009, note: 'Manning’s n of smooth plastic, 0.009.' },
  'cast-iron': { n: 0.013, note: 'Manning’s n of cast iron, 0.013.' },
  old: { n: 0.015, note: 'Manning’s n of old pipe, 0.015, as NSPC Appendix K takes it.' },
};

const UNKNOWN_MATERIAL =
  'What the drains are made of is not said: as old pipe, Manning’s n 0.015, which carries least; smooth pipe carries up to two thirds more.';

/** Which roughness counts for a machine’s drains, in words. */
export const roughnessNote = ({ machine: { hookUp } }: PlacedMachine): string =>
  hookUp.drainMaterial === null ? UNKNOWN_MATERIAL : ROUGHNESS[hookUp.drainMaterial].note;

/** Inputs of the capacity of a machine’s drain; the bore in millimetres, as plans hold it. */
export const capacityInputs = ({ machine }: PlacedMachine, bore: number, slope: number, depth: number): DrainFlowInputs => ({
  boreM: bore / 1000,
  slope,
  roughness: ROUGHNESS[machine.hookUp.drainMaterial ?? 'old'].n,
  depth,
});

/** Flow of a pipe that runs full without pressure. */
export const fullFlow = (placed: PlacedMachine, bore: number, slope: number): FormulaResult =>
  drainFlow(capacityInputs(placed, bore, slope, 1));

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
