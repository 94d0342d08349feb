import { distance, type Point, type Point3 } from '../../../../geometry';
import type { FloorDrain, Machine } from '../../../../plan';
import { type Ask, createMessages, type FormulaResult, type Message, type NoParams } from '../../../../rules';
import { machinePath, type PlacedMachine, type PlacedRoom, type Scene } from '../../../../scene';
import { type DrainFlowInputs, drainFlow } from '../../formulas/drainFlow';

type PlacedFloorDrain = PlacedRoom['floorDrains'][number];

/** What the inputs about drains are called, and which roughness counts. */
export interface DrainsMessages {
  'drains/ask-waste': NoParams;
  'drains/ask-drain': NoParams;
  'drains/ask-flow': NoParams;
  'drains/ask-drain-bore': NoParams;
  'drains/ask-drain-slope': NoParams;
  'drains/ask-direct-bore': NoParams;
  'drains/ask-direct-slope': NoParams;
  'drains/material-not-said': NoParams;
  'drains/roughness': { material: DrainMaterial };
}

type DrainMaterial = NonNullable<Machine['hookUp']['drainMaterial']>;

const message = createMessages<DrainsMessages>();

/** How the waste of a machine is connected. */
export const WASTE_INPUT = message('drains/ask-waste');
/** A drawn floor drain. */
export const DRAIN_INPUT = message('drains/ask-drain');
/** How fast the machine empties. */
export const FLOW_INPUT = message('drains/ask-flow');
/** How wide the pipe below a floor drain is. */
export const DRAIN_BORE_INPUT = message('drains/ask-drain-bore');

/** What must be said before there is a pipe. */
interface PipeAsk extends Ask {
  input: Message;
}

/** What a plan says of a pipe, and where it would be said. */
interface Said extends PipeAsk {
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
export function carryingPipe(scene: Scene, placed: PlacedMachine): CarryingPipe | PipeAsk {
  const { hookUp, id } = placed.machine;
  if (hookUp.waste === null) return { input: WASTE_INPUT, path: machinePath(placed, 'hookUp', 'waste') };
  if (hookUp.waste === 'direct') return ownPipe(placed);
  const index = takingDrain(scene, placed);
  const drain = index === null ? undefined : scene.room.floorDrains[index]?.drain;
  if (index === null || drain === undefined) return { input: DRAIN_INPUT, path: ['room', 'floorDrains'] };
  return { subjects: [id, drain.id], drain, ...floorDrainPipe(drain, index) };
}

/** Which drawn floor drain takes the waste of a machine, by its number in the plan: the nearest. */
const takingDrain = ({ room }: Scene, placed: PlacedMachine): number | null =>
  nearestDrain(room, outletOf(placed) ?? placed.machine)?.index ?? null;

/** The pipe below a floor drain, by the drain’s number in the plan. */
export function floorDrainPipe({ waste }: FloorDrain, index: number): Pick<CarryingPipe, 'bore' | 'slope'> {
  const at = (field: 'bore' | 'slope', input: Message): Said => ({
    value: waste[field],
    input,
    path: ['room', 'floorDrains', index, 'waste', field],
  });
  return {
    bore: at('bore', DRAIN_BORE_INPUT),
    slope: at('slope', message('drains/ask-drain-slope')),
  };
}

/** Whether it is a pipe, and not what must be said before there is one. */
export const isPipe = (pipe: CarryingPipe | PipeAsk): pipe is CarryingPipe => 'bore' in pipe;

function ownPipe(placed: PlacedMachine): CarryingPipe {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  return {
    subjects: [placed.machine.id],
    drain: null,
    bore: { value: drainBore, input: message('drains/ask-direct-bore'), path: machinePath(placed, 'hookUp', 'drainBore') },
    slope: { value: drainSlope, input: message('drains/ask-direct-slope'), path: machinePath(placed, 'hookUp', 'drainSlope') },
  };
}

/** Manning’s n by what drains are made of. Of each material’s usual values the one that carries least. */
const ROUGHNESS: Readonly<Record<DrainMaterial, number>> = { plastic: 0.009, 'cast-iron': 0.013, old: 0.015 };

/** Which roughness counts for a machine’s drains. */
export const roughnessNote = ({ machine: { hookUp } }: PlacedMachine): Message =>
  hookUp.drainMaterial === null ? message('drains/material-not-said') : message('drains/roughness', { material: hookUp.drainMaterial });

/** Inputs of the capacity of a machine’s drain; the bore in millimetres, as plans hold it. */
export const capacityInputs = ({ machine }: PlacedMachine, bore: number, slope: number, depth: number): DrainFlowInputs => ({
  boreM: bore / 1000,
  slope,
  roughness: ROUGHNESS[machine.hookUp.drainMaterial ?? 'old'],
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
