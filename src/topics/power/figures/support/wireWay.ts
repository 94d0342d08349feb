import { type Frame, type Point3, toLocal } from '../../../../geometry';
import { type PlacedMachine, type Scene, thingsOf } from '../../../../scene';

/** One way of the wires in metres, and how it was found. */
export interface WireWay {
  lengthM: number;
  /** What the plan says, else from where it was drawn at right angles. */
  from: 'plan' | 'panel' | 'stub';
}

/**
 * The way that was measured, else from the nearest panel board, else from the nearest power stub; null when neither a way nor a place
 * where it begins is known.
 */
export function wireWay(scene: Scene, { machine, connections, frame }: PlacedMachine): WireWay | null {
  const { wireWay: said } = machine.hookUp;
  if (said !== null) return { lengthM: said / 1000, from: 'plan' };
  const end = connections.find(({ connection }) => connection.kind === 'power')?.point;
  if (end === undefined) return null;
  const panel = shortest(panelsOf(scene), end, frame);
  if (panel !== null) return { lengthM: panel, from: 'panel' };
  const stub = shortest(stubsOf(scene), end, frame);
  return stub === null ? null : { lengthM: stub, from: 'stub' };
}

const panelsOf = (scene: Scene): Point3[] => thingsOf(scene, 'panel-board').map(({ thing: { x, y, height } }) => ({ x, y, z: height }));

const stubsOf = ({ room }: Scene): Point3[] => room.stubs.filter(({ stub }) => stub.kind === 'power').map(({ point }) => point);

function shortest(starts: readonly Point3[], end: Point3, frame: Frame): number | null {
  return starts.length === 0 ? null : Math.min(...starts.map((start) => rightAngled(start, end, frame))) / 1000;
}

/** Along the machine's two directions on the floor, and up or down. */
function rightAngled(start: Point3, end: Point3, frame: Frame): number {
  const [a, b] = [toLocal(frame, start), toLocal(frame, end)];
  return Math.abs(b.x - a.x) + Math.abs(b.y - a.y) + Math.abs(end.z - start.z);
}
